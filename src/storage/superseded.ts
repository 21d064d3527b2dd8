import type { Stored } from '../domain/box/records.ts';
import { mergeVersions } from '../domain/log/version.ts';
import { wholeLog } from './whole-log.ts';
import { read, type WriteTx, write } from './write.ts';

/** Merges a version from elsewhere inside a running transaction: the later one stays, the other becomes superseded. */
export const mergeRecord = async (
  tx: WriteTx,
  incoming: Stored,
  now: number,
): Promise<'kept' | 'taken' | 'same'> => {
  const store = tx.objectStore('records');
  const current = await store.get([incoming.logId, incoming.kind, incoming.id]);
  if (!current) {
    await store.put(incoming);
    return 'taken';
  }
  const { winner, loser } = mergeVersions(current, incoming);
  if (!loser) return 'same';
  if (winner === incoming) await store.put(incoming);
  await tx.objectStore('superseded').put({ ...loser, supersededAt: now });
  return winner === incoming ? 'taken' : 'kept';
};

/** How long a superseded version can be restored. */
export const SUPERSEDED_KEPT_MS = 30 * 24 * 60 * 60 * 1000;

export const listSuperseded = (logId: string) =>
  read(['superseded'], (tx) => tx.objectStore('superseded').getAll(wholeLog(logId)));

/** The photos that a version of a record shows. */
export const photosShown = ({ body }: Stored): readonly string[] =>
  body && 'photos' in body ? body.photos.map(({ id }) => id) : [];

/** Drops superseded versions older than 30 days, and the photos that only they showed. */
export const sweepSuperseded = (now: number): Promise<void> =>
  write(['records', 'superseded', ...PHOTO_STORES], async (tx) => {
    const store = tx.objectStore('superseded');
    const dropped: Stored[] = [];
    for await (const cursor of store)
      if (cursor.value.supersededAt < now - SUPERSEDED_KEPT_MS) {
        dropped.push(cursor.value);
        await cursor.delete();
      }
    for (const version of dropped) {
      const { logId, kind, id } = version;
      const current = await tx.objectStore('records').get([logId, kind, id]);
      const others = await store.getAll(IDBKeyRange.bound([logId, kind, id], [logId, kind, id, []]));
      const shown = new Set([...(current ? [current] : []), ...others].flatMap(photosShown));
      for (const photo of photosShown(version))
        if (!shown.has(photo))
          await Promise.all(PHOTO_STORES.map((name) => tx.objectStore(name).delete([logId, photo])));
    }
  });

const PHOTO_STORES = ['photos', 'thumbnails'] as const;
