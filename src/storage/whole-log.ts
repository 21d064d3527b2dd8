import type { Stored } from '../domain/box/records.ts';
import type { SetUpEvent } from '../domain/setup/events.ts';
import { type Photo, putPhoto } from './records.ts';
import { type WriteTx, write } from './write.ts';

/** Key range of one log in any store whose key begins with logId. */
export const wholeLog = (logId: string): IDBKeyRange => IDBKeyRange.bound([logId], [logId, []]);

const OF_A_LOG = [
  ...(['records', 'superseded', 'events', 'photos', 'thumbnails'] as const),
  ...(['drafts', 'imports', 'stale', 'cache'] as const),
];

const clear = (tx: WriteTx, logId: string) =>
  OF_A_LOG.map((name) => tx.objectStore(name).delete(wholeLog(logId)));

/** Removes a log and everything that belongs to it, in one transaction. */
export const removeLog = (logId: string): Promise<void> =>
  write(OF_A_LOG, async (tx) => {
    await Promise.all(clear(tx, logId));
  });

/** Replaces everything stored under a log's id by a whole prepared log (the demo), in one transaction. */
export const addLog = (
  records: readonly Stored[],
  events: readonly SetUpEvent[],
  photos: readonly Photo[] = [],
): Promise<void> =>
  write(OF_A_LOG, async (tx) => {
    const logIds = new Set([...records, ...events].map(({ logId }) => logId));
    // With a new stamp here, findings that are still being computed from the old log cannot be cached.
    const stamp = `added ${Math.max(...records.map(({ savedAt }) => savedAt))}`;
    await Promise.all([
      ...[...logIds].flatMap((logId) => clear(tx, logId)),
      ...records.map((record) => tx.objectStore('records').put(record)),
      ...events.map((event) => tx.objectStore('events').put(event)),
      ...photos.flatMap((photo) => putPhoto(tx, photo)),
      ...[...logIds].map((logId) =>
        tx.objectStore('cache').put({ logId, what: 'runs', rule: '', stamp, value: null }),
      ),
    ]);
  });
