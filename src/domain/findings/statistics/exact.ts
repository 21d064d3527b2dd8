import type { TwoByTwo } from './counts.ts';
import { logChoose } from './distributions.ts';

/**
 * How likely each number of events among the missed is when nothing but chance deals them, with all margins held:
 * `p[i]` belongs to `low + i`.
 */
interface Distribution {
  readonly low: number;
  readonly p: Float64Array;
}

export interface ExactTest {
  /** Two-sided: everything at most as likely as what was seen. */
  readonly p: number;
  /** The same with only half of what is exactly as likely: less cautious, right on average. */
  readonly midP: number;
  /** Events seen among the missed, and how many chance alone would bring. */
  readonly seen: number;
  readonly expected: number;
}

/** R's tolerance for "equally likely", so that rounding cannot split ties. */
const TIE = 1 + 1e-7;

/** The hypergeometric distribution of `a` given the margins of one table. */
const hypergeometric = (t: TwoByTwo): Distribution => {
  const missed = t.a + t.b;
  const events = t.a + t.c;
  const all = missed + t.c + t.d;
  const low = Math.max(0, events - (t.c + t.d));
  const high = Math.min(missed, events);
  const p = new Float64Array(high - low + 1);
  const base = logChoose(all, events);
  for (let x = low; x <= high; x++)
    p[x - low] = Math.exp(logChoose(missed, x) + logChoose(all - missed, events - x) - base);
  return { low, p };
};

/** Distribution of a sum of two independent counts. */
const summed = (one: Distribution, other: Distribution): Distribution => {
  const p = new Float64Array(one.p.length + other.p.length - 1);
  for (let i = 0; i < one.p.length; i++) {
    const weight = one.p[i] as number;
    if (weight < 1e-300) continue;
    for (let j = 0; j < other.p.length; j++)
      p[i + j] = (p[i + j] as number) + weight * (other.p[j] as number);
  }
  return { low: one.low + other.low, p };
};

const testOf = (distribution: Distribution, seen: number): ExactTest => {
  const { low, p } = distribution;
  const own = p[seen - low] ?? 0;
  let [less, equal, all, mean] = [0, 0, 0, 0];
  for (let i = 0; i < p.length; i++) {
    const here = p[i] as number;
    all += here;
    mean += here * (low + i);
    if (here > own * TIE) continue;
    if (here * TIE >= own) equal += here;
    else less += here;
  }
  return {
    p: Math.min(1, (less + equal) / all),
    midP: Math.min(1, (less + equal / 2) / all),
    seen,
    expected: mean / all,
  };
};

/**
 * The exact conditional test of "no link in any stratum": the number of events among the missed, summed over strata,
 * against its distribution with every stratum's margins held (convolved hypergeometrics). Strata where chance has only
 * one outcome carry nothing and change nothing.
 * Two-sided by likelihood, as in Fisher's test; mid-p counts half of what is exactly as likely.
 */
export const exactOverStrata = (strata: readonly TwoByTwo[]): ExactTest => {
  let sum: Distribution = { low: 0, p: Float64Array.of(1) };
  let seen = 0;
  // Small ones first keeps the convolution cheap.
  const parts = strata.map(hypergeometric).sort((a, b) => a.p.length - b.p.length);
  for (const part of parts) sum = summed(sum, part);
  for (const t of strata) seen += t.a;
  if (sum.p.length === 1) return { p: 1, midP: 1, seen, expected: sum.low };
  return testOf(sum, seen);
};
