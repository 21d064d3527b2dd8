import { isKnown } from './events.ts';
import type { RunState } from './fold.ts';
import { reopenedBy } from './procedure.ts';
import type { Reading } from './reading.ts';

/**
 * The readings of a step that still describe the rig, oldest first: those taken since the last movement that re-opens this step
 * and since its last fail, because after a fail it was put right.
 */
export const readingsInForce = (run: RunState, key: string): readonly Reading[] => {
  let readings: Reading[] = [];
  for (const { event, undone } of run.timeline) {
    if (undone || run.stray.includes(event) || !isKnown(event)) continue;
    if (event.kind === 'read' && event.step === key) readings.push(event.reading);
    else if (event.kind === 'moved' && reopenedBy(run.procedure, event.what).has(key)) readings = [];
    else if (event.kind === 'ticked' && event.verdict === 'fail' && event.steps.includes(key)) readings = [];
  }
  return readings;
};
