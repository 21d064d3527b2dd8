import { DEMO_SEED, generateDemo } from '../domain/log/demo/generate.ts';
import { addLog, removeLog } from '../storage/records.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { DEMO_LOG, MY_LOG, showLog } from './session.ts';

/** Makes the invented log and shows it; one transaction, so that it is whole or absent. */
export const openDemo = async (): Promise<void> => {
  const { records, events } = generateDemo(DEMO_SEED, Date.now(), -new Date().getTimezoneOffset());
  const put = await attempt(async () => {
    await removeLog(DEMO_LOG);
    await addLog(records, events);
    return true;
  });
  if (!put) return;
  await showLog(DEMO_LOG);
  announce('log');
};

/** Removes the invented log and returns to the user's own. */
export const leaveDemo = async (): Promise<void> => {
  await showLog(MY_LOG);
  await attempt(() => removeLog(DEMO_LOG));
  announce('log');
};
