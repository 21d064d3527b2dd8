import logGammaOf from '@stdlib/math-base-special-gammaln';
import chiSquareCdfOf from '@stdlib/stats-base-dists-chisquare-cdf';
import normalCdfOf from '@stdlib/stats-base-dists-normal-cdf';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import tCdfOf from '@stdlib/stats-base-dists-t-cdf';

/** The only door to the probability library: what the findings need of it, under the names used here. */

/** How sure an interval is. */
export type Level = 0.8 | 0.9 | 0.95 | 0.99;

export const normalCdf = (z: number): number => normalCdfOf(z, 0, 1);
export const normalQuantile = (p: number): number => normalQuantileOf(p, 0, 1);
/** Two-sided tail of the standard normal. */
export const normalTails = (z: number): number => Math.min(1, 2 * normalCdf(-Math.abs(z)));
/** Two-sided tail of Student's t; `df` at least 1. */
export const tTails = (t: number, df: number): number => Math.min(1, 2 * tCdfOf(-Math.abs(t), df));
/** Upper tail of chi-square. With one degree of freedom it goes by the normal, which keeps its digits far out. */
export const chiSquareTail = (x: number, df: number): number =>
  x <= 0 ? 1 : df === 1 ? normalTails(Math.sqrt(x)) : Math.max(0, 1 - chiSquareCdfOf(x, df));
/** The z that leaves (1 - level)/2 in each tail. */
export const zOf = (level: Level): number => normalQuantile(0.5 + level / 2);

export const logGamma = (x: number): number => logGammaOf(x);

const logFactorials: number[] = [0, 0];
/** log n!, remembered: the exact tests ask for the same ones over and over. `n` a whole number from 0. */
const logFactorial = (n: number): number => {
  for (let i = logFactorials.length; i <= n; i++)
    logFactorials.push((logFactorials[i - 1] ?? 0) + Math.log(i));
  return logFactorials[n] ?? 0;
};
export const logChoose = (n: number, k: number): number =>
  logFactorial(n) - logFactorial(k) - logFactorial(n - k);
