import type { Stored } from '../domain/box/records.ts';
import { BOXES_BY_NUMBER, BOXES_CLOSED } from './names.ts';
import { read } from './write.ts';

type StoredBox = Stored<'box'>;

/** Key range of a log's boxes in their indexes. */
export const boxesOf = (logId: string): IDBKeyRange => IDBKeyRange.bound([logId, 'box'], [logId, 'box', []]);

/** At most `most` boxes of a log that fit, from the highest number down. Reads no further than that. `fits` must be pure. */
export const boxesFromNewest = (
  logId: string,
  most: number,
  fits: (box: StoredBox) => boolean,
): Promise<StoredBox[]> =>
  read(['records'], async (tx) => {
    const found: StoredBox[] = [];
    const index = tx.objectStore('records').index(BOXES_BY_NUMBER);
    let cursor = await index.openCursor(boxesOf(logId), 'prev');
    while (cursor) {
      const box = cursor.value as StoredBox;
      if (fits(box)) found.push(box);
      if (found.length >= most) break;
      cursor = await cursor.continue();
    }
    return found;
  });

/** Whether any box is not closed. It compares two counts and reads no box. */
export const isAnyOpen = (logId: string): Promise<boolean> =>
  read(['records'], async (tx) => {
    const records = tx.objectStore('records');
    const [all, closed] = await Promise.all(
      ([BOXES_BY_NUMBER, BOXES_CLOSED] as const).map((name) => records.index(name).count(boxesOf(logId))),
    );
    return all !== closed;
  });
