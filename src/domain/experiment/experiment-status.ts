import type { ExperimentPlan } from '../box/records.ts';
import { BOUNDS, type Comparison, compare } from './compare.ts';
import type { ExperimentBox } from './experiment-box.ts';
import { measureOf } from './experiment-measure.ts';

/** The progress of an experiment. It holds no difference, because none is shown between looks. */
interface Progress {
  /** Boxes that took a lot. */
  readonly taken: number;
  readonly planned: number;
  /** The size at which the next look is due; null after the last. */
  readonly nextLook: number | null;
  /** Boxes that the next look waits for: they took their lot and are still on the bench. */
  readonly unfinished: number;
}

/** What the last look showed, in the unit of the measure: an angle in rad, turns, the log of ms, or the share right. */
export interface Look extends Progress {
  readonly look: 'half' | 'end';
  readonly bound: number;
  readonly measured: Comparison;
  /** The fit, second beside another measure; it decides nothing. */
  readonly fit: Comparison | null;
  /** Boxes looked at in which the step was done or left out against the lot; they count by the lot. */
  readonly otherwise: number;
}

export type ExperimentStatus = (Progress & { readonly look: 'none-yet' }) | Look;

/**
 * The status of an experiment, with every box counted by its lot as drawn. There are two looks: when the boxes of the first half
 * are finished, and when all are.
 */
export const experimentStatus = (plan: ExperimentPlan, boxes: readonly ExperimentBox[]): ExperimentStatus => {
  const planned = plan.lots.length;
  const taken = boxes.length;
  const half = Math.ceil(planned / 2);
  const unfinishedOf = (size: number) => boxes.slice(0, size).filter(({ finished }) => !finished).length;
  const reached = (size: number) => taken >= size && unfinishedOf(size) === 0;
  const size = reached(planned) ? planned : reached(half) ? half : 0;
  const nextLook = size === planned ? null : size === half ? planned : half;
  const progress = { taken, planned, nextLook, unfinished: unfinishedOf(nextLook ?? 0) };
  if (size === 0) return { ...progress, look: 'none-yet' };

  const look = size === planned ? 'end' : 'half';
  const seen = boxes.slice(0, size);
  const by = (of: (box: ExperimentBox) => number | null) =>
    compare(
      seen.map((box, i) => ({ lot: plan.lots[i] ?? 'with', value: of(box) })),
      BOUNDS[look],
    );
  const fit = asShares(by((box) => box.fit));
  const ofFit = measureOf(plan).kind === 'fit';
  return {
    ...progress,
    look,
    bound: BOUNDS[look],
    measured: ofFit ? fit : by((box) => box.value),
    fit: ofFit ? null : fit,
    otherwise: seen.filter(({ did }, i) => did !== null && did !== plan.lots[i]).length,
  };
};

/** Two shares differ by one at most. */
const asShares = (found: Comparison): Comparison => ({
  ...found,
  interval: found.interval && {
    low: Math.max(-1, found.interval.low),
    high: Math.min(1, found.interval.high),
  },
});
