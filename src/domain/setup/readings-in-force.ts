import { isKnownKind, type SetUpEvent } from './events.ts';
import type { RunState } from './fold.ts';
import { reopenedBy } from './procedure.ts';
import type { Reading } from './reading.ts';

/**
 * The readings of a step that still speak of the rig as it stands, oldest first: those taken since something last moved that
 * this step hangs on, and since it last failed, for then it was put right.
 */
export const readingsInForce = (run: RunState, key: string): readonly Reading[] => {
  let readings: Reading[] = [];
  for (const { event, undone } of run.timeline) {
    if (undone || run.stray.includes(event) || !isKnownKind(event.kind)) continue;
    const known = event as SetUpEvent;
    if (known.kind === 'read' && known.step === key) readings.push(known.reading);
    else if (known.kind === 'moved' && reopenedBy(run.procedure, known.what).has(key)) readings = [];
    else if (known.kind === 'ticked' && known.verdict === 'fail' && known.steps.includes(key)) readings = [];
  }
  return readings;
};
