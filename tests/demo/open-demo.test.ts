// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { leaveDemo, openDemo } from '../../src/app/demo.ts';
import { failures } from '../../src/app/failure.ts';
import { DEMO_LOG, logId, MY_LOG, openSession } from '../../src/app/session.ts';
import type { Box } from '../../src/domain/box/records.ts';
import { forget } from '../../src/storage/connection.ts';
import { saveDraft } from '../../src/storage/drafts.ts';
import { changeRecord } from '../../src/storage/records.ts';
import { addLog } from '../../src/storage/whole-log.ts';
import { everything } from '../storage/fresh-database.ts';
import { storedBox } from '../storage/sample-log.ts';
import { SCENARIO } from './scenario.ts';

vi.setConfig({ testTimeout: 40_000 });
beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  forget();
  failures.value = [];
  await openSession();
});
afterEach(() => vi.restoreAllMocks());

const inDemo = async () => {
  const stores = Object.entries(await everything()).map(([name, all]) => {
    const ours = all.filter((entry) => (entry as { value: { logId?: string } }).value.logId === DEMO_LOG);
    return [name, ours] as const;
  });
  return Object.fromEntries(stores);
};
/** No transaction that writes events ever completes. */
const loseTheStore = () => {
  const real = IDBObjectStore.prototype.put;
  const lost = new Set<IDBTransaction>();
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...given) {
    const { name, transaction } = this;
    if (name === 'events' && !lost.has(transaction)) queueMicrotask(() => transaction.abort());
    if (name === 'events') lost.add(transaction);
    return real.apply(this, given);
  });
};

describe('the demo', () => {
  test('opens beside the own log and goes without a trace', async () => {
    await addLog([storedBox({})], []);
    const before = await everything();
    await openDemo();
    expect([logId.value, failures.value]).toEqual([DEMO_LOG, []]);
    const { records, events, photos, thumbnails } = await inDemo();
    expect(records?.length).toBeGreaterThan(SCENARIO.boxes);
    expect(events?.length).toBeGreaterThan(3000);
    expect(photos?.length).toBeGreaterThan(6);
    expect(thumbnails?.length).toBe(photos?.length);
    await leaveDemo();
    expect(logId.value).toBe(MY_LOG);
    expect({ ...(await everything()), device: [] }).toEqual({ ...before, device: [] });
  });

  test('opened again is as new: what was done in it is gone', async () => {
    await openDemo();
    const { records } = await inDemo();
    await saveDraft({ logId: DEMO_LOG, form: 'plan', values: {}, at: 1 });
    const author = { writer: 'phone-a', now: 1 };
    await changeRecord(DEMO_LOG, 'box', 'box-of-mine', author, () => storedBox({}).body as Box);
    await openDemo();
    const again = await inDemo();
    expect(again.records?.length).toBe(records?.length);
    expect(again.drafts).toEqual([]);
  });

  test('stands as it was until the new one is whole', async () => {
    await openDemo();
    const before = await inDemo();
    // As after a removal that failed.
    logId.value = MY_LOG;
    loseTheStore();
    await openDemo();
    expect([logId.value, failures.value]).toEqual([MY_LOG, [{ act: 'demo', of: '', reason: 'lost' }]]);
    vi.restoreAllMocks();
    expect(await inDemo()).toEqual(before);
  });

  test('that cannot be had says so, and leaves everything as it is', async () => {
    vi.doMock('../../shared/demo-log.json', () => {
      throw new TypeError('Failed to fetch dynamically imported module');
    });
    vi.resetModules();
    const fresh = {
      ...(await import('../../src/app/demo.ts')),
      ...(await import('../../src/app/failure.ts')),
      ...(await import('../../src/app/session.ts')),
      ...(await import('../../src/ui/shell/notice-words.ts')),
    };
    const before = await everything();
    await fresh.openDemo();
    vi.doUnmock('../../shared/demo-log.json');
    const [said] = fresh.failures.value.map(
      ({ act, reason }) => `${fresh.failureActs[act]} ${fresh.failureCauses[reason]}`,
    );
    expect(said).toBe('Sample workshop not opened or closed. It needs a connection the first time.');
    expect(fresh.logId.value).toBe(MY_LOG);
    expect(await everything()).toEqual(before);
  });
});
