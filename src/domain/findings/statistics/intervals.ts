import { bisect } from './bisect.ts';
import { doneOf, type Interval, missedOf, type Proportion, type TwoByTwo } from './counts.ts';
import { type Level, zOf } from './distributions.ts';

/**
 * Wilson's score interval for a proportion, without continuity correction (Newcombe 1998, Statistics in Medicine 17:
 * 857-872, method 3). Nothing seen yet gives [0, 1].
 */
export const wilson = ({ events, total }: Proportion, level: Level = 0.95): Interval => {
  if (total === 0) return { low: 0, high: 1 };
  const z2 = zOf(level) ** 2;
  const middle = events + z2 / 2;
  const reach = Math.sqrt(z2 * ((events * (total - events)) / total + z2 / 4));
  return {
    low: events === 0 ? 0 : Math.max(0, (middle - reach) / (total + z2)),
    high: events === total ? 1 : Math.min(1, (middle + reach) / (total + z2)),
  };
};

/**
 * Newcombe's hybrid score interval for the difference of two proportions, missed minus done (Statistics in Medicine 1998,
 * 17: 873-890, method 10): each side's Wilson limits, joined at right angles. An empty side gives [-1, 1] at most.
 */
export const newcombeDifference = (t: TwoByTwo, level: Level = 0.95): Interval => {
  const [missed, done] = [missedOf(t), doneOf(t)];
  const [m, d] = [wilson(missed, level), wilson(done, level)];
  // With nothing seen on a side its rate could be anything, so its share of the interval is all of it.
  const rate = ({ events, total }: Proportion, limit: number) => (total === 0 ? limit : events / total);
  const ends = (mOwn: number, dOwn: number) => mOwn - dOwn;
  const low =
    ends(rate(missed, m.low), rate(done, d.high)) -
    Math.hypot(rate(missed, m.low) - m.low, d.high - rate(done, d.high));
  const high =
    ends(rate(missed, m.high), rate(done, d.low)) +
    Math.hypot(m.high - rate(missed, m.high), rate(done, d.low) - d.low);
  return { low: Math.max(-1, low), high: Math.min(1, high) };
};

/**
 * Miettinen and Nurminen's score interval for the relative risk, missed over done (Statistics in Medicine 1985, 4:
 * 213-226, with their N/(N-1)): all ratios whose score chi-square, at the risks most likely under that ratio, stays below
 * z squared. No event among the missed gives [0, U]; none among the done [L, Infinity]; none at all, or an empty side,
 * null: there is nothing to compare yet.
 */
export const relativeRiskInterval = (t: TwoByTwo, level: Level = 0.95): Interval | null => {
  const missed = t.a + t.b;
  const done = t.c + t.d;
  if (missed === 0 || done === 0 || t.a + t.c === 0) return null;
  const z2 = zOf(level) ** 2;
  const rates = { missed: t.a / missed, done: t.c / done };
  const chiSquare = (log: number): number => scoreChiSquare(t, Math.exp(log)) - z2;
  const point = t.a === 0 ? -LOG_FAR : t.c === 0 ? LOG_FAR : Math.log(rates.missed / rates.done);
  return {
    low: t.a === 0 ? 0 : Math.exp(bisect((log) => -chiSquare(log), -LOG_FAR, point)),
    high: t.c === 0 ? Number.POSITIVE_INFINITY : Math.exp(bisect(chiSquare, point, LOG_FAR)),
  };
};

/** Far beyond any relative risk of counts up to ten million. */
const LOG_FAR = 40;

const scoreChiSquare = (t: TwoByTwo, ratio: number): number => {
  const n1 = t.a + t.b;
  const n0 = t.c + t.d;
  const n = n1 + n0;
  // The risk of the done that is likeliest when the missed have `ratio` times it: the smaller root of a quadratic.
  const A = n * ratio;
  const B = n1 * ratio + t.a + n0 + t.c * ratio;
  const C = t.a + t.c;
  const p0 = (2 * C) / (B + Math.sqrt(Math.max(0, B * B - 4 * A * C)));
  const p1 = Math.min(1, ratio * p0);
  const variance = ((p1 * (1 - p1)) / n1 + (ratio * ratio * p0 * (1 - p0)) / n0) * (n / (n - 1));
  const gap = t.a / n1 - (ratio * t.c) / n0;
  return gap === 0 ? 0 : variance <= 0 ? Number.POSITIVE_INFINITY : (gap * gap) / variance;
};
