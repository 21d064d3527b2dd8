/** A count out of a total: whole numbers, 0 <= events <= total. */
export interface Proportion {
  readonly events: number;
  readonly total: number;
}

/** Events among the missed (a of a + b) and among the done (c of c + d), in whole numbers from 0. */
export interface TwoByTwo {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

/** An interval, both ends included. Infinity stands for "no limit above". */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

export const missedOf = (t: TwoByTwo): Proportion => ({ events: t.a, total: t.a + t.b });
export const doneOf = (t: TwoByTwo): Proportion => ({ events: t.c, total: t.c + t.d });
export const sizeOf = (t: TwoByTwo): number => t.a + t.b + t.c + t.d;
/** Event rate among the missed minus that among the done; null while either is empty. */
export const rateDifference = (t: TwoByTwo): number | null =>
  t.a + t.b === 0 || t.c + t.d === 0 ? null : t.a / (t.a + t.b) - t.c / (t.c + t.d);
