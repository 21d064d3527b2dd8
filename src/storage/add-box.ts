import type { Box, Stored } from '../domain/box/records.ts';
import { GREATEST } from '../domain/log/bounds.ts';
import { boxesOf } from './boxes.ts';
import { BOXES_BY_NUMBER } from './names.ts';
import type { Author } from './records.ts';
import { markRecordsStale } from './stale.ts';
import { type WriteTx, write } from './write.ts';

/**
 * Puts a new box in a log under the next number, which is given inside the transaction: two tabs that begin a box at one time
 * begin two with two numbers. Adds nothing when the box is there already, as for the retry of a commit that was never heard.
 */
export const addBox = (
  logId: string,
  id: string,
  { writer, now }: Author,
  box: Omit<Box, 'number'>,
): Promise<void> =>
  write(['records', 'stale'], async (tx) => {
    const records = tx.objectStore('records');
    if (await records.getKey([logId, 'box', id])) return;
    const body = { number: await freeNumber(tx, logId), ...box };
    const added: Stored<'box'> = { logId, kind: 'box', id, rev: 1, writer, savedAt: now, body };
    await records.add(added);
    await markRecordsStale(tx, added);
  });

/** One past the greatest number of a log; where a foreign box has the last number there is, the first free one below it. */
const freeNumber = async (tx: WriteTx, logId: string): Promise<number> => {
  let taken = GREATEST.count + 1;
  let cursor = await tx.objectStore('records').index(BOXES_BY_NUMBER).openKeyCursor(boxesOf(logId), 'prev');
  while (cursor) {
    const [, , number] = cursor.key;
    if (number + 1 < taken) return number + 1;
    taken = number;
    cursor = await cursor.continue();
  }
  return 1;
};
