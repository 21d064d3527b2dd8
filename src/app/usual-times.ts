import { signal } from '@preact/signals-core';
import { usualTimes as reckon, type Usual } from '../domain/setup/usual.ts';
import { newestBoxes, runsOf } from './boxes.ts';

/** The user's usual time a step, once it has been read; it never holds up the step in hand. */
export const usualTimes = signal<ReadonlyMap<string, Usual> | undefined>(undefined);

/** Reckons the usual times from the set-ups of the newest boxes, oldest first by their start. */
export const readUsualTimes = async (): Promise<void> => {
  const runs = await Promise.all((await newestBoxes()).map(({ box }) => runsOf(box)));
  usualTimes.value = reckon(
    runs.flatMap((ofBox) => [...ofBox.values()]).sort((a, b) => a.startedAt - b.startedAt),
  );
};
