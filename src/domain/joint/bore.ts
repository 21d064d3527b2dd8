import { firstRefusal, ok, type Refusal, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { boundsOf, outside } from './bounds.ts';

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

/** Readings on wood with a caliper are seldom better than this, mm. Common practice, no source. */
export const USUAL_READING: Millimetres = mm(0.03);
/** Fuzz on crests adds about this to the uncertainty of a reading, mm. An estimate, no source. */
const FUZZ = 0.05;

/** A bore as its readings tell it, in the scale of the caliper's outside jaws, with which the tenon will be measured. */
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

const average = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const meanOf = ({ along, across }: BoreMeasure): number => (across === null ? along : (along + across) / 2);

const averageAt = (measures: readonly BoreMeasure[], where: BoreMeasure['where']): number | null => {
  const there = measures.filter((measure) => measure.where === where).map(meanOf);
  return there.length === 0 ? null : average(there);
};

const badMeasures = (measures: readonly BoreMeasure[], caliper: Caliper): Refusal | undefined => {
  if (measures.length === 0) return { problem: 'empty', field: 'bore' };
  const { min, max } = boundsOf('recess');
  const limits = measures.flatMap(({ along, across }) => [
    within('along', along, min, max),
    ...(across === null ? [] : [within('across', across, min, max)]),
  ]);
  return (
    firstRefusal(...limits) ??
    outside({
      insideMinusOutside: caliper.insideMinusOutside ?? undefined,
      uncertainty: caliper.uncertainty,
    })
  );
};

/**
 * Mean, taper and out-of-round of a bore from its readings, mm. Each place weighs the same however often it was read. Once plain
 * readings exist, those over crests are left out. The caliper's offset is taken off, so the mean can be set against an outside reading.
 */
export const boreOf = (all: readonly BoreMeasure[], caliper: Caliper): Result<Bore> => {
  const refusal = badMeasures(all, caliper);
  if (refusal) return refuse(refusal);
  const plain = all.filter(({ overCrests }) => !overCrests);
  const overCrests = plain.length === 0;
  const measures = overCrests ? all : plain;
  const offset = caliper.insideMinusOutside ?? 0;
  const mouth = averageAt(measures, 'mouth');
  const relief = averageAt(measures, 'relief');
  const places = [mouth, relief].filter((value) => value !== null);
  const rounds = measures.flatMap(({ along, across }) => (across === null ? [] : [Math.abs(along - across)]));
  const outOfRound = rounds.length === 0 ? null : Math.max(...rounds);
  const taper = mouth === null || relief === null ? null : mouth - relief;
  const reading = caliper.uncertainty / Math.sqrt(measures.length);
  const spread = Math.hypot(reading, overCrests ? FUZZ : 0, (outOfRound ?? 0) / 2, (taper ?? 0) / 2);
  return ok({
    mean: mm(average(places) - offset),
    outOfRound: outOfRound === null ? null : mm(outOfRound),
    taper: taper === null ? null : mm(taper),
    least: mm(
      Math.min(...measures.flatMap(({ along, across }) => (across === null ? [along] : [along, across]))) -
        offset,
    ),
    overCrests,
    uncertainty: mm(spread),
  });
};

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
