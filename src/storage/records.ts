import type { Bodies, Kind, Stored } from '../domain/box/records.ts';
import { canonical } from '../domain/log/canonical.ts';
import { countUp, GREATEST_REV, isOverfull } from '../domain/log/count-up.ts';
import type { SetUpEvent } from '../domain/setup/events.ts';
import { StorageFailure } from './failure.ts';
import type { PhotoBytes, Thumbnail } from './schema.ts';
import { markRecordsStale, markRunStale } from './stale.ts';
import { read, type WriteTx, write } from './write.ts';

/** Records read at once: reading many thousands at once would block the page. */
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

export const putPhoto = (tx: WriteTx, { full, thumbnail }: Photo) => [
  tx.objectStore('photos').put(full),
  tx.objectStore('thumbnails').put(thumbnail),
];

/** What is written in the same transaction as a record, or not at all: a photo it shows, the first event of a set-up it lists. */
export interface Alongside {
  /** Keeps the replaced version among the superseded ones, from where it can be restored. */
  readonly keepReplaced?: boolean;
  readonly photo?: Photo;
  readonly event?: SetUpEvent;
}

const PHOTO_STORES = ['photos', 'thumbnails'] as const;
const EVENT_STORES = ['events'] as const;
const SUPERSEDED_STORES = ['superseded'] as const;

/**
 * Changes one record: `change` gets the newest body (null when there is none or it was deleted) and gives the next, or null
 * to delete. It runs inside the transaction, on the stored record, so that an edit made in another tab is not lost.
 * `change` must be pure and quick. What is given in `alongside` commits in the same transaction. When the connection dies between
 * a commit and its notice, the second run finds its own version stored and changes nothing more.
 */
export const changeRecord = <K extends Kind>(
  logId: string,
  kind: K,
  id: string,
  author: Author,
  change: (current: Bodies[K] | null) => Bodies[K] | null,
  alongside: Alongside = {},
): Promise<Stored<K>> => {
  let made: Stored<K> | undefined;
  return write(
    [
      'records',
      'stale',
      ...(alongside.keepReplaced ? SUPERSEDED_STORES : []),
      ...(alongside.photo ? PHOTO_STORES : []),
      ...(alongside.event ? EVENT_STORES : []),
    ],
    async (tx) => {
      const store = tx.objectStore('records');
      const current = (await store.get([logId, kind, id])) as Stored<K> | undefined;
      if (made && current && canonical(made) === canonical(current)) return current;
      const next: Stored<K> = {
        logId,
        kind,
        id,
        rev: countUp(current?.rev ?? 0, GREATEST_REV),
        writer: author.writer,
        savedAt: author.now,
        body: change(current?.body ?? null),
      };
      if (next.body && isOverfull(next.body)) throw new StorageFailure('list-full');
      made = next;
      await store.put(next);
      await markRecordsStale(tx, next);
      if (alongside.keepReplaced && current)
        await tx.objectStore('superseded').put({ ...current, supersededAt: author.now });
      if (alongside.event) await addOnce(tx, alongside.event);
      if (alongside.photo) await Promise.all(putPhoto(tx, alongside.photo));
      return next;
    },
  );
};

/** Adds an event, unless the same one is stored already because the commit of a first try succeeded without notice. */
const addOnce = async (tx: WriteTx, event: SetUpEvent): Promise<void> => {
  const events = tx.objectStore('events');
  const there = await events.get([event.logId, event.runId, event.n, event.writer]);
  if (there && canonical(there) === canonical(event)) return;
  await events.add(event);
  await markRunStale(tx, event);
};
