import type { JointNumbers } from './joint-numbers.ts';
import { copyLatent, emptyLatent, type Latent } from './latent.ts';
import { minutesToMend } from './mending.ts';
import { applyMove, type Move, minutesOf, pickUp } from './moves.ts';
import { emptyStanding, faultIndex, faultsOf, type Standing, standingOf } from './standing.ts';

const F = faultIndex;

/** What a move does to each of the likely joints. */
export interface Outcome {
  readonly move: Move;
  readonly cost: number;
  /** 1 where nothing is left to mend, else 0.8 of the share of the mending that is saved. */
  readonly off: Float64Array;
  /** Minutes of mending added. */
  readonly harm: Float64Array;
  /** 1 where it is right afterwards. */
  readonly right: Uint8Array;
  /** Shares of the joints, afterwards. */
  readonly thinCrest: number;
  /** Too little engaged, or a new tenon that could not be used. */
  readonly spent: number;
  readonly looser: number;
  readonly floorHit: number;
}

/** How the likely joints stand before any move, and what it would take to mend them. */
export interface Ensemble {
  readonly box: JointNumbers;
  readonly joints: readonly Latent[];
  readonly minutes: Float64Array;
  /** Clearance that is free, diametral. */
  readonly free: Float64Array;
  readonly canCut: boolean;
  /** No fault is likelier than none. */
  readonly isLikelySound: boolean;
  /** Shares of the joints before any move. */
  readonly inBand: number;
  readonly tightFlanks: number;
  readonly couldDeepen: number;
  readonly onCrests: number;
  readonly looser: number;
  readonly jumpsOrSlipped: number;
  readonly floorHit: number;
}

/** Crest that a joint must still have after the deepening that would mend it, mm. */
const CREST_LEFT = 0.15;

export const ensembleOf = (
  joints: readonly Latent[],
  box: JointNumbers,
  canCut: boolean,
  isLikelySound: boolean,
): Ensemble => {
  const at = emptyStanding();
  const count = joints.length;
  const minutes = new Float64Array(count);
  const free = new Float64Array(count);
  const shares = {
    inBand: 0,
    tightFlanks: 0,
    couldDeepen: 0,
    onCrests: 0,
    looser: 0,
    jumpsOrSlipped: 0,
    floorHit: 0,
  };
  joints.forEach((joint, j) => {
    standingOf(joint, box, at);
    minutes[j] = minutesToMend(joint, box, at, canCut);
    free[j] = at.one;
    const { faults } = at;
    const need = Math.max(faults[F.tight] as number, faults[F.late] as number);
    if (at.one >= joint.low && at.looseness <= 0) shares.inBand++;
    if (joint.low - at.one > 0) shares.tightFlanks++;
    if (need > 0 && Math.max(at.flatTenon, at.flatRecess) - 0.577 * need >= CREST_LEFT) shares.couldDeepen++;
    if (Math.max(faults[F.crest] as number, faults[F['crest-late']] as number) > 0) shares.onCrests++;
    if (at.looseness > 0) shares.looser++;
    if ((faults[F.jumps] as number) > 0 || (faults[F.thin] as number) > 0) shares.jumpsOrSlipped++;
    if (joint.floor < 0) shares.floorHit++;
  });
  const share = (value: number): number => value / count;
  return {
    box,
    joints,
    minutes,
    free,
    canCut,
    isLikelySound,
    inBand: share(shares.inBand),
    tightFlanks: share(shares.tightFlanks),
    couldDeepen: share(shares.couldDeepen),
    onCrests: share(shares.onCrests),
    looser: share(shares.looser),
    jumpsOrSlipped: share(shares.jumpsOrSlipped),
    floorHit: share(shares.floorHit),
  };
};

const THIN_CREST = 0.11;
const THIN_NEW_CREST = 0.12;
/** Looser than that beyond the band, and looser than the old one, a new tenon is worse than none: a tight one can still be cut deeper. */
const SLACK = 0.03;
/** Least engagement of a new tenon, and of crests that were eased; shares of 0.75 H. */
const LEAST_NEW = 0.44;
const LEAST_EASED = 0.5;

const crestOf = (move: Move, at: Standing): number => (move.part === 'recess' ? at.flatRecess : at.flatTenon);

/** Try a move on every likely joint. */
export const outcomeOf = (move: Move, ensemble: Ensemble): Outcome => {
  const { joints, box, minutes, free } = ensemble;
  const count = joints.length;
  const cost = minutesOf(move);
  const off = new Float64Array(count);
  const harm = new Float64Array(count);
  const right = new Uint8Array(count);
  let [thin, spent, looser, floorHit] = [0, 0, 0, 0];
  // A setting is lost with the chuck slackened or the piece made again.
  const canCut = move.kind !== 'slacken-jaws' && (ensemble.canCut || move.reset);
  for (let j = 0; j < count; j++) {
    copyLatent(joints[j] as Latent, scratch);
    applyMove(move, scratch, box);
    if (move.reset) pickUp(move, scratch);
    standingOf(scratch, box, standing);
    const before = minutes[j] as number;
    const after = minutesToMend(scratch, box, standing, canCut);
    if (faultsOf(standing) === 0) {
      off[j] = 1;
      right[j] = 1;
    } else if (after > before) harm[j] = after - before;
    // What saves less than half of what it costs is no progress.
    else if (before - after >= cost / 2) off[j] = (0.8 * (before - after)) / before;
    const crest = crestOf(move, standing);
    const least = move.kind === 'new-tenon' ? LEAST_NEW : LEAST_EASED;
    // What pokes up beyond a crest that must be eased off costs engagement too.
    const engaged = standing.engaged - Math.max(0, -standing.gap) / box.full;
    if (crest < THIN_CREST) thin++;
    const isUnusable =
      move.kind === 'new-tenon' &&
      (crest < THIN_NEW_CREST || (standing.looseness > SLACK && standing.one > (free[j] as number)));
    if (engaged < least || isUnusable) spent++;
    if (standing.looseness > 0) looser++;
    if (scratch.floor < 0) floorHit++;
  }
  return {
    move,
    cost,
    off,
    harm,
    right,
    thinCrest: thin / count,
    spent: spent / count,
    looser: looser / count,
    floorHit: floorHit / count,
  };
};

// One joint and one standing are written again for each trial of a move; nothing in them outlives a call.
const scratch = emptyLatent();
const standing = emptyStanding();
