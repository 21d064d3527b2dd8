import { signal } from '@preact/signals-core';
import { followUpdates, type Offline, type Updates } from '../platform/update.ts';
import { sweepSuperseded } from '../storage/records.ts';
import { readUsualTimes } from './usual-times.ts';

/** A new version waits and may be taken now. */
export const updateOffered = signal(false);
/** Whether the app starts without a network; null until known. */
export const offline = signal<Offline | null>(null);

let updates: Updates | undefined;

/** What can wait until the first screen stands: updates, housekeeping, the user's usual times. Never fails the app. */
export const afterStart = async (): Promise<void> => {
  updates = await followUpdates((offered) => {
    updateOffered.value = offered;
  });
  offline.value = updates.offline;
  await readUsualTimes().catch(() => {});
  await sweepSuperseded(Date.now()).catch(() => {});
};

/** Takes the new version, unless something came open in the meantime. */
export const takeUpdate = async (): Promise<void> => {
  if (!(await updates?.take())) updateOffered.value = false;
};

/** Looks again after a set-up or form was left. */
export const lookForUpdate = (): void => {
  updates?.look();
};
