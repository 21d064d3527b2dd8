import { firstRefusal, ok, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';

/** A caliper's reading across a bore, along the rings and (when taken) across them, mm. */
export interface BoreMeasure {
  readonly where: 'mouth' | 'relief';
  readonly along: Millimetres;
  readonly across: Millimetres | null;
  /** Taken over finished crests, where one reads fuzz too. */
  readonly overCrests: boolean;
}

/** The caliper that took the readings. */
export interface Caliper {
  /** Inside reading less outside reading on one ring; nothing when never checked. */
  readonly insideMinusOutside: Millimetres | null;
  /** How far one reading may be out, mm. */
  readonly uncertainty: Millimetres;
}

/** A bore from its readings (`domain/box/measured.ts`), in the scale of the caliper's outside jaws, with which the tenon will be measured. */
export interface Bore {
  readonly mean: Millimetres;
  /** Widest less narrowest direction, the greatest found at one place; null without a pair of readings. */
  readonly outOfRound: Millimetres | null;
  /** Mouth less relief, mean diameters: more than nothing opens toward the mouth. Null until both places were read. */
  readonly taper: Millimetres | null;
  /** The narrowest reading: a tenon's crest of constant diameter meets it first. */
  readonly least: Millimetres;
  readonly overCrests: boolean;
  /** Plus or minus on the mean, mm: readings' own error, with half the out-of-round and half the taper where they are known. */
  readonly uncertainty: Millimetres;
}

/** The tenon to turn for a measured bore. */
export interface TenonTarget {
  readonly tenon: Millimetres;
  /** Zero the caliper on the bore, then read this over the tenon: the allowance with the caliper's own offset in it. */
  readonly fromZero: Millimetres;
  readonly allowance: Millimetres;
  /** Turned within this, plus or minus, the clearance stays within a quarter of itself. Never asked finer than 0.02 mm. */
  readonly tolerance: Millimetres;
  /** Plus or minus on the tenon diameter, mm, from the bore's readings. */
  readonly uncertainty: Millimetres;
}

/** No hand turns closer, mm. An estimate, no source. */
const FINEST_TURNING = 0.02;

/**
 * The tenon diameter for a measured bore, mm: mean + allowance. An inside-jaw zero carries the caliper's offset, so what is read from it
 * is allowance - offset. The clearance moves one for one with the tenon, hence a tolerance of a quarter of the clearance.
 */
export const tenonForBore = (
  bore: Bore,
  allowance: Millimetres,
  clearance: Millimetres,
  caliper: Caliper,
): Result<TenonTarget> => {
  const refusal =
    firstRefusal(within('allowance', allowance, 0, 24)) ??
    outside({
      recess: bore.mean,
      wantedClearance: clearance,
      insideMinusOutside: caliper.insideMinusOutside ?? undefined,
      uncertainty: bore.uncertainty,
    });
  if (refusal) return refuse(refusal);
  return ok({
    tenon: mm(bore.mean + allowance),
    fromZero: mm(allowance - (caliper.insideMinusOutside ?? 0)),
    allowance,
    tolerance: mm(Math.max(FINEST_TURNING, clearance / 4)),
    uncertainty: bore.uncertainty,
  });
};
