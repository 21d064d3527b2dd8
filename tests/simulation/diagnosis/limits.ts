import type { Count } from './tally.ts';

/** Share of true "no worse than asked" that a limit may call worse, by bad luck of the draw. */
export const BAD_LUCK = 0.01;

/** Chance of at most `hits` in `of` when each has the chance `p`: the binomial, summed. */
export const atMost = (hits: number, of: number, p: number): number => {
  let term = (1 - p) ** of;
  let sum = 0;
  for (let k = 0; k <= hits; k++) {
    sum += term;
    term *= ((of - k) / (k + 1)) * (p / (1 - p));
  }
  return sum;
};

/** Too few hits to come from a share of at least `wanted`, but for one time in a hundred. */
export const isBelow = ({ hits, of }: Count, wanted: number): boolean => atMost(hits, of, wanted) < BAD_LUCK;

/** Too many hits to come from a share of at most `allowed`, but for one time in a hundred. */
export const isAbove = ({ hits, of }: Count, allowed: number): boolean =>
  hits > 0 && 1 - atMost(hits - 1, of, allowed) < BAD_LUCK;
