import type { Interval, TwoByTwo } from './counts.ts';
import { sizeOf } from './counts.ts';
import { chiSquareTail, type Level, zOf } from './distributions.ts';

export interface PooledOdds extends Interval {
  readonly odds: number;
  /** Standard error of the log odds ratio. */
  readonly logError: number;
}

/**
 * Mantel and Haenszel's odds ratio over strata with the interval of Robins, Breslow and Greenland (Biometrics 1986, 42:
 * 311-323). Null unless both its sums are positive: with a zero on either side there is no such number.
 */
export const pooledOdds = (strata: readonly TwoByTwo[], level: Level = 0.95): PooledOdds | null => {
  let [r, s, pr, psqr, qs] = [0, 0, 0, 0, 0];
  for (const t of strata) {
    const n = sizeOf(t);
    if (n === 0) continue;
    const [P, Q, R, S] = [(t.a + t.d) / n, (t.b + t.c) / n, (t.a * t.d) / n, (t.b * t.c) / n];
    r += R;
    s += S;
    pr += P * R;
    psqr += P * S + Q * R;
    qs += Q * S;
  }
  if (r <= 0 || s <= 0) return null;
  const logError = Math.sqrt(pr / (2 * r * r) + psqr / (2 * r * s) + qs / (2 * s * s));
  const reach = Math.exp(zOf(level) * logError);
  return { odds: r / s, logError, low: r / s / reach, high: (r / s) * reach };
};

/** A stratum is informative only when all four of its margins are above zero. */
const isInformative = (t: TwoByTwo): boolean =>
  t.a + t.b > 0 && t.c + t.d > 0 && t.a + t.c > 0 && t.b + t.d > 0;

/**
 * Tarone's test that the odds ratio is the same in every stratum: Breslow and Day's chi-square about the Mantel-Haenszel
 * odds ratio, less Tarone's correction. Null with fewer than two informative strata, with no pooled odds ratio, or when
 * any expected cell is under 3, where its chi-square cannot be trusted (`leastExpected` 0 lifts that).
 */
export const homogeneity = (
  strata: readonly TwoByTwo[],
  leastExpected = 3,
): { readonly chiSquare: number; readonly df: number; readonly p: number } | null => {
  const telling = strata.filter(isInformative);
  const pooled = pooledOdds(telling);
  if (!pooled || telling.length < 2) return null;
  let [chiSquare, gaps, variances] = [0, 0, 0];
  for (const t of telling) {
    const a = fittedCell(t, pooled.odds);
    const cells = [a, t.a + t.b - a, t.a + t.c - a, t.d - t.a + a];
    if (cells.some((cell) => cell <= 0 || cell < leastExpected)) return null;
    const variance = 1 / cells.reduce((sum, cell) => sum + 1 / cell, 0);
    chiSquare += (t.a - a) ** 2 / variance;
    gaps += t.a - a;
    variances += variance;
  }
  const corrected = Math.max(0, chiSquare - gaps ** 2 / variances);
  const df = telling.length - 1;
  return { chiSquare: corrected, df, p: chiSquareTail(corrected, df) };
};

/** The count of missed with the event that gives this odds ratio with the margins held. */
const fittedCell = (t: TwoByTwo, odds: number): number => {
  const missed = t.a + t.b;
  const events = t.a + t.c;
  const A = 1 - odds;
  const B = t.d - t.a + odds * (missed + events);
  const C = -odds * missed * events;
  // The root inside the margins, written so that an odds ratio of 1 needs no case of its own.
  return (-2 * C) / (B + Math.sqrt(B * B - 4 * A * C));
};
