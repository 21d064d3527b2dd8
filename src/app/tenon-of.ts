import type { TenonReading } from '../domain/box/records.ts';
import { type Millimetres, mm } from '../domain/units/brands.ts';

/** A turned tenon as its readings tell it. */
export interface TenonMeasure {
  readonly mean: Millimetres;
  /** By the shoulder less at the end; null until both places were read. */
  readonly taper: Millimetres | null;
  readonly overCrests: boolean;
  /** The readings that count: the newest at each place, for a tenon is turned down between readings. */
  readonly counted: readonly TenonReading[];
}

/** What the readings of a tenon tell, or null when there are none. */
export const tenonOf = (readings: readonly TenonReading[]): TenonMeasure | null => {
  const newest = (where: TenonReading['where']) => readings.findLast((reading) => reading.where === where);
  const [end, shoulder] = [newest('end'), newest('shoulder')];
  const counted = [end, shoulder].filter((reading) => reading !== undefined);
  if (counted.length === 0) return null;
  const sum = counted.reduce((total, { diameter }) => total + diameter.mm, 0);
  return {
    mean: mm(sum / counted.length),
    taper: end && shoulder ? mm(shoulder.diameter.mm - end.diameter.mm) : null,
    overCrests: counted.some(({ overCrests }) => overCrests),
    counted,
  };
};
