import type { Bore, BoreMeasure, Caliper } from '../joint/bore.ts';
import { boundsOf, outside } from '../joint/bounds.ts';
import { CALIPER_ERROR } from '../joint/least.ts';
import { firstRefusal, ok, type Refusal, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import type { BoreReading, Instrument, TenonReading } from './records.ts';
import { inSequence } from './sequence.ts';

/** Fuzz on crests adds about this to the uncertainty of a reading, mm. An estimate, no source. */
const FUZZ = 0.05;

const average = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Once plain readings exist, those over crests are left out. */
const counting = <R extends { readonly overCrests: boolean }>(
  readings: readonly R[],
): { readonly counted: readonly R[]; readonly overCrests: boolean } => {
  const plain = readings.filter(({ overCrests }) => !overCrests);
  return plain.length > 0 ? { counted: plain, overCrests: false } : { counted: readings, overCrests: true };
};

/** Plus or minus on a mean, mm: the readings' own error, with half of what the piece varies by. */
const spreadOf = (
  readings: number,
  error: number,
  overCrests: boolean,
  ...varies: readonly (number | null)[]
): Millimetres =>
  mm(
    Math.hypot(
      error / Math.sqrt(readings),
      overCrests ? FUZZ : 0,
      ...varies.map((amount) => (amount ?? 0) / 2),
    ),
  );

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
  const { counted, overCrests } = counting(all);
  const offset = caliper.insideMinusOutside ?? 0;
  const mouth = averageAt(counted, 'mouth');
  const relief = averageAt(counted, 'relief');
  const places = [mouth, relief].filter((value) => value !== null);
  const rounds = counted.flatMap(({ along, across }) => (across === null ? [] : [Math.abs(along - across)]));
  const outOfRound = rounds.length === 0 ? null : mm(Math.max(...rounds));
  const taper = mouth === null || relief === null ? null : mm(mouth - relief);
  const least = Math.min(
    ...counted.flatMap(({ along, across }) => (across === null ? [along] : [along, across])),
  );
  return ok({
    mean: mm(average(places) - offset),
    outOfRound,
    taper,
    least: mm(least - offset),
    overCrests,
    uncertainty: spreadOf(counted.length, caliper.uncertainty, overCrests, outOfRound, taper),
  });
};

export const caliperFrom = ({ insideMinusOutside }: Instrument): Caliper => ({
  insideMinusOutside: insideMinusOutside?.mm ?? null,
  uncertainty: CALIPER_ERROR,
});

/** The bore that was measured with a caliper, or null while there is no reading. Refuses readings that no bore has. */
export const measuredBore = (readings: readonly BoreReading[], caliper: Instrument): Result<Bore | null> =>
  readings.length === 0
    ? ok(null)
    : boreOf(
        readings.map(({ where, along, across, overCrests }) => ({
          where,
          along: along.mm,
          across: across?.mm ?? null,
          overCrests,
        })),
        caliperFrom(caliper),
      );

/** A turned tenon from its readings, mm, in the scale of the caliper's outside jaws. */
export interface MeasuredTenon {
  readonly mean: Millimetres;
  /** By the shoulder less at the end; null until both places were read. */
  readonly taper: Millimetres | null;
  readonly overCrests: boolean;
  /** The readings that count: plain before those over crests, the newest at each place, for a tenon is turned down between readings. */
  readonly counted: readonly TenonReading[];
  /** Plus or minus on the mean. */
  readonly uncertainty: Millimetres;
}

/** The tenon that was measured, or null while there is no reading. */
export const measuredTenon = (readings: readonly TenonReading[]): MeasuredTenon | null => {
  const { counted: sound, overCrests } = counting(inSequence(readings));
  const newest = (where: TenonReading['where']) => sound.findLast((reading) => reading.where === where);
  const [end, shoulder] = [newest('end'), newest('shoulder')];
  const counted = [end, shoulder].filter((reading) => reading !== undefined);
  if (counted.length === 0) return null;
  const taper = end && shoulder ? mm(shoulder.diameter.mm - end.diameter.mm) : null;
  return {
    mean: mm(average(counted.map(({ diameter }) => diameter.mm))),
    taper,
    overCrests,
    counted,
    uncertainty: spreadOf(counted.length, CALIPER_ERROR, overCrests, taper),
  };
};
