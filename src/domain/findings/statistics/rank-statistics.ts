import type { Interval } from './counts.ts';
import { type Level, normalTails, zOf } from './distributions.ts';

/** Middle value; null of nothing. */
export const median = (values: ArrayLike<number>): number | null => {
  if (values.length === 0) return null;
  // As doubles, sorted without a comparison of our own: there may be tens of thousands.
  const sorted = Float64Array.from(values).sort();
  const middle = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(middle)] as number) + (sorted[Math.ceil(middle)] as number)) / 2;
};

export interface Drift {
  /** Theil-Sen slope: the median of all slopes between two points, per unit of x. */
  readonly slope: number;
  /** Mann and Kendall's test that y neither rises nor falls, with ties and the continuity step. */
  readonly p: number;
  readonly points: number;
}

/** Does y drift along x? Null with fewer than four points or only one x. Order of the points does not matter. */
export const drift = (points: readonly { readonly x: number; readonly y: number }[]): Drift | null => {
  const n = points.length;
  if (n < 4) return null;
  const slopes: number[] = [];
  let s = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++) {
      const [a, b] = [points[i] as Point, points[j] as Point];
      if (a.x !== b.x) slopes.push((a.y - b.y) / (a.x - b.x));
      s += Math.sign(a.x - b.x) * Math.sign(a.y - b.y);
    }
  const slope = median(slopes);
  if (slope === null) return null;
  const variance = kendallVariance(
    n,
    points.map(({ x }) => x),
    points.map(({ y }) => y),
  );
  const z = variance > 0 ? (s - Math.sign(s)) / Math.sqrt(variance) : 0;
  return { slope, p: normalTails(z), points: n };
};

type Point = { readonly x: number; readonly y: number };

/** Variance of Kendall's S when both sides may have ties (Kendall, Rank Correlation Methods; from memory). */
const kendallVariance = (n: number, xs: readonly number[], ys: readonly number[]): number => {
  const [tx, ty] = [tieSizes(xs), tieSizes(ys)];
  const sum = (ties: readonly number[], f: (t: number) => number) =>
    ties.reduce((total, t) => total + f(t), 0);
  const first = (t: number) => t * (t - 1) * (2 * t + 5);
  const second = (t: number) => t * (t - 1) * (t - 2);
  const third = (t: number) => t * (t - 1);
  return (
    (first(n) - sum(tx, first) - sum(ty, first)) / 18 +
    (sum(tx, second) * sum(ty, second)) / (9 * n * (n - 1) * (n - 2)) +
    (sum(tx, third) * sum(ty, third)) / (2 * n * (n - 1))
  );
};

const tieSizes = (values: readonly number[]): readonly number[] => {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()];
};

export interface Shift extends Interval {
  /** Hodges and Lehmann's shift: the median of all differences, one minus other. */
  readonly value: number;
  readonly p: number;
}

/**
 * How far one group lies above another, with the interval that inverts the rank-sum test (normal approximation with ties).
 * Null with fewer than three in either, where no interval could exclude anything.
 */
export const shift = (
  one: readonly number[],
  other: readonly number[],
  level: Level = 0.95,
): Shift | null => {
  const [m, n] = [one.length, other.length];
  if (m < 3 || n < 3) return null;
  const differences = Float64Array.from(one.flatMap((a) => other.map((b) => a - b))).sort();
  const ties = tieSizes([...one, ...other]).reduce((sum, t) => sum + t * t * t - t, 0);
  const all = m + n;
  const variance = ((m * n) / 12) * (all + 1 - ties / (all * (all - 1)));
  const wins = differences.reduce((sum, d) => sum + (d > 0 ? 1 : d === 0 ? 0.5 : 0), 0);
  const centred = wins - (m * n) / 2;
  const z = variance > 0 ? (centred - 0.5 * Math.sign(centred)) / Math.sqrt(variance) : 0;
  const cut = Math.max(0, Math.floor((m * n) / 2 - zOf(level) * Math.sqrt(variance)));
  return {
    value: median(differences) as number,
    low: differences[cut] as number,
    high: differences[m * n - 1 - cut] as number,
    p: normalTails(z),
  };
};
