import type { Stored } from '../domain/box/records.ts';
import { BOXES_BY_NUMBER, BOXES_CLOSED } from './names.ts';
import { read } from './write.ts';

type StoredBox = Stored<'box'>;

const boxesOf = (logId: string): IDBKeyRange => IDBKeyRange.bound([logId, 'box'], [logId, 'box', []]);

/** Boxes of a log from the highest number down, handed over one by one until `take` wants no more. Reads no further. */
export const boxesFromNewest = (logId: string, take: (box: StoredBox) => boolean): Promise<void> =>
  read(['records'], async (tx) => {
    const index = tx.objectStore('records').index(BOXES_BY_NUMBER);
    let cursor = await index.openCursor(boxesOf(logId), 'prev');
    while (cursor && take(cursor.value as StoredBox)) cursor = await cursor.continue();
  });

/** Whether any box is not closed: told by counting, without reading one. */
export const isAnyOpen = (logId: string): Promise<boolean> =>
  read(['records'], async (tx) => {
    const records = tx.objectStore('records');
    const [all, closed] = await Promise.all(
      ([BOXES_BY_NUMBER, BOXES_CLOSED] as const).map((name) => records.index(name).count(boxesOf(logId))),
    );
    return all !== closed;
  });
