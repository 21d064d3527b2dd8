import { isKnown, type SetUpEvent } from './events.ts';
import type { RunState } from './fold.ts';

/** The newest event that an undo would reverse, or null. It never reverses the start or another undo. */
export const undoTarget = (run: RunState): SetUpEvent | null => {
  for (const { event, undone } of [...run.timeline].reverse()) {
    if (undone || event.kind === 'undone' || event.kind === 'started') continue;
    if (isKnown(event) && !run.stray.includes(event)) return event;
  }
  return null;
};
