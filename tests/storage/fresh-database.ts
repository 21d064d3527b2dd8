import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach } from 'vitest';
import { connection, disconnect } from '../../src/storage/connection.ts';
import { STORES, type StoreName } from '../../src/storage/names.ts';

/** Gives each test of the file a database of its own. */
export const withFreshDatabase = (): void => {
  beforeEach(() => {
    globalThis.indexedDB = new IDBFactory();
  });
  afterEach(() => disconnect().catch(() => {}));
};

/** Everything in the database, for "nothing changed". */
export const everything = async (): Promise<Record<string, unknown[]>> => {
  const db = await connection();
  const stores = Object.values(STORES) as StoreName[];
  const tx = db.transaction(stores);
  const entries = stores.map(async (name) => {
    const keys = await tx.objectStore(name).getAllKeys();
    const values = await tx.objectStore(name).getAll();
    return [name, keys.map((key, i) => ({ key, value: values[i] }))] as const;
  });
  return Object.fromEntries(await Promise.all(entries));
};

/** The raw database beneath the app's connection. */
export const openRaw = (
  name: string,
  version?: number,
  upgrade?: (db: IDBDatabase) => void,
): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const request = indexedDB.open(name, version);
    request.onupgradeneeded = () => upgrade?.(request.result);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
