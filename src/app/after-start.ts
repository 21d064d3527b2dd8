import { countAsOpen } from '../platform/busy.ts';
import { watchForUpdates } from './updates.ts';
import { readUsualTimes } from './usual-times.ts';

/** Nobody taps sooner than this, and what is loaded after it is no part of the way to the first tap. */
const FIRST_TAP_MS = 1_500;

/** Housekeeping writes to what the first taps write to, so it lets them go first. */
const HOUSEKEEPING_MS = 10_000;

/** What can wait until the first screen stands: updates, the user's usual times, housekeeping. Never fails the app. */
export const afterStart = async (): Promise<void> => {
  countAsOpen();
  await new Promise((resolve) => setTimeout(resolve, FIRST_TAP_MS));
  await watchForUpdates().catch(() => {});
  await readUsualTimes().catch(() => {});
  await new Promise((resolve) => setTimeout(resolve, HOUSEKEEPING_MS));
  await import('../storage/superseded.ts')
    .then(({ sweepSuperseded }) => sweepSuperseded(Date.now()))
    .catch(() => {});
  await import('../storage/backup/sweep-photos.ts')
    .then(({ sweepLeftPhotos }) => sweepLeftPhotos())
    .catch(() => {});
};
