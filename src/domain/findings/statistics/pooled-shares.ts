import type { Interval, Proportion } from './counts.ts';
import { logGamma } from './distributions.ts';

/** A share believed in after seeing the counts: its mean, interval, and the belief itself on a grid of shares. */
export interface PooledShare extends Interval {
  readonly mean: number;
  /** Belief that the share lies in each of `CELLS` equal slices of [0, 1]; sums to 1. */
  readonly belief: Float64Array;
}

/** Slices of [0, 1]; the middle of slice i is (i + 1/2) / CELLS. */
const CELLS = 400;

const MIDDLES = Float64Array.from({ length: CELLS }, (_, i) => (i + 0.5) / CELLS);
const LOG = MIDDLES.map(Math.log);
const LOG_REST = MIDDLES.map((x) => Math.log1p(-x));

/** Hyperparameters: what the shares have in common (mean m) and how alike they are (concentration k), with log prior weight. */
const GRID: readonly { readonly m: number; readonly k: number; readonly prior: number }[] = (() => {
  const grid: { m: number; k: number; prior: number }[] = [];
  for (let i = 0; i < 32; i++)
    for (let j = 0; j < 21; j++) {
      const m = (i + 0.5) / 32;
      const z = -3 + 0.3 * j;
      // m ~ Beta(2, 1.5): threads succeed oftener than not; log k ~ N(log 8, 1).
      grid.push({ m, k: 8 * Math.exp(z), prior: Math.log(m) + 0.5 * Math.log1p(-m) - (z * z) / 2 });
    }
  return grid;
})();

/** Hyperparameters lighter than this share of the heaviest change nothing that is shown. */
const LIGHTEST = 1e-4;

/**
 * Shares that lean on each other: each is Beta(m k, (1 - m) k) before its counts, and the answer is averaged over a grid of
 * m and k by the likelihood of all the counts together. (Taking the single best m and k instead makes intervals far too
 * short.) An empty cell gets what the others say of it; no cells, no answers.
 */
export const pooledShares = (cells: readonly Proportion[], level = 0.9): readonly PooledShare[] => {
  const weights = hyperWeights(cells);
  return cells.map((cell) => {
    const belief = new Float64Array(CELLS);
    for (const { m, k, weight } of weights)
      addBeta(belief, m * k + cell.events, (1 - m) * k + cell.total - cell.events, weight);
    return summary(belief, level);
  });
};

const hyperWeights = (cells: readonly Proportion[]) => {
  const logs = GRID.map(({ m, k, prior }) => {
    const [a, b] = [m * k, (1 - m) * k];
    const empty = logBeta(a, b);
    return cells.reduce(
      (sum, { events, total }) => sum + logBeta(a + events, b + total - events) - empty,
      prior,
    );
  });
  const top = Math.max(...logs);
  const kept = GRID.map((point, i) => ({ ...point, weight: Math.exp((logs[i] as number) - top) })).filter(
    (point) => point.weight > LIGHTEST,
  );
  const all = kept.reduce((sum, point) => sum + point.weight, 0);
  return kept.map((point) => ({ ...point, weight: point.weight / all }));
};

const logBeta = (a: number, b: number): number => logGamma(a) + logGamma(b) - logGamma(a + b);

const scratch = new Float64Array(CELLS);

/** Adds `weight` of a Beta(a, b) to a belief. Normalised on the grid itself, so that a spike at an end keeps its weight. */
const addBeta = (belief: Float64Array, a: number, b: number, weight: number): void => {
  let top = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < CELLS; i++) {
    const log = (a - 1) * (LOG[i] as number) + (b - 1) * (LOG_REST[i] as number);
    scratch[i] = log;
  }
  // A shape under 1 piles up at its end: the end slices take their exact mass, h^b/b, for that of their middle.
  scratch[0] = (scratch[0] as number) + (a - 1) * Math.LN2 - Math.log(a);
  scratch[CELLS - 1] = (scratch[CELLS - 1] as number) + (b - 1) * Math.LN2 - Math.log(b);
  for (let i = 0; i < CELLS; i++) top = Math.max(top, scratch[i] as number);
  let all = 0;
  for (let i = 0; i < CELLS; i++) {
    const here = Math.exp((scratch[i] as number) - top);
    scratch[i] = here;
    all += here;
  }
  for (let i = 0; i < CELLS; i++) belief[i] = (belief[i] as number) + (weight * (scratch[i] as number)) / all;
};

/** Mean and equal-tailed interval of a belief. */
const summary = (belief: Float64Array, level: number): PooledShare => {
  const mean = belief.reduce((sum, p, i) => sum + p * (MIDDLES[i] as number), 0);
  return {
    mean,
    low: quantileOf(belief, (1 - level) / 2),
    high: quantileOf(belief, (1 + level) / 2),
    belief,
  };
};

const quantileOf = (belief: Float64Array, q: number): number => {
  let before = 0;
  for (let i = 0; i < CELLS; i++) {
    const here = belief[i] as number;
    if (before + here >= q) return (i + (here > 0 ? (q - before) / here : 0)) / CELLS;
    before += here;
  }
  return 1;
};

/** Chance that the share is at least `share`. */
export const chanceAtLeast = (belief: Float64Array, share: number): number => {
  const from = Math.round(share * CELLS);
  let chance = 0;
  for (let i = from; i < CELLS; i++) chance += belief[i] as number;
  return Math.min(1, chance);
};

/**
 * The same beliefs once it is known that the shares never rise along the list: each keeps only what agrees with some
 * falling row of all of them (forward and backward sums over the grid).
 */
export const neverRising = (beliefs: readonly Float64Array[]): readonly Float64Array[] => {
  const forward: Float64Array[] = [];
  let above: Float64Array = new Float64Array(CELLS).fill(1);
  for (const belief of beliefs) {
    const here = belief.map((p, i) => p * (above[i] as number));
    forward.push(above);
    above = sumsFromTop(normalised(here));
  }
  const answers: Float64Array[] = [];
  let below: Float64Array = new Float64Array(CELLS).fill(1);
  for (let j = beliefs.length - 1; j >= 0; j--) {
    const belief = beliefs[j] as Float64Array;
    answers.unshift(normalised(belief.map((p, i) => p * (forward[j]?.[i] as number) * (below[i] as number))));
    below = sumsFromBottom(normalised(belief.map((p, i) => p * (below[i] as number))));
  }
  return answers;
};

const normalised = (belief: Float64Array): Float64Array => {
  const all = belief.reduce((sum, p) => sum + p, 0);
  return all > 0 ? belief.map((p) => p / all) : belief;
};
const sumsFromTop = (belief: Float64Array): Float64Array => {
  const sums = belief.slice();
  for (let i = CELLS - 2; i >= 0; i--) sums[i] = (sums[i] as number) + (sums[i + 1] as number);
  return sums;
};
const sumsFromBottom = (belief: Float64Array): Float64Array => {
  const sums = belief.slice();
  for (let i = 1; i < CELLS; i++) sums[i] = (sums[i] as number) + (sums[i - 1] as number);
  return sums;
};
