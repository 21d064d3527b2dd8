import { crossing } from '../answers/crossing.ts';
import type { Interval, TwoByTwo } from './counts.ts';
import type { Level } from './distributions.ts';
import { hypergeometric } from './exact.ts';

export interface ConditionalOdds extends Interval {
  /** Conditional maximum-likelihood odds ratio; 0 or Infinity when a cell is empty, null when the margins fix the table. */
  readonly odds: number | null;
}

/**
 * Exact conditional odds ratio of one table: the value under which the count seen is the mean, and the interval whose
 * ends leave (1 - level)/2 beyond what was seen (Fisher's noncentral hypergeometric, margins held).
 */
export const conditionalOdds = (t: TwoByTwo, level: Level = 0.95): ConditionalOdds => {
  const { low, p } = hypergeometric(t);
  const high = low + p.length - 1;
  if (low === high) return { odds: null, low: 0, high: Number.POSITIVE_INFINITY };

  /** Mean, and tails at or beyond `a`, when the log odds ratio is `log`. */
  const under = (log: number) => {
    const weights = Array.from(p, (value, i) => Math.log(value) + i * log);
    const top = Math.max(...weights);
    let [all, mean, above, below] = [0, 0, 0, 0];
    weights.forEach((weight, i) => {
      const here = Math.exp(weight - top);
      all += here;
      mean += here * (low + i);
      if (low + i >= t.a) above += here;
      if (low + i <= t.a) below += here;
    });
    return { mean: mean / all, above: above / all, below: below / all };
  };
  const alpha = (1 - level) / 2;
  const solve = (f: (log: number) => number) => Math.exp(crossing(f, -60, 60));
  return {
    odds: t.a === low ? 0 : t.a === high ? Number.POSITIVE_INFINITY : solve((log) => under(log).mean - t.a),
    low: t.a === low ? 0 : solve((log) => under(log).above - alpha),
    high: t.a === high ? Number.POSITIVE_INFINITY : solve((log) => alpha - under(log).below),
  };
};
