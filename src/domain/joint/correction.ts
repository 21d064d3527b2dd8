import { ok, type Refusal, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians, rad, type Turns } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { flankSlope } from './profile.ts';

/**
 * Depth to add to one piece (either opens the flanks alike) for a wanted clearance, mm radial: (wanted - now)/2, nothing when the
 * flanks are open enough. Exact.
 */
export const deepenForClearance = (
  clearance: Millimetres,
  wantedClearance: Millimetres,
): Result<Millimetres> => {
  const refusal = outside({ clearance, wantedClearance });
  return refusal ? refuse(refusal) : ok(mm(Math.max(0, (wantedClearance - clearance) / 2)));
};

/** The same from end play measured between its stops, mm: (wanted - now)/(2 tan A). Exact; good to 0.87 of the readings' error. */
export const deepenForPlay = (
  endPlay: Millimetres,
  wantedPlay: Millimetres,
  includedAngle?: Radians,
): Result<Millimetres> => {
  const refusal = outside({ endPlay, wantedPlay, includedAngle });
  return refusal
    ? refuse(refusal)
    : ok(mm(Math.max(0, (wantedPlay - endPlay) / (2 * flankSlope(includedAngle)))));
};

/** Turns the lid went on by hand, before and after one piece was deepened. */
export interface TwoTries {
  readonly deepened: Millimetres;
  readonly turnsBefore: Turns;
  readonly turnsAfter: Turns;
}

/** Fewer turns than this nobody can tell apart by looking at the lid: 3.6 degrees. An estimate, no source. */
const COUNTABLE = 0.01;

/** Whether the lid went on further by enough to see. */
export const wentFurther = ({ turnsBefore, turnsAfter }: Omit<TwoTries, 'deepened'>): boolean =>
  turnsAfter - turnsBefore >= COUNTABLE;

/**
 * Depth still to add when the lid goes further after a first deepening but not home, mm: deepened k1/(k2 - k1) + wanted clearance/2.
 * For an even interference, whose turns grow as one over it; exact under that assumption. Refuses tries that gained nothing: then
 * the flanks are not what binds.
 */
export const deepenFromTwoTries = (
  { deepened, turnsBefore, turnsAfter }: TwoTries,
  wantedClearance: Millimetres,
): Result<Millimetres> => {
  const refusal = outside({ deepened, turnsBefore, turnsAfter, wantedClearance });
  if (refusal) return refuse(refusal);
  if (!wentFurther({ turnsBefore, turnsAfter }))
    return refuse(conflict('turnsAfter', 'turnsBefore', turnsAfter, turnsBefore, 'turns'));
  return ok(mm((deepened * turnsBefore) / (turnsAfter - turnsBefore) + wantedClearance / 2));
};

const conflict = (
  field: string,
  other: string,
  given: number,
  otherGiven: number,
  quantity: 'turns' | 'length',
): Refusal => ({ problem: 'conflict', field, other, given, otherGiven, nearest: null, quantity });

/** End play that shrinks as the lid goes on: measured after some turns, and gone after more. */
export interface FadingPlay {
  readonly endPlay: Millimetres;
  readonly turnsBefore: Turns;
  /** Turns after which no play is left. */
  readonly turnsFree: Turns;
}

const badFading = ({ endPlay, turnsBefore, turnsFree }: FadingPlay): Refusal | undefined =>
  outside({ endPlay, turnsBefore, turnsFree }) ??
  (wentFurther({ turnsBefore, turnsAfter: turnsFree })
    ? undefined
    : conflict('turnsFree', 'turnsBefore', turnsFree, turnsBefore, 'turns'));

/**
 * Depth to add so that play lost in a straight line lasts for the turns needed and leaves some, mm:
 * (B1 (n - k)/(k - j) + left)/(2 tan A), nothing when it already does. Exact for a straight loss.
 */
export const deepenForFading = (
  fading: FadingPlay,
  turnsNeeded: Turns,
  playLeft: Millimetres,
  includedAngle?: Radians,
): Result<Millimetres> => {
  const refusal = badFading(fading) ?? outside({ turnsNeeded, playLeft, includedAngle });
  if (refusal) return refuse(refusal);
  const { endPlay, turnsBefore, turnsFree } = fading;
  const lost = (endPlay * (turnsNeeded - turnsFree)) / (turnsFree - turnsBefore);
  return ok(mm(Math.max(0, (lost + playLeft) / (2 * flankSlope(includedAngle)))));
};

/**
 * Taper (rad, of the flanks) that such a loss would mean: atan(B1/(2 tan A)/((k - j) P)). Above about 0.3 degrees the flanks are not
 * the cause: look to crests, re-chucking, creep.
 */
export const impliedTaper = (
  fading: FadingPlay,
  pitch: Millimetres,
  includedAngle?: Radians,
): Result<Radians> => {
  const refusal = badFading(fading) ?? outside({ pitch, includedAngle });
  if (refusal) return refuse(refusal);
  const { endPlay, turnsBefore, turnsFree } = fading;
  const run = (turnsFree - turnsBefore) * pitch;
  return ok(rad(Math.atan(endPlay / (2 * flankSlope(includedAngle)) / run)));
};

/** The taper above which a fading play cannot be the flanks' own, rad. An estimate. */
export const BELIEVABLE_TAPER: Radians = rad((0.3 * Math.PI) / 180);
