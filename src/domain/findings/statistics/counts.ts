import { ok, type Refusal, type Result, refuse } from '../../result.ts';

/** So many of so many. Made only by `proportion`, so the counts can be trusted. */
export interface Proportion {
  readonly events: number;
  readonly total: number;
}

/** Events among the missed (a of a + b) and among the done (c of c + d). Made only by `twoByTwo`. */
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

const MOST = 1e7;

const whole = (field: string, given: number): Refusal | null => {
  if (!Number.isInteger(given)) return { problem: 'not-a-number', field, typed: String(given) };
  if (given < 0 || given > MOST)
    return { problem: 'out-of-range', field, given, min: 0, max: MOST, quantity: 'count' };
  return null;
};

/** Events of a total: whole numbers, 0 <= events <= total <= 10 million. */
export const proportion = (events: number, total: number): Result<Proportion> => {
  const bad = whole('events', events) ?? whole('total', total);
  if (bad) return refuse(bad);
  if (events > total)
    return refuse({
      problem: 'conflict',
      field: 'events',
      other: 'total',
      given: events,
      otherGiven: total,
      nearest: total,
      quantity: 'count',
    });
  return ok({ events, total });
};

/** A fourfold table from whole counts of 0 to 10 million: missed with and without the event, done with and without it. */
export const twoByTwo = (a: number, b: number, c: number, d: number): Result<TwoByTwo> => {
  const bad = whole('a', a) ?? whole('b', b) ?? whole('c', c) ?? whole('d', d);
  return bad ? refuse(bad) : ok({ a, b, c, d });
};

export const missedOf = (t: TwoByTwo): Proportion => ({ events: t.a, total: t.a + t.b });
export const doneOf = (t: TwoByTwo): Proportion => ({ events: t.c, total: t.c + t.d });
export const sizeOf = (t: TwoByTwo): number => t.a + t.b + t.c + t.d;
/** Event rate among the missed minus that among the done; null while either is empty. */
export const rateDifference = (t: TwoByTwo): number | null =>
  t.a + t.b === 0 || t.c + t.d === 0 ? null : t.a / (t.a + t.b) - t.c / (t.c + t.d);
