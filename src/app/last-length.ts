import type { SetUpEvent } from '../domain/setup/events.ts';
import { eventsOfRun } from '../storage/events.ts';
import { newestBoxes } from './boxes.ts';
import { logId } from './session.ts';

type Read = SetUpEvent & { readonly kind: 'read' };

/** The length that the last gap was read over, or the arm of the last sweep, as it was typed; null before the first. */
export const lastLength = async (kind: 'gap' | 'sweep'): Promise<string | null> => {
  for (const { box } of await newestBoxes())
    for (const { runId } of box.setUps.toReversed()) {
      const last = (await eventsOfRun(logId.value, runId))
        .filter((event): event is Read => event.kind === 'read')
        .findLast(({ reading }) => reading.kind === kind)?.reading;
      if (last?.kind === 'gap') return last.over.text;
      if (last?.kind === 'sweep') return last.radius.text;
    }
  return null;
};
