import { isAnyOpen } from '../storage/boxes.ts';
import { type BoxOnHand, newestBox, withRuns } from './boxes.ts';
import { logId } from './session.ts';

/** The box on the lathe: the newest that is not closed. */
export const currentBox = async (): Promise<BoxOnHand | null> =>
  (await isAnyOpen(logId.value)) ? newestBox(({ closing }) => closing === null) : null;

/** The same with its set-ups. */
export const currentWithRuns = async () => withRuns(await currentBox());
