import { SLOPE } from '../joint/profile.ts';
import { CAUSE_COUNT, type Cause, causeIndex } from './causes.ts';
import type { JointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';
import { FAULT_COUNT, FAULTS, type Fault, type Standing } from './standing.ts';
import { type Word, wordIndex } from './words-chance.ts';

const C = causeIndex;

/** The one cause behind a fault that has only one. */
const SOLE: Readonly<Partial<Record<Fault, Cause>>> = {
  floor: 'bottoming',
  relief: 'relief',
  last: 'last-thread',
  lead: 'no-lead-in',
  thin: 'slip',
  dent: 'dent',
  once: 'eccentric',
  float: 'float',
  twice: 'oval',
  four: 'squeezed',
  gritty: 'fuzz',
  tilted: 'tilt',
  hump: 'shoulder',
  struck: 'struck',
  weak: 'weak-wood',
};

/** The words in which each fault is complained of. */
const VOICE: Readonly<Record<Fault, readonly Word[]>> = {
  tight: ['stiff-all-the-way', 'drags-more-each-turn', 'will-not-start'],
  crest: ['stiff-all-the-way', 'drags-more-each-turn', 'will-not-start'],
  late: ['drags-more-each-turn', 'stiff-all-the-way'],
  'crest-late': ['drags-more-each-turn', 'stiff-all-the-way'],
  floor: ['stops-dead', 'gap-all-round'],
  relief: ['stops-dead', 'gap-all-round'],
  last: ['stops-dead', 'gap-all-round'],
  lead: ['will-not-start'],
  loose: ['end-play', 'rattles-sideways'],
  thin: ['thin-or-double-cut', 'end-play', 'rattles-sideways', 'jumps-a-thread'],
  jumps: ['jumps-a-thread', 'rattles-sideways'],
  dent: ['tight-once-a-turn'],
  once: ['tight-once-a-turn'],
  float: ['tight-once-a-turn'],
  twice: ['tight-twice-a-turn'],
  four: ['tight-four-times-a-turn'],
  gritty: ['gritty'],
  tilted: ['open-one-side', 'rocks'],
  hump: ['rocks', 'open-one-side', 'gap-all-round'],
  struck: ['gap-all-round', 'shoulder-hit', 'rocks'],
  weak: ['chipped', 'torn'],
};

/** A fault that nobody complained of counts this much beside one that was. Judgement, no source. */
const SILENT = 0.5;

/** How much each fault counts, in the order of `FAULTS`, by what was said. */
export const voices = (said: Int8Array): Float64Array =>
  Float64Array.from(FAULTS, (fault) =>
    VOICE[fault].some((word) => said[wordIndex[word]] === 1) ? 1 : SILENT,
  );

const largest = (...of: readonly (readonly [number, number])[]): number => {
  let [most, cause] = of[0] as readonly [number, number];
  for (const [amount, candidate] of of) if (amount > most) [most, cause] = [amount, candidate];
  return cause;
};

/** What eats most of the clearance. */
const ofFlanks = (joint: Latent, box: JointNumbers, at: Standing): number =>
  largest(
    [box.wanted - at.clearance, C.tight],
    [at.leanLoss, C.lean],
    [at.filmLoss, C.film],
    [joint.fuzz, C.fuzz],
    [2 * (joint.springRecess + joint.springTenon), C.spring],
    [joint.ovalOne > 0 ? joint.oval / 2 : 0, C.oval],
  );

/** What eats most of the crest gap: sizes count as crests where the flanks have room for all that. */
const ofCrests = (joint: Latent, box: JointNumbers, at: Standing, isLate: boolean): number => {
  const planned = box.plannedDepth + (box.bore - box.tenon) / 2;
  const onTenon = isLate
    ? at.tenonGap - Math.max(0, joint.taperTenon) / 2 < at.recessGap - Math.max(0, joint.taperBore) / 2
    : at.tenonGap < at.recessGap;
  const bare = (joint.bore - joint.tenon) / 2 + (onTenon ? joint.depthRecess : joint.depthTenon);
  const sized = Math.max(0, planned - bare);
  return largest(
    [onTenon ? joint.raisedTenon : joint.raisedRecess, C.crests],
    [sized, at.clearance < 0.5 * box.wanted ? C.tight : C.crests],
    [onTenon ? joint.springRecess : joint.springTenon, C.spring],
    [2 * joint.film, C.film],
    [joint.fuzz / 3, C.fuzz],
    [onTenon ? joint.eccentric : 0, C.eccentric],
    [
      isLate ? Math.max(0, onTenon ? joint.taperTenon : joint.taperBore) / 2 : 0,
      onTenon ? C['tapered-tenon'] : C['tapered-bore'],
    ],
  );
};

const ofLate = (joint: Latent, box: JointNumbers, at: Standing): number => {
  const creep = 2 * (joint.creepRecess + joint.creepTenon);
  const flanks = ofFlanks(joint, box, at);
  const eaten = box.wanted - at.free;
  return creep >= eaten || creep >= 0.05 ? C.creep : flanks;
};

const causeOf = (fault: Fault, joint: Latent, box: JointNumbers, at: Standing, slips: number): number => {
  const sole = SOLE[fault];
  if (sole !== undefined) return C[sole];
  if (fault === 'tight') return ofFlanks(joint, box, at);
  if (fault === 'crest') return ofCrests(joint, box, at, false);
  if (fault === 'crest-late') return ofCrests(joint, box, at, true);
  if (fault === 'late') return ofLate(joint, box, at);
  if (fault === 'loose') return slips > at.clearance - box.wanted ? C.slip : C.loose;
  return C['low-engagement'];
};

/**
 * Share of each cause in what is wrong with a joint, into `shares` in the order of `CAUSES`: every fault goes to its largest contributor,
 * several faults split it by their voices. Hot cutter and cross-start stop no lid, so they count only where nothing else is wrong.
 */
export const blame = (
  joint: Latent,
  box: JointNumbers,
  at: Standing,
  voice: Float64Array,
  shares: Float64Array,
): void => {
  shares.fill(0);
  const slips = (joint.slipRecess + joint.slipTenon) / SLOPE;
  let sum = 0;
  for (let i = 0; i < FAULT_COUNT; i++) {
    if ((at.faults[i] as number) <= 0) continue;
    const cause = causeOf(FAULTS[i] as Fault, joint, box, at, slips);
    shares[cause] = (shares[cause] as number) + (voice[i] as number);
    sum += voice[i] as number;
  }
  if (sum === 0) {
    const alone =
      joint.crossed > 0.25 ? C['cross-start'] : joint.burnt > 0 ? C['hot-cutter'] : C['nothing-wrong'];
    shares[alone] = 1;
    return;
  }
  for (let i = 0; i < CAUSE_COUNT; i++) shares[i] = (shares[i] as number) / sum;
};
