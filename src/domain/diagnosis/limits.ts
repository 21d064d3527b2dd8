import { benchStep } from '../joint/dial.ts';
import { SLOPE } from '../joint/profile.ts';
import type { Part } from '../setup/events.ts';
import type { Facts } from './facts.ts';
import { RUBBED_TO_DEPTH } from './joint-numbers.ts';
import { CUTS, type Move } from './moves.ts';
import type { Ensemble, Outcome } from './outcomes.ts';

/** What a limit looks at: the move, what it would do to the likely joints, how they stand now, what was felt and seen. */
export interface Question {
  readonly move: Move;
  readonly outcome: Outcome;
  readonly now: Ensemble;
  readonly facts: Facts;
}

export interface Limit {
  readonly why: string;
  /** It goes by what was felt or seen, so an answer may lift it. */
  readonly byReading: boolean;
  readonly bars: (of: Question) => boolean;
}

const partOf = ({ move }: Question): Part => (move.part === 'recess' ? 'recess' : 'tenon');
const by = ({ move }: Question): number => move.by ?? 0;
const isCut = ({ move }: Question): boolean => CUTS.has(move.kind);
const isKind =
  (kind: Move['kind']) =>
  ({ move }: Question): boolean =>
    move.kind === kind;
const deepens = isKind('deepen');
const eases = isKind('ease-crests');
const faces = isKind('face-shoulder');
const remakes = isKind('new-tenon');
const leaves = isKind('leave-it');

/** Crest flat that the calculated numbers leave on a part cut to a depth, mm. */
const calculatedCrest = ({ box }: Facts, part: Move['part'], depth: number): number =>
  box.pitch - box.tip - 2 * (part === 'recess' ? box.shiftRecess : box.shiftTenon) - 2 * SLOPE * depth;

const depthOf = ({ facts, move }: Question): number =>
  facts.depth[move.part === 'recess' ? 'recess' : 'tenon'];

const slippedOrJumps = ({ now }: Question): boolean => now.jumpsOrSlipped >= 0.5;

const LEAST_ENGAGED = 0.45;
/** Rubbed off one piece in all, mm square to the flank: two films. */
const MOST_RUBBED = 0.05;
/** A crest flat narrower than this breaks away, mm; how far beyond one standard deviation a tip may be blunter. */
const RUINED_CREST = 0.07;
const BLUNTER = 2.6;
/** Crest flat left for a pick-up that goes 0.25 mm beside, mm. */
const FOR_PICKING_UP = 0.35;

/**
 * No move that one of these bars is ever shown. Shares and millimetres are judgement, no source; each was found by what it kept from
 * ruining parts in simulation. A reading beats the likely joints: they have tails that a feeler has not.
 */
