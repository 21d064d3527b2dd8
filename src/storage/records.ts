import type { Bodies, Kind, Stored } from '../domain/box/records.ts';
import { mergeVersions } from '../domain/log/version.ts';
import type { SetUpEvent } from '../domain/setup/events.ts';
import type { PhotoBytes, Thumbnail } from './schema.ts';
import { touchRecords, touchRun } from './touched.ts';
import { read, type WriteTx, write } from './write.ts';

/** Records handed over at once: many thousands together would hold up the page. */
const PIECE = 250;

/** Everything of one kind in a log, tombstones left out, in key order. */
export const listRecords = <K extends Kind>(logId: string, kind: K): Promise<Stored<K>[]> =>
  read(['records'], async (tx) => {
    const found: Stored<K>[] = [];
    let after = [logId, kind, ''];
    for (;;) {
      const piece = await tx
        .objectStore('records')
        .getAll(IDBKeyRange.bound(after, [logId, kind, []], true), PIECE);
      for (const record of piece) if (record.body !== null) found.push(record as Stored<K>);
      const last = piece.at(-1);
      if (!last || piece.length < PIECE) return found;
      after = [logId, kind, last.id];
    }
  });

export const getRecord = async <K extends Kind>(
  logId: string,
  kind: K,
  id: string,
): Promise<Stored<K> | undefined> =>
  (await read(['records'], (tx) => tx.objectStore('records').get([logId, kind, id]))) as
    | Stored<K>
    | undefined;

/** Who writes, when (for showing), passed in so that this layer has no clock. */
export interface Author {
  readonly writer: string;
  readonly now: number;
}

export interface Photo {
  readonly full: PhotoBytes;
  readonly thumbnail: Thumbnail;
}

const putPhoto = (tx: WriteTx, { full, thumbnail }: Photo) => [
  tx.objectStore('photos').put(full),
  tx.objectStore('thumbnails').put(thumbnail),
];

/** What must land with a record or not at all: a photo it refers to, the first event of a set-up it lists. */
export interface Together {
  /** The version before goes among the superseded ones, and can be brought back from there. */
  readonly keepReplaced?: boolean;
  readonly photo?: Photo;
  readonly event?: SetUpEvent;
}

const PHOTO_STORES = ['photos', 'thumbnails'] as const;
const EVENT_STORES = ['events'] as const;
const SUPERSEDED_STORES = ['superseded'] as const;

/**
 * Changes one record: `change` gets the newest body (null when there is none or it was deleted) and gives the next, or null
 * to delete. It runs inside the transaction, on what is really there, so an edit in another tab is never overwritten unseen.
 * `change` must be pure and quick. What is given in `together` commits in the same transaction.
 */
export const changeRecord = <K extends Kind>(
  logId: string,
  kind: K,
  id: string,
  author: Author,
  change: (current: Bodies[K] | null) => Bodies[K] | null,
  together: Together = {},
): Promise<Stored<K>> =>
  write(
    [
      'records',
      'touched',
      ...(together.keepReplaced ? SUPERSEDED_STORES : []),
      ...(together.photo ? PHOTO_STORES : []),
      ...(together.event ? EVENT_STORES : []),
    ],
    async (tx) => {
      const store = tx.objectStore('records');
      const current = (await store.get([logId, kind, id])) as Stored<K> | undefined;
      const next: Stored<K> = {
        logId,
        kind,
        id,
        rev: (current?.rev ?? 0) + 1,
        writer: author.writer,
        savedAt: author.now,
        body: change(current?.body ?? null),
      };
      await store.put(next);
      await touchRecords(tx, next);
      if (together.keepReplaced && current)
        await tx.objectStore('superseded').put({ ...current, supersededAt: author.now });
      if (together.event) {
        await tx.objectStore('events').add(together.event);
        await touchRun(tx, together.event);
      }
      if (together.photo) await Promise.all(putPhoto(tx, together.photo));
      return next;
    },
  );

/** Takes in a foreign version inside a running transaction: the later one stays, the other goes to superseded. */
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

/** How long a superseded version can be brought back. */
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

/** Key range of one log in any store whose key begins with logId. */
export const wholeLog = (logId: string): IDBKeyRange => IDBKeyRange.bound([logId], [logId, []]);

const OF_A_LOG = [
  ...(['records', 'superseded', 'events', 'photos', 'thumbnails'] as const),
  ...(['drafts', 'imports', 'touched', 'kept'] as const),
];

const clear = (tx: WriteTx, logId: string) =>
  OF_A_LOG.map((name) => tx.objectStore(name).delete(wholeLog(logId)));

/** Removes a log and all that belongs to it: one key range a store, one transaction. */
export const removeLog = (logId: string): Promise<void> =>
  write(OF_A_LOG, async (tx) => {
    await Promise.all(clear(tx, logId));
  });

/** Puts a whole prepared log (the demo) in the place of all that stood under its name, one transaction. */
export const addLog = (
  records: readonly Stored[],
  events: readonly SetUpEvent[],
  photos: readonly Photo[] = [],
): Promise<void> =>
  write(OF_A_LOG, async (tx) => {
    const logIds = new Set([...records, ...events].map(({ logId }) => logId));
    // A reading of the findings under way must not keep what it made of the log before.
    const stamp = `added ${Math.max(...records.map(({ savedAt }) => savedAt))}`;
    await Promise.all([
      ...[...logIds].flatMap((logId) => clear(tx, logId)),
      ...records.map((record) => tx.objectStore('records').put(record)),
      ...events.map((event) => tx.objectStore('events').put(event)),
      ...photos.flatMap((photo) => putPhoto(tx, photo)),
      ...[...logIds].map((logId) =>
        tx.objectStore('kept').put({ logId, what: 'runs', rule: '', stamp, value: null }),
      ),
    ]);
  });
