import fc from 'fast-check';
import type { RemedyKey } from '../../../src/domain/joint/advice-table.ts';
import { filmLoss } from '../../../src/domain/joint/film.ts';
import { fitOf, type Pair } from '../../../src/domain/joint/fit.ts';
import type { FitTarget } from '../../../src/domain/joint/fit-target.ts';
import type { Amount, Remedy } from '../../../src/domain/joint/remedies.ts';
import { tenonFromEngagement } from '../../../src/domain/joint/sizes.ts';
import type { KnownJoint, TrialFit } from '../../../src/domain/joint/trial-evidence.ts';
import { mm, pitchFromTpi, turns } from '../../../src/domain/units/brands.ts';
import { gotten } from './results.ts';

/** A pair as it really is, which nobody at the lathe can see. */
interface World {
  readonly pair: Pair;
  readonly wanted: number;
  /** Finish on all flanks, square to them. */
  readonly film: number;
  /** Bore narrower by this at the relief, tenon thicker by this at the shoulder. */
  readonly boreTaper: number;
  readonly tenonTaper: number;
  /** Sanded off the crests since they were measured. */
  readonly easedTenon: number;
  readonly easedRecess: number;
  readonly sanded: number;
  readonly bottomGap: number;
}

export type OneCause =
  | 'flanks-tight'
  | 'crests-rub'
  | 'tapered-bore'
  | 'tapered-tenon'
  | 'finish-film'
  | 'bottoming'
  | 'flanks-loose';

/** Errors of one set of readings, each from -1 to 1. */
interface Errors {
  readonly recess: number;
  readonly tenon: number;
  readonly recessDepth: number;
  readonly tenonDepth: number;
  readonly play: number;
  readonly taper: number;
  readonly film: number;
}

export interface Misfit {
  readonly cause: OneCause;
  readonly world: World;
  readonly errors: Errors;
  /** What the turner tells besides. */
  readonly tellsMarks: boolean;
  readonly feelsPlay: boolean;
  readonly drags: boolean;
}

/** Worst error of a caliper, of a dial and of play felt against a rule, mm. */
const CALIPER = 0.03;
const DIAL = 0.015;
const PLAY = 0.02;
/** Worst error of a guessed film, as a share of it. */
const FILM = 0.25;

/** What the pair really does, along its whole length. */
export const truth = (world: World) => {
  const fit = gotten(fitOf(world.pair));
  const clearance =
    fit.clearance -
    gotten(filmLoss(mm(world.film))).clearance +
    gotten(filmLoss(mm(world.sanded))).clearance / 2;
  return {
    clearance,
    play: Math.max(0, clearance * Math.tan(Math.PI / 6)),
    tenonCrestGap: fit.tenonCrestGap - world.tenonTaper / 2 + world.easedTenon,
    recessCrestGap: fit.recessCrestGap - world.boreTaper / 2 + world.easedRecess,
    bottomGap: world.bottomGap,
  };
};

export const isInside = (world: World, target: FitTarget): boolean => {
  const now = truth(world);
  return (
    now.clearance >= target.least &&
    now.clearance <= target.most &&
    now.tenonCrestGap >= 0 &&
    now.recessCrestGap >= 0 &&
    now.bottomGap >= target.bottomGap
  );
};

/** What the turner tells of it. */
export const toldOf = ({ cause, world, errors, tellsMarks, feelsPlay, drags }: Misfit): TrialFit => {
  const { play } = truth(world);
  const felt = feelsPlay && cause !== 'bottoming' ? mm(Math.max(0, play + PLAY * errors.play)) : null;
  const crests = ['crests-rub', 'tapered-bore', 'tapered-tenon'].includes(cause);
  const tight = drags || cause.startsWith('tapered') ? 'drags-more-each-turn' : 'stiff-all-the-way';
  return {
    goingOn:
      cause === 'bottoming'
        ? ['stops-dead']
        : cause === 'flanks-loose'
          ? ['rattles-sideways', 'end-play']
          : [tight],
    seated: cause === 'bottoming' ? 'gap-all-round' : null,
    threads: ['sound'],
    marks:
      !tellsMarks || cause === 'bottoming' || cause === 'flanks-loose'
        ? null
        : { on: crests ? 'crest' : 'flank', at: cause.startsWith('tapered') ? 'by-shoulder' : 'all-along' },
    endPlay: felt,
    turnsOn: cause === 'bottoming' ? turns(2.8) : null,
    afterFinish: cause === 'finish-film',
  };
};

/** What the turner has measured. */
export const knownOf = ({ cause, world, errors }: Misfit): KnownJoint => {
  const { pair } = world;
  const off = (value: number, error: number, worst: number) => mm(value + error * worst);
  return {
    pair: {
      ...pair,
      recess: {
        ...pair.recess,
        diameter: off(pair.recess.diameter, errors.recess, CALIPER),
        depth: off(pair.recess.depth, errors.recessDepth, DIAL),
      },
      tenon: {
        ...pair.tenon,
        diameter: off(pair.tenon.diameter, errors.tenon, CALIPER),
        depth: off(pair.tenon.depth, errors.tenonDepth, DIAL),
      },
    },
    wantedClearance: mm(world.wanted),
    threads: 3,
    boreTaper: cause === 'tapered-bore' ? off(world.boreTaper, errors.taper, CALIPER) : null,
    outOfRound: null,
    tenonTaper: cause === 'tapered-tenon' ? off(world.tenonTaper, errors.taper, CALIPER) : null,
    bottomGap: mm(world.bottomGap),
    film: cause === 'finish-film' ? mm(world.film * (1 + FILM * errors.film)) : null,
    wall: null,
    tries: null,
    onJig: 'tenon',
    dial: null,
    unit: 'metric',
  };
};

