import { unwrap } from 'idb';
import { afterEach, expect, test, vi } from 'vitest';
import { getDevice, putDevice } from '../../src/storage/device.ts';
import { dropDraft, getDraft, saveDraft } from '../../src/storage/drafts.ts';
import { appendEvent } from '../../src/storage/events.ts';
import { DEVICE_KEYS } from '../../src/storage/names.ts';
import { changeRecord } from '../../src/storage/records.ts';
import { sweepSuperseded } from '../../src/storage/superseded.ts';
import { addLog, removeLog } from '../../src/storage/whole-log.ts';
import { write } from '../../src/storage/write.ts';
import { everything, withFreshDatabase } from './fresh-database.ts';
import { sampleBox, started, storedBox } from './sample-log.ts';

withFreshDatabase();
afterEach(() => vi.restoreAllMocks());

const spyOnTransactions = () => vi.spyOn(IDBDatabase.prototype, 'transaction');
const durabilities = (spy: ReturnType<typeof spyOnTransactions>) =>
  spy.mock.calls.filter(([, mode]) => mode === 'readwrite').map(([, , options]) => options?.durability);

test('everything that is saved is saved strictly; only drafts are not', async () => {
  await putDevice(DEVICE_KEYS.currentLog, 'mine');
  const spy = spyOnTransactions();
  const author = { writer: 'phone-a', now: 1 };
  await appendEvent(started());
  await changeRecord('mine', 'box', 'box-1', author, () => sampleBox());
  await putDevice(DEVICE_KEYS.currentLog, 'mine');
  await addLog([storedBox({ logId: 'demo' })], []);
  await removeLog('demo');
  await sweepSuperseded(0);
  expect(durabilities(spy)).toEqual(Array(6).fill('strict'));
  spy.mockClear();
  await saveDraft({ logId: 'mine', form: 'plan', values: {}, at: 1 });
  await dropDraft('mine', 'plan');
  expect(durabilities(spy)).toEqual(['relaxed', 'relaxed']);
});

test('it resolves only once the transaction has completed', async () => {
  const order: string[] = [];
  await write(['device'], async (tx) => {
    tx.done.then(() => order.push('on disk'));
    await tx.objectStore('device').put('mine', DEVICE_KEYS.currentLog);
    order.push('asked');
  });
  order.push('told');
  expect(order).toEqual(['asked', 'on disk', 'told']);
});

test('work that fails half-way leaves nothing behind', async () => {
  await putDevice(DEVICE_KEYS.currentLog, 'mine');
  const before = await everything();
  const failing = write(['device', 'records'], async (tx) => {
    await tx.objectStore('device').put('demo', DEVICE_KEYS.currentLog);
    await tx.objectStore('records').put(storedBox());
    throw new Error('on purpose');
  });
  await expect(failing).rejects.toMatchObject({ name: 'StorageFailure', reason: 'unknown' });
  expect(await everything()).toEqual(before);
});

test('a full disk is said to be a full disk, whether the request or the commit meets it', async () => {
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  await expect(putDevice(DEVICE_KEYS.currentLog, 'mine')).rejects.toMatchObject({ reason: 'full' });
  const atCommit = write(['device'], async (tx) => {
    await tx.objectStore('device').put('mine', DEVICE_KEYS.currentLog);
    // fake-indexeddb has no disk to fill; this is how it ends a transaction with an error of its own.
    (unwrap(tx) as unknown as { _abort(name: string): void })._abort('QuotaExceededError');
  });
  await expect(atCommit).rejects.toMatchObject({ reason: 'full' });
  expect(await getDevice(DEVICE_KEYS.currentLog)).toBeUndefined();
});

test('a draft comes back until it is dropped', async () => {
  await saveDraft({ logId: 'mine', form: 'plan', values: { opening: '2 1/2' }, at: 5 });
  expect(await getDraft('mine', 'plan')).toMatchObject({ values: { opening: '2 1/2' } });
  expect(await getDraft('demo', 'plan')).toBeUndefined();
  await dropDraft('mine', 'plan');
  expect(await getDraft('mine', 'plan')).toBeUndefined();
});
