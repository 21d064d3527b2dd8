import { signal } from '@preact/signals-core';
import type { Offline, Updates } from '../platform/update.ts';

/** A new version waits and may be taken now. */
export const updateOffered = signal(false);
/** Whether the app starts without a network; null until known. */
export const offline = signal<Offline | null>(null);

let updates: Updates | undefined;

/** Registers for updates; the code for it is no part of the first load. */
export const watchForUpdates = async (): Promise<void> => {
  const { followUpdates } = await import('../platform/update.ts');
  updates = await followUpdates((offered) => {
    updateOffered.value = offered;
  });
  offline.value = updates.offline;
};

/** Takes the new version, unless something came open in the meantime or it does not take over in time. */
export const takeUpdate = async (): Promise<void> => {
  if (!(await updates?.take())) updateOffered.value = false;
};

/** Looks again after a set-up or form was left. */
export const lookForUpdate = (): void => {
  updates?.look();
};
