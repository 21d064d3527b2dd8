import { TRY } from './moves.ts';
import type { Outcome } from './outcomes.ts';

const ROUNDS = 6;
/** Minutes that a joint costs which no move repairs, and how much worse spoiling is than not mending. Judgement, no source. */
const UNMENDED = 90;
const SPOILING = 1.5;
/** A move that repairs less than this share is no advice. */
export const LEAST_REPAIR = 0.02;

export interface Plan {
  /** In the order in which they would be made. */
  readonly moves: readonly Outcome[];
  /** Minutes expected from now on. */
  readonly minutes: number;
}

/** What a move repairs for each minute, and how much of what is left it repairs. */
export const worthOf = (
  outcome: Outcome,
  weights: Float64Array,
  left: number,
): { readonly worth: number; readonly repaired: number; readonly price: number } => {
  const { off, harm } = outcome;
  let [repaired, spoilt] = [0, 0];
  for (let i = 0; i < weights.length; i++) {
    const weight = weights[i] as number;
    repaired += weight * (off[i] as number);
    spoilt += weight * (harm[i] as number);
  }
  const price = (outcome.cost + TRY) * left + SPOILING * spoilt;
  return { worth: repaired / price, repaired, price };
};

/** Moves in the order that repairs most for each minute: after each, what it would have repaired counts no more. */
export const planFrom = (
  outcomes: readonly Outcome[],
  weights: Float64Array,
  rounds: number = ROUNDS,
): Plan => {
  const left = Float64Array.from(weights);
  const moves: Outcome[] = [];
  let minutes = 0;
  let sum = 0;
  for (const weight of left) sum += weight;
  const all = sum;
  for (let round = 0; round < rounds; round++) {
    let best: Outcome | null = null;
    let [worth, price] = [0, 0];
    for (const outcome of outcomes) {
      const of = worthOf(outcome, left, sum);
      if (of.worth > worth && of.repaired > LEAST_REPAIR * all)
        [best, worth, price] = [outcome, of.worth, of.price];
    }
    if (best === null) break;
    moves.push(best);
    minutes += price;
    sum = 0;
    for (let i = 0; i < left.length; i++) {
      left[i] = (left[i] as number) * (1 - (best.off[i] as number));
      sum += left[i] as number;
    }
    if (sum < 0.005 * all) break;
  }
  return { moves, minutes: (minutes + UNMENDED * sum) / all };
};
