import { signal } from '@preact/signals-core';
import { groupBy } from '../domain/log/group-by.ts';
import { foldRun } from '../domain/setup/fold.ts';
import { usualTimes as reckon, type Usual } from '../domain/setup/usual.ts';
import { eventsOfLog } from '../storage/events.ts';
import { logId } from './session.ts';

/** The user's usual time a step, once it has been read; it never holds up the step in hand. */
export const usualTimes = signal<ReadonlyMap<string, Usual> | undefined>(undefined);

/** Reckons the usual times from every earlier set-up of the log, oldest first by its start. */
export const readUsualTimes = async (): Promise<void> => {
  const events = await eventsOfLog(logId.value);
  const runs = [...groupBy(events, (event) => event.runId).values()]
    .map((list) => foldRun(list))
    .filter((run) => run !== null);
  usualTimes.value = reckon(runs.sort((a, b) => a.startedAt - b.startedAt));
};
