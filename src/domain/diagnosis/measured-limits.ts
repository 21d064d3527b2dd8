import { type Millimetres, mm } from '../units/brands.ts';

interface Limits<T> {
  readonly min: T;
  readonly max: T;
}

/** What can be measured at a trial fit, and no further: a form refuses more, and what a log has beyond counts as not measured. */
export const MEASURED_LIMITS = {
  endPlay: { min: mm(0), max: mm(6) },
  turnsOn: { min: 0, max: 50 },
  /** Recess depth less tenon length. */
  bottomGap: { min: mm(-5), max: mm(200) },
  crestFlat: { min: mm(0), max: mm(12.7) },
  /** Difference of two readings of one piece. */
  boreTaper: { min: mm(-5), max: mm(5) },
  tenonTaper: { min: mm(-5), max: mm(5) },
  outOfRound: { min: mm(-5), max: mm(5) },
} as const satisfies Readonly<Record<string, Limits<Millimetres> | Limits<number>>>;

/** The value, or null where it is none or beyond what can be measured. */
export const ifMeasured = <T extends number>(
  what: keyof typeof MEASURED_LIMITS,
  value: T | null | undefined,
): T | null => {
  const { min, max } = MEASURED_LIMITS[what];
  return value != null && value >= min && value <= max ? value : null;
};
