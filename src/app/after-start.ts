import { sweepSuperseded } from '../storage/records.ts';
import { watchForUpdates } from './updates.ts';
import { readUsualTimes } from './usual-times.ts';

/** What can wait until the first screen stands: updates, the user's usual times, housekeeping. Never fails the app. */
export const afterStart = async (): Promise<void> => {
  await watchForUpdates().catch(() => {});
  await readUsualTimes().catch(() => {});
  await sweepSuperseded(Date.now()).catch(() => {});
};
