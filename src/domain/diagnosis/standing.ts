import { leanLoss } from '../joint/clearance.ts';
import { filmEats } from '../joint/film.ts';
import { grooveReach } from '../joint/fit.ts';
import { SLOPE } from '../joint/profile.ts';
import type { JointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';

/** What may be left to mend in a joint. */
export const FAULTS = [
  'tight',
  'crest',
  'late',
  'crest-late',
  'floor',
  'relief',
  'last',
  'lead',
  'loose',
  'thin',
  'jumps',
  'dent',
  'once',
  'float',
  'twice',
  'four',
  'gritty',
  'tilted',
  'hump',
  'struck',
  'weak',
] as const;
export type Fault = (typeof FAULTS)[number];
export const FAULT_COUNT = FAULTS.length;
export const faultIndex = Object.fromEntries(FAULTS.map((fault, i) => [fault, i])) as Readonly<
  Record<Fault, number>
>;
const F = faultIndex;

/** From how much on something is a fault, mm; smaller amounts are what every joint has. Judgement, no source. */
const FELT = 0.01;
const SEEN = 0.05;
/** A thread that engages less of 0.75 H than this jumps. Judgement, no source. */
export const JUMPS_BELOW = 0.42;
/** Ridge thinner by more than this share of the pitch is a fault even where the lid goes on. Judgement, no source. */
const THIN = 0.08;
const WEAK = 0.3;
/** A shoulder is this much wider than the tenon, mm. An estimate, no source. */
const SHOULDER = 8;

/** How a joint stands: one record, written again for each joint. mm; diametral where a clearance is meant. */
export interface Standing {
  /** Clearance of the flanks by the sizes alone, as `fitOf` has it. */
  clearance: number;
  /** What is left of it free of lean, film, fuzz and spring; where the cut ended; where one oval piece pinches. */
  free: number;
  deep: number;
  one: number;
  leanLoss: number;
  filmLoss: number;
  /** Radial gaps at the crests; `gap` is the smaller, `gapDeep` with the tapers where they are worst. */
  tenonGap: number;
  recessGap: number;
  gap: number;
  gapDeep: number;
  /** Crest flats. */
  flatRecess: number;
  flatTenon: number;
  /** Share of 0.75 H. */
  engaged: number;
  play: number;
  /** What the lid can rock before its shoulder opens, rad; what opens then, mm. */
  rocking: number;
  opening: number;
  /** How much too tight all along, and late. */
  tightness: number;
  lateness: number;
  /** By how much something stops it short of home, axial; negative is clear. */
  stop: number;
  /** Looser than feels right. */
  looseness: number;
  /** How much of each fault there is; nothing or less is no fault. */
  readonly faults: Float64Array;
}

export const emptyStanding = (): Standing => ({
  clearance: 0,
  free: 0,
  deep: 0,
  one: 0,
  leanLoss: 0,
  filmLoss: 0,
  tenonGap: 0,
  recessGap: 0,
  gap: 0,
  gapDeep: 0,
  flatRecess: 0,
  flatTenon: 0,
  engaged: 0,
  play: 0,
  rocking: 0,
  opening: 0,
  tightness: 0,
  lateness: 0,
  stop: 0,
  looseness: 0,
  faults: new Float64Array(FAULT_COUNT),
});

const flanks = (joint: Latent, box: JointNumbers, out: Standing): void => {
  const { pitch } = box;
  const recess = grooveReach(joint.depthRecess, joint.tip, box.shiftRecess, pitch);
  const tenon = grooveReach(joint.depthTenon, joint.tip, box.shiftTenon, pitch);
  const overlap = Math.max(0, (joint.tenon - joint.bore) / 2);
  const slip = joint.slipRecess + joint.slipTenon;
  out.clearance = joint.bore - joint.tenon + 2 * (recess + tenon);
  out.leanLoss = leanLoss(overlap, joint.lean);
  out.filmLoss = filmEats(joint.film);
  out.free =
    out.clearance +
    slip / SLOPE -
    out.leanLoss -
    out.filmLoss -
    joint.fuzz -
    2 * (joint.springRecess + joint.springTenon);
  out.deep = out.free - 2 * (joint.creepRecess + joint.creepTenon);
  out.one = out.free - (joint.ovalOne > 0 ? joint.oval / 2 : 0);
  out.engaged = overlap / box.full;
  out.flatRecess = pitch - joint.tip - 2 * box.shiftRecess - 2 * SLOPE * joint.depthRecess - joint.slipRecess;
  out.flatTenon = pitch - joint.tip - 2 * box.shiftTenon - 2 * SLOPE * joint.depthTenon - joint.slipTenon;
};

const crests = (joint: Latent, out: Standing): void => {
  const between = (joint.bore - joint.tenon) / 2;
  const eaten = 2 * joint.film + joint.fuzz / 3;
  out.tenonGap =
    between + joint.depthRecess - joint.raisedTenon - joint.springRecess - eaten - joint.eccentric;
  out.recessGap = between + joint.depthTenon - joint.raisedRecess - joint.springTenon - eaten;
  out.gap = Math.min(out.tenonGap, out.recessGap);
  out.gapDeep = Math.min(
    out.tenonGap - Math.max(0, joint.taperTenon) / 2,
    out.recessGap - Math.max(0, joint.taperBore) / 2,
  );
};

/** Write how a joint stands. Geometry of joint-model: clearance, crest gaps, play, rocking; the rest is said at each line. */
export const standingOf = (joint: Latent, box: JointNumbers, out: Standing): void => {
  flanks(joint, box, out);
  crests(joint, out);
  const { faults, free, one, deep } = out;
  // Felt at home or a turn before it: what a cut that crept takes at the end counts half.
  out.play = SLOPE * Math.max(0, one - (joint.creepRecess + joint.creepTenon));
  out.rocking = out.play / (joint.bore + box.threads * box.pitch * SLOPE);
  out.opening = (joint.tenon + SHOULDER) * Math.max(0, joint.tilt - out.rocking);
  // What would still be open once the flanks have their room: a tight lid always rocks too little.
  const freed = Math.max(out.rocking, (SLOPE * joint.low) / (joint.bore + box.threads * box.pitch * SLOPE));
  const flank = joint.low - one - joint.wax;
  const crest = -2 * out.gap - joint.wax;
  const flankLate = joint.low - deep - joint.wax;
  const crestLate = -2 * out.gapDeep - joint.wax;
  out.tightness = Math.max(flank, crest);
  out.lateness = Math.max(flankLate, crestLate);
  out.stop = Math.max(-joint.floor, joint.relief, joint.last);
  out.looseness = free - joint.oval / 2 - joint.top;
  // Room that a lump, an oval or a squeezed wall has before it pinches.
  const room = Math.max(0, one);
  const slip = (joint.slipRecess + joint.slipTenon) / box.pitch;
  const isTight = out.tightness > FELT;
  faults[F.tight] = flank - FELT;
  faults[F.crest] = crest - FELT;
  faults[F.late] = isTight ? -1 : flankLate - 0.035;
  faults[F['crest-late']] = isTight ? -1 : crestLate - 0.035;
  faults[F.floor] = -joint.floor;
  faults[F.relief] = joint.relief;
  faults[F.last] = joint.last;
  faults[F.lead] = joint.lead - 0.14;
  faults[F.loose] = out.looseness;
  faults[F.thin] = slip - THIN;
  faults[F.jumps] = JUMPS_BELOW - out.engaged;
  faults[F.dent] = joint.dent - room / 2 - FELT;
  faults[F.once] = joint.eccentricFelt > 0 ? joint.eccentric - 0.12 : -1;
  faults[F.float] = joint.float - out.play - FELT;
  faults[F.twice] = joint.ovalOne > 0 ? -1 : joint.oval - room - FELT;
  faults[F.four] = joint.squeeze - room - FELT;
  faults[F.gritty] = joint.chips > 0 ? 1 : -1;
  faults[F.tilted] = (joint.tenon + SHOULDER) * Math.max(0, joint.tilt - freed) - SEEN;
  faults[F.hump] = joint.hump - SEEN;
  faults[F.struck] = joint.struck - SEEN;
  faults[F.weak] = joint.weak - WEAK;
};

/** Number of faults of a joint. */
export const faultsOf = ({ faults }: Standing): number => {
  let count = 0;
  for (let i = 0; i < FAULT_COUNT; i++) if ((faults[i] as number) > 0) count++;
  return count;
};
