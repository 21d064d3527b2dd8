import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, expect, it } from 'vitest';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { forget } from '../../src/storage/connection.ts';
import { eachRunOfLog } from '../../src/storage/runs-of-log.ts';
import { addLog } from '../../src/storage/whole-log.ts';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  forget();
});

const paused = (logId: string, run: number, n: number): SetUpEvent => ({
  ...{ logId, runId: `run ${String(run).padStart(4, '0')}`, n, writer: 'w' },
  ...{ session: 's', at: n, mono: n, hid: 0, kind: 'paused' },
});

it('hands every set-up over whole and once, also across the batches, and no other log’s', async () => {
  const events = Array.from({ length: 700 }, (_, run) =>
    [1, 2, 3, 4, 5, 6, 7].map((n) => paused('mine', run, n)),
  );
  await addLog([], [...events.flat(), paused('other', 1, 1)]);
  const seen: (readonly { readonly runId: string; readonly n: number }[])[] = [];
  const shares: number[] = [];
  await eachRunOfLog(
    'mine',
    (run) => seen.push(run),
    (share) => shares.push(share),
  );
  expect(seen.map((run) => run.map(({ runId, n }) => [runId, n]))).toEqual(
    events.map((run) => run.map(({ runId, n }) => [runId, n])),
  );
  expect(shares.length).toBeGreaterThan(2);
  expect(shares.at(-1)).toBe(1);
  expect([...shares].sort((a, b) => a - b)).toEqual(shares);
});

it('of an empty log hands over nothing', async () => {
  await eachRunOfLog('mine', () => expect.unreachable());
});
