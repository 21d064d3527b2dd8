import { forceCloseDatabase } from 'fake-indexeddb';
import { unwrap } from 'idb';
import { expect, test, vi } from 'vitest';
import { connection, disconnect } from '../../src/storage/connection.ts';
import { getDevice, putDevice } from '../../src/storage/device.ts';
import { DATABASE, DEVICE_KEYS, STORES, VERSION } from '../../src/storage/names.ts';
import { openRaw, withFreshDatabase } from './fresh-database.ts';

withFreshDatabase();

test('the first use makes every store, and all uses share one connection', async () => {
  const [first, second] = await Promise.all([connection(), connection()]);
  expect(first).toBe(second);
  expect([...first.objectStoreNames].sort()).toEqual(Object.values(STORES).sort());
});

test('a connection that the system closed is reopened, and the work is done once more', async () => {
  await putDevice(DEVICE_KEYS.currentLog, 'mine');
  const first = await connection();
  forceCloseDatabase(unwrap(first) as never);
  await putDevice(DEVICE_KEYS.currentLog, 'demo');
  expect(await getDevice(DEVICE_KEYS.currentLog)).toBe('demo');
  expect(await connection()).not.toBe(first);
});

test('a handle that died without a word is reopened once, by a write and by a read', async () => {
  await putDevice(DEVICE_KEYS.currentLog, 'mine');
  (await connection()).close();
  await putDevice(DEVICE_KEYS.currentLog, 'demo');
  (await connection()).close();
  expect(await getDevice(DEVICE_KEYS.currentLog)).toBe('demo');
});

test('a connection that keeps dying is reported after one retry, not retried for ever', async () => {
  await putDevice(DEVICE_KEYS.currentLog, 'mine');
  const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(() => {
    throw new DOMException('gone', 'InvalidStateError');
  });
  await expect(getDevice(DEVICE_KEYS.currentLog)).rejects.toMatchObject({ reason: 'lost' });
  expect(transaction).toHaveBeenCalledTimes(2);
  transaction.mockRestore();
  expect(await getDevice(DEVICE_KEYS.currentLog)).toBe('mine');
});

test('another tab that needs a newer database is let through, and then this one says so', async () => {
  await putDevice(DEVICE_KEYS.currentLog, 'mine');
  const newer = await openRaw(DATABASE, VERSION + 1);
  await expect(putDevice(DEVICE_KEYS.currentLog, 'demo')).rejects.toMatchObject({ reason: 'newer' });
  newer.close();
});

test('a database of a newer version is left as it is', async () => {
  const newer = await openRaw(DATABASE, VERSION + 98, (db) => db.createObjectStore('of-the-future'));
  newer.close();
  await expect(putDevice(DEVICE_KEYS.currentLog, 'mine')).rejects.toMatchObject({ reason: 'newer' });
  const after = await openRaw(DATABASE);
  expect([after.version, [...after.objectStoreNames]]).toEqual([VERSION + 98, ['of-the-future']]);
  after.close();
});

test('no storage at all is a reason of its own', async () => {
  vi.stubGlobal('indexedDB', undefined);
  await expect(connection()).rejects.toMatchObject({ reason: 'none' });
  vi.unstubAllGlobals();
});

test('an open that never answers ends after eight seconds, and the next use tries again', async () => {
  vi.useFakeTimers();
  const stuck = vi.spyOn(indexedDB, 'open').mockReturnValue(
    Object.create(IDBOpenDBRequest.prototype, {
      addEventListener: { value: () => {} },
    }),
  );
  const failed = expect(connection()).rejects.toMatchObject({ reason: 'lost' });
  await vi.advanceTimersByTimeAsync(8_000);
  await failed;
  stuck.mockRestore();
  vi.useRealTimers();
  expect((await connection()).name).toBe(DATABASE);
  await disconnect();
});
