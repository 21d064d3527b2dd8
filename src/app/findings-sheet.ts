import { askForSheet } from '../platform/findings-worker.ts';
import { type Shared, shareOrDownload } from '../platform/share.ts';
import { tabledWoods } from './findings-woods.ts';
import { logId } from './session.ts';

const NAMES = { rows: 'lidwright-joints.csv', columns: 'lidwright-columns.csv' } as const;

/** Hands over the rows behind the findings, or what their columns hold, as CSV; undefined when the log could not be read. */
export const shareSheet = async (want: keyof typeof NAMES): Promise<Shared | undefined> => {
  const text = await askForSheet({ want, logIds: [logId.value], woods: tabledWoods }).catch(() => undefined);
  return text === undefined
    ? undefined
    : shareOrDownload(new File([text], NAMES[want], { type: 'text/csv' }));
};