export const LIMITS = [
  // The setting.
  {
    why: 'finished',
    byReading: false,
    bars: (of) => isCut(of) && of.facts.finished,
  },
  {
    why: 'no-setting',
    byReading: false,
    // A lost setting is not made "the same setting" by setting up again.
    bars: (of) =>
      isCut(of) &&
      (of.move.reset
        ? of.move.part !== 'tenon' || of.move.kind === 'same-setting-again'
        : !of.facts.bench.holds),
  },
  {
    why: 'not-on-jig',
    byReading: false,
    bars: (of) => isCut(of) && !of.move.reset && of.facts.bench.onJig !== of.move.part,
  },
  // The crest of what is cut deeper.
  {
    why: 'crest-by-sizes',
    byReading: false,
    bars: (of) => deepens(of) && calculatedCrest(of.facts, of.move.part, depthOf(of) + by(of)) < 0.15,
  },
  {
    why: 'crest-likely-thin',
    byReading: false,
    bars: (of) =>
      (deepens(of) || of.move.reset || of.move.kind === 'rub-flanks') && of.outcome.thinCrest > 0.03,
  },
  {
    why: 'crest-seen-thin',
    byReading: true,
    bars: (of) => {
      const seen = of.facts.crest[partOf(of)];
      return deepens(of) && seen !== null && seen - 2 * SLOPE * by(of) < 0.12;
    },
  },
  // An assumed tip may be blunter than thought, and then the crest is narrower than the sizes say: look before cutting.
  {
    why: 'crest-unsure',
    byReading: true,
    bars: (of) =>
      deepens(of) &&
      of.facts.crest[partOf(of)] === null &&
      calculatedCrest(of.facts, of.move.part, depthOf(of) + by(of)) <
        RUINED_CREST + BLUNTER * of.facts.box.tipSd,
  },
  // Rubbing goes through the film into the wood, and nobody sees where.
  {
    why: 'rubbed-enough',
    byReading: true,
    bars: (of) => {
      if (of.move.kind !== 'rub-flanks') return false;
      const part = partOf(of);
      const all = of.facts.rubbed[part] + by(of);
      const seen = of.facts.crest[part];
      const narrower = 2 * SLOPE * RUBBED_TO_DEPTH * 1.5;
      return (
        all > MOST_RUBBED + 1e-9 ||
        calculatedCrest(of.facts, part, depthOf(of)) - narrower * all < 0.12 ||
        (seen !== null && seen - narrower * by(of) < 0.12)
      );
    },
  },
  // A groove picked up again may be met beside its middle, and what is cut there comes off the ridge.
  {
    why: 'crest-for-picking-up',
    byReading: true,
    bars: (of) => {
      const seen = of.facts.crest.tenon;
      return (
        isCut(of) &&
        of.move.reset &&
        (calculatedCrest(of.facts, 'tenon', depthOf(of) + by(of)) < FOR_PICKING_UP ||
          seen === null ||
          seen - 2 * SLOPE * by(of) < FOR_PICKING_UP)
      );
    },
  },
  // The play before any cut.
  { why: 'play-not-felt', byReading: true, bars: (of) => isCut(of) && of.facts.felt === null },
  {
    why: 'too-loose-after',
    byReading: true,
    bars: (of) => isCut(of) && (of.facts.felt ?? 0) + 2 * by(of) > 1.2 * of.facts.box.wanted,
  },
  {
    why: 'play-enough',
    byReading: true,
    bars: (of) => {
      const share = of.move.kind === 'same-setting-again' ? 0.25 : 0.8;
      return isCut(of) && (of.facts.felt ?? 0) > share * of.facts.box.wanted;
    },
  },
  { why: 'said-loose', byReading: false, bars: (of) => isCut(of) && of.facts.saidLoose },
  {
    why: 'stiff-with-play',
    byReading: true,
    bars: (of) => deepens(of) && of.facts.stiff && (of.facts.felt ?? 0) > 0.5 * of.facts.box.wanted,
  },
  {
    why: 'likely-looser',
    byReading: false,
    bars: (of) => isCut(of) && of.outcome.looser > of.now.looser + 0.008,
  },
  {
    why: 'too-much-at-once',
    byReading: false,
    bars: (of) => {
      const most = of.facts.box.wanted * (of.now.tightFlanks >= 0.9 ? 0.5 : 0.25);
      return deepens(of) && by(of) > Math.max(most, benchStep[of.facts.bench.unit]) + 1e-9;
    },
  },
  // A new tenon.
  { why: 'in-band', byReading: false, bars: (of) => remakes(of) && of.now.inBand >= 0.3 },
  {
    why: 'felt-in-band',
    byReading: true,
    bars: (of) => {
      const { felt, box } = of.facts;
      return (
        remakes(of) &&
        !slippedOrJumps(of) &&
        felt !== null &&
        felt >= 0.45 * box.wanted &&
        felt <= 1.5 * box.wanted
      );
    },
  },
  { why: 'new-tenon-play-not-felt', byReading: true, bars: (of) => remakes(of) && of.facts.felt === null },
  { why: 'crest-not-seen', byReading: true, bars: (of) => remakes(of) && of.facts.crest.tenon === null },
  { why: 'slip-or-blunt', byReading: true, bars: (of) => remakes(of) && of.facts.slipOrBlunt },
  {
    why: 'deepen-instead',
    byReading: false,
    bars: (of) => remakes(of) && !of.facts.finished && of.now.couldDeepen >= 0.35,
  },
  { why: 'new-one-unmeasured', byReading: true, bars: (of) => remakes(of) && of.facts.unmeasured },
  {
    why: 'new-tenon-too-small',
    byReading: false,
    bars: (of) =>
      remakes(of) && (of.move.size ?? 0) < of.facts.box.bore + 2 * LEAST_ENGAGED * of.facts.box.full,
  },
  {
    why: 'new-crest-by-sizes',
    byReading: false,
    bars: (of) => remakes(of) && calculatedCrest(of.facts, 'tenon', of.move.depth ?? 0) < 0.15,
  },
  {
    why: 'new-crest-by-seen',
    byReading: true,
    bars: (of) => {
      const seen = of.facts.crest.tenon;
      const deeper = (of.move.depth ?? 0) - of.facts.depth.tenon;
      return remakes(of) && seen !== null && seen - 2 * SLOPE * deeper < 0.15;
    },
  },
  { why: 'new-one-likely-weak', byReading: false, bars: (of) => remakes(of) && of.outcome.spent > 0.04 },
  // Easing crests.
  {
    why: 'no-crest-contact',
    byReading: true,
    bars: (of) =>
      eases(of) &&
      of.now.onCrests < 0.25 &&
      !(of.facts.stiff && (of.facts.felt ?? 0) >= 0.5 * of.facts.box.wanted),
  },
  {
    why: 'eased-twice',
    byReading: false,
    bars: (of) => eases(of) && of.facts.eased[partOf(of)] >= 2,
  },
  {
    why: 'engagement-after-easing',
    byReading: false,
    bars: (of) => {
      const { facts } = of;
      const all = facts.easedBy.recess + facts.easedBy.tenon + by(of);
      const height = (facts.tenon - facts.box.bore) / 2;
      return eases(of) && height - 1.3 * all < 0.5 * facts.box.full;
    },
  },
  // The floor.
  {
    why: 'floor',
    byReading: true,
    bars: (of) =>
      faces(of) && (of.facts.floor - by(of) < 0.1 || of.outcome.floorHit > of.now.floorHit + 0.02),
  },
  // Leaving it.
  { why: 'fault-likelier', byReading: false, bars: (of) => leaves(of) && !of.now.isLikelySound },
  {
    why: 'not-to-be-left',
    byReading: true,
    bars: (of) => {
      const { felt, box, onlyLoose } = of.facts;
      return (
        leaves(of) &&
        !(onlyLoose && felt !== null && felt >= 0.4 * box.wanted && felt <= 1.5 * box.wanted + 0.03)
      );
    },
  },
] as const satisfies readonly Limit[];

export type Why = (typeof LIMITS)[number]['why'];

/** The first limit that bars a move, or nothing. `which` picks all limits, or only those of a kind. */
export const barredBy = (of: Question, limits: readonly Limit[]): string | null => {
  for (const limit of limits) if (limit.bars(of)) return limit.why;
  return null;
};
