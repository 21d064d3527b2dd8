import { addLog, removeLog } from '../storage/whole-log.ts';
import { announce } from './changes.ts';
import { type DemoFile, demoLog } from './demo-log.ts';
import { attempt, fail } from './failure.ts';
import { DEMO_LOG, MY_LOG, showLog } from './session.ts';

/** The invented log is not kept for offline: null when it cannot be had. */
const demoFile = (): Promise<DemoFile | null> =>
  import('../../shared/demo-log.json').then(
    ({ default: file }) => file as unknown as DemoFile,
    () => null,
  );

/** Puts the invented log in place, whole or not at all, and shows it. */
export const openDemo = async (): Promise<void> => {
  const file = await demoFile();
  if (!file) return fail('demo', 'no-connection');
  const { records, events, photos } = demoLog(file, Date.now());
  const put = await attempt('demo', async () => {
    await addLog(records, events, photos);
    return true;
  });
  if (!put) return;
  await showLog(DEMO_LOG);
  announce('log');
};

/** Removes the invented log and returns to the user's own. */
export const leaveDemo = async (): Promise<void> => {
  await showLog(MY_LOG);
  await attempt('demo', () => removeLog(DEMO_LOG));
  announce('log');
};
