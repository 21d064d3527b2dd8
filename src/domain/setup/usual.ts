import type { RunState } from './fold.ts';

/** A user's usual time for a step: the median of the last ten exact times, with the middle half around it, in ms. */
export interface Usual {
  readonly median: number;
  readonly low: number;
  readonly high: number;
  readonly count: number;
}

const LAST = 10;

/**
 * Usual times by step key from earlier runs, newest last. Only exact times of single ticks count, and only positive ones;
 * hold points have none, because a clock there would hurry people.
 */
export const usualTimes = (runs: readonly RunState[]): ReadonlyMap<string, Usual> => {
  const times = new Map<string, number[]>();
  for (const run of runs) {
    if (run.contested || run.readOnly) continue;
    for (const { step, spent, timeUnknown } of run.steps) {
      if (step.hold || timeUnknown || !spent.exact || spent.max <= 0) continue;
      const list = times.get(step.key) ?? [];
      list.push(spent.max);
      times.set(step.key, list);
    }
  }
  return new Map(
    [...times].map(([key, list]) => {
      const sorted = list.slice(-LAST).sort((a, b) => a - b);
      return [
        key,
        {
          median: quantile(sorted, 0.5),
          low: quantile(sorted, 0.25),
          high: quantile(sorted, 0.75),
          count: sorted.length,
        },
      ];
    }),
  );
};

/** Linear interpolation between order statistics (Hyndman and Fan's type 7). `sorted` must not be empty. */
const quantile = (sorted: readonly number[], q: number): number => {
  const at = (sorted.length - 1) * q;
  const below = sorted[Math.floor(at)] ?? 0;
  const above = sorted[Math.ceil(at)] ?? below;
  return below + (above - below) * (at - Math.floor(at));
};
