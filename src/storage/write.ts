import type { IDBPTransaction } from 'idb';
import { connection, type Db, forget } from './connection.ts';
import { asFailure } from './failure.ts';
import type { StoreName } from './names.ts';
import type { LidwrightDb } from './schema.ts';

export type WriteTx = IDBPTransaction<LidwrightDb, StoreName[], 'readwrite'>;
export type ReadTx = IDBPTransaction<LidwrightDb, StoreName[], 'readonly'>;

/**
 * The one way to write. Opens a strict readwrite transaction (on disk before it completes), runs `work` in it and resolves
 * only when it has completed. `work` may await requests of this transaction and nothing else. When the connection died, as it
 * does while a phone sleeps, it is opened again and `work` runs once more. If it died between the commit and its notice, the
 * first run was written as well, so `work` must be safe to repeat. Any failure is thrown as a StorageFailure.
 * Relaxed durability is for drafts and caches.
 */
export const write = <T>(
  stores: readonly StoreName[],
  work: (tx: WriteTx) => Promise<T> | T,
  durability: 'strict' | 'relaxed' = 'strict',
): Promise<T> =>
  withConnection(async (db) => {
    const tx = db.transaction([...stores], 'readwrite', { durability });
    // Attached at once: an abort while `work` still runs must not count as unhandled.
    const done = tx.done.then(
      () => undefined,
      (error: unknown) => error ?? new DOMException('aborted', 'AbortError'),
    );
    let value: T;
    try {
      value = await work(tx);
    } catch (error) {
      try {
        tx.abort();
      } catch {
        // Already aborted by the failed request.
      }
      // A full disk surfaces on the transaction, not on the request.
      const ended = await done;
      throw isQuota(ended) ? ended : error;
    }
    const ended = await done;
    if (ended !== undefined) throw ended;
    return value;
  });

/** Reads from one or more stores in one transaction. `work` may run twice, as in `write`: what it collects it holds itself. */
export const read = <T>(stores: readonly StoreName[], work: (tx: ReadTx) => Promise<T>): Promise<T> =>
  withConnection((db) => work(db.transaction([...stores], 'readonly')));

const withConnection = async <T>(work: (db: Db) => Promise<T>): Promise<T> => {
  let used: Db | undefined;
  try {
    const db = connection();
    used = db instanceof Promise ? await db : db;
    return await work(used);
  } catch (error) {
    if (asFailure(error).reason !== 'lost') throw asFailure(error);
    if (used) forget(used);
    try {
      return await work(await connection());
    } catch (again) {
      throw asFailure(again);
    }
  }
};

const isQuota = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'QuotaExceededError';
