import type { Box, ExperimentMeasure, ExperimentPlan } from '../box/records.ts';
import type { FirstTry } from '../findings/rows/joint-row.ts';
import { firstTryOf } from '../findings/rows/rows-from-log.ts';
import { isKnown } from '../setup/events.ts';
import type { RunState } from '../setup/fold.ts';
import type { Reading } from '../setup/reading.ts';
import type { Lot } from './draw-lots.ts';
import { measureOf } from './experiment-measure.ts';

/** What an experiment needs of one box. */
export interface ExperimentBox {
  /** What was measured: an angle in rad, turns, or the log of ms; null where it was not, or where the fit is the measure. */
  readonly value: number | null;
  /** 1: right at the first trial fit, or after one easing. 0: not. Null: never tried. */
  readonly fit: number | null;
  /** Its values can no longer change: closed, right at a trial fit, tried twice, or deleted. */
  readonly finished: boolean;
  /** What was really done with the step; null where the set-ups do not show it. */
  readonly did: Lot | null;
}

const RIGHT: Readonly<Record<FirstTry, number | null>> = {
  right: 1,
  eased: 1,
  failed: 0,
  scrapped: 0,
  unknown: null,
};

/** One box of an experiment, from its record (null: deleted) and its set-ups in their order. */
export const experimentBoxOf = (
  plan: ExperimentPlan,
  box: Box | null,
  runs: readonly RunState[],
): ExperimentBox => {
  const measure = measureOf(plan);
  return {
    value: measure.kind === 'fit' ? null : measuredIn(measure, runs),
    fit: box && RIGHT[firstTryOf(box)],
    finished:
      !box || box.closing !== null || box.trials.length > 1 || box.trials.some((trial) => trial.right),
    did: didOf(plan.step, runs),
  };
};

/** Only from the set-ups up to the first one that the box was cut in, because later ones begin with the settings that these left. */
const measuredIn = (
  measure: Exclude<ExperimentMeasure, { readonly kind: 'fit' }>,
  runs: readonly RunState[],
): number | null => {
  const cut = runs.findIndex(({ closed }) => closed === 'cut');
  const first = cut < 0 ? runs : runs.slice(0, cut + 1);
  if (first.some(({ contested, readOnly }) => contested || readOnly)) return null;
  if (measure.kind === 'time') return cut < 0 ? null : logTimeOf(first);
  for (const run of first) {
    const values = firstReadings(run, measure.step).flatMap((reading) => amountOf(reading, measure.of) ?? []);
    if (values.length > 0) return Math.max(...values);
  }
  return null;
};

/**
 * The readings taken at a step before it was first ticked or anything moved, or the first after that: what the step found,
 * before it was put right.
 */
const firstReadings = (run: RunState, key: string): readonly Reading[] => {
  const readings: Reading[] = [];
  for (const { event, undone } of run.timeline) {
    if (undone || run.stray.includes(event) || !isKnown(event)) continue;
    if (event.kind === 'read' && event.step === key) readings.push(event.reading);
    else if (
      readings.length > 0 &&
      (event.kind === 'moved' || (event.kind === 'ticked' && event.steps.includes(key)))
    )
      break;
  }
  return readings;
};

/**
 * How far out of true, whichever way, rad; or the turns. Null for a reading of another kind. An arm swept half round spans
 * twice its radius.
 */
const amountOf = (reading: Reading, of: 'angle' | 'turns'): number | null => {
  if (reading.kind === 'turns') return of === 'turns' ? reading.turns : null;
  if (of === 'turns') return null;
  return reading.kind === 'gap'
    ? Math.atan2(reading.gap.mm, reading.over.mm)
    : Math.atan2(Math.abs(reading.difference.mm), 2 * reading.radius.mm);
};

/** Log of the time of all steps that may be timed; null unless each is known exactly. Hold points have none, because a clock there would hurry people. */
const logTimeOf = (runs: readonly RunState[]): number | null => {
  const steps = runs.flatMap((run) => run.steps.filter(({ step }) => !step.hold));
  if (steps.some(({ spent, timeUnknown }) => timeUnknown || !spent.exact)) return null;
  const ms = steps.reduce((sum, { spent }) => sum + spent.max, 0);
  return ms > 0 ? Math.log(ms) : null;
};

const didOf = (key: string, runs: readonly RunState[]): Lot | null => {
  const statuses = runs
    .filter((run) => run.closed === 'cut' && !run.contested && !run.readOnly)
    .flatMap((run) => run.steps.flatMap(({ step, status }) => (step.key === key ? [status] : [])));
  if (statuses.some((status) => status === 'skipped' || status === 'closed')) return 'without';
  return statuses.some((status) => status === 'passed' || status === 'failed') ? 'with' : null;
};