const doneOne = (now: World, remedy: RemedyKey, { part, by }: Amount): World => {
  const piece = now.pair[part];
  switch (remedy) {
    case 'deepen':
      return { ...now, pair: { ...now.pair, [part]: { ...piece, depth: mm(piece.depth + by) } } };
    case 'new-tenon':
      return { ...now, pair: { ...now.pair, tenon: { ...now.pair.tenon, diameter: by } } };
    case 'ease-crests':
      return part === 'tenon'
        ? { ...now, easedTenon: now.easedTenon + by }
        : { ...now, easedRecess: now.easedRecess + by };
    case 'clear-floor':
      return { ...now, bottomGap: now.bottomGap + by };
    case 'rub-flanks':
      return { ...now, sanded: now.sanded + by };
    default:
      return now;
  }
};

/** The remedies done at the bench, once, to the real pair. */
export const done = (world: World, remedies: readonly Remedy[]): World => {
  let now = world;
  for (const { remedy, amounts } of remedies)
    for (const amount of amounts) now = doneOne(now, remedy, amount);
  return now;
};

/** Evenly spread: fast-check's own doubles crowd near nothing. */
const evenly = (low: number, high: number) =>
  fc.noBias(fc.integer({ min: 0, max: 1_000_000 })).map((n) => low + ((high - low) * n) / 1_000_000);
const unit = evenly(0, 1);
const error = evenly(-1, 1);
const between = (low: number, high: number, share: number): number => low + (high - low) * share;

/** A right joint, then one thing wrong with it. */
export const misfits = (cause: OneCause): fc.Arbitrary<Misfit> =>
  fc
    .record({
      tpi: fc.constantFrom(8, 10, 12, 16),
      recess: evenly(25, 80),
      tipFlat: evenly(0.1, 0.25),
      size: unit,
      errors: fc.record({
        recess: error,
        tenon: error,
        recessDepth: error,
        tenonDepth: error,
        play: error,
        taper: error,
        film: error,
      }),
      tellsMarks: fc.boolean(),
      feelsPlay: fc.boolean(),
      drags: fc.boolean(),
    })
    .map(({ tpi, recess, tipFlat, size, errors, ...tells }) => {
      const pitch = pitchFromTpi(tpi);
      const wanted = between(0.2, 0.35, (pitch - 1.5875) / (3.175 - 1.5875));
      const form = { pitch, tipFlat: mm(tipFlat) };
      const sizes = gotten(
        tenonFromEngagement(form, { recess: mm(recess), clearance: mm(wanted) }, 72, '0.75H'),
      );
      const cut = { depth: sizes.depth, tipFlat: mm(tipFlat) };
      const right: World = {
        pair: { pitch, recess: { ...cut, diameter: mm(recess) }, tenon: { ...cut, diameter: sizes.tenon } },
        wanted,
        film: 0,
        boreTaper: 0,
        tenonTaper: 0,
        easedTenon: 0,
        easedRecess: 0,
        sanded: 0,
        bottomGap: 2,
      };
      return { cause, world: spoilt(right, cause, size, sizes.crestGap), errors, ...tells };
    });

const spoilt = (right: World, cause: OneCause, size: number, crestGap: number): World => {
  const { pair, wanted } = right;
  switch (cause) {
    case 'flanks-tight':
    case 'flanks-loose': {
      const over =
        cause === 'flanks-tight' ? between(0.6, 2, size) * wanted : -between(0.7, 2, size) * wanted;
      return {
        ...right,
        pair: { ...pair, tenon: { ...pair.tenon, depth: mm(pair.tenon.depth - over / 2) } },
      };
    }
    case 'crests-rub': {
      // A tenon over size, and cut deeper until its flanks were right again.
      const over = 2 * (crestGap + between(0.02, 0.2, size));
      const { diameter, depth } = pair.tenon;
      return {
        ...right,
        pair: {
          ...pair,
          tenon: { ...pair.tenon, diameter: mm(diameter + over), depth: mm(depth + over / 2) },
        },
      };
    }
    case 'tapered-bore':
      return { ...right, boreTaper: 2 * (crestGap + between(0.02, 0.2, size)) };
    case 'tapered-tenon':
      return { ...right, tenonTaper: 2 * (crestGap + between(0.02, 0.2, size)) };
    case 'finish-film':
      return { ...right, film: between(0.6, 1.2, size) * (wanted / 8) };
    case 'bottoming':
      return { ...right, bottomGap: between(-1, 0.1, size) };
  }
};
