import { expect, test, vi } from 'vitest';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { foldRun } from '../../src/domain/setup/fold.ts';
import { appendEvent, eventsOfRun } from '../../src/storage/events.ts';
import { withFreshDatabase } from './fresh-database.ts';
import { started, ticked } from './sample-log.ts';

withFreshDatabase();

test('events come back in the order of n, whatever the order they were written in', async () => {
  for (const event of [ticked(10, 'cone'), ticked(2, 'isolate'), started(), ticked(3, 'protect')])
    await appendEvent(event);
  expect((await eventsOfRun('mine', 'run-1')).map((e) => e.n)).toEqual([1, 2, 3, 10]);
});

test('the same event again is a retry that had worked', async () => {
  await appendEvent(ticked(2, 'isolate'));
  await appendEvent({ ...ticked(2, 'isolate') });
  const { kind, ...rest } = ticked(2, 'isolate');
  await appendEvent({ ...rest, kind } as SetUpEvent);
  expect(await eventsOfRun('mine', 'run-1')).toHaveLength(1);
});

test('a different event under the same key is refused, and the first stays', async () => {
  await appendEvent(ticked(2, 'isolate'));
  await expect(appendEvent(ticked(2, 'isolate', { verdict: 'fail' }))).rejects.toMatchObject({
    reason: 'taken',
  });
  expect(await eventsOfRun('mine', 'run-1')).toEqual([ticked(2, 'isolate')]);
});

test('two taps in one frame: one is kept, the other is told', async () => {
  const taps = await Promise.allSettled([
    appendEvent(ticked(2, 'isolate')),
    appendEvent(ticked(2, 'isolate', { verdict: 'skip' })),
  ]);
  expect(taps.map((tap) => tap.status).sort()).toEqual(['fulfilled', 'rejected']);
  expect(await eventsOfRun('mine', 'run-1')).toHaveLength(1);
});

test('two phones may share an n: both events are kept, and the run is contested', async () => {
  for (const event of [started(), ticked(2, 'isolate'), ticked(2, 'isolate', { writer: 'phone-b' })])
    await appendEvent(event);
  const events = await eventsOfRun('mine', 'run-1');
  expect(events).toHaveLength(3);
  expect(foldRun(events)?.contested).toBe(true);
});

test('adding reads nothing beforehand', async () => {
  await appendEvent(started());
  const reads = [vi.spyOn(IDBObjectStore.prototype, 'get'), vi.spyOn(IDBObjectStore.prototype, 'getAll')];
  await appendEvent(ticked(2, 'isolate'));
  for (const read of reads) expect(read).not.toHaveBeenCalled();
  vi.restoreAllMocks();
});

test('logs and runs are kept apart', async () => {
  await appendEvent(started());
  await appendEvent(started({ runId: 'run-10', boxId: 'box-2' }));
  await appendEvent(started({ logId: 'mine2', runId: 'run-1' }));
  await appendEvent(ticked(2, 'isolate'));
  expect(await eventsOfRun('mine', 'run-1')).toHaveLength(2);
  expect(await eventsOfRun('mine', 'run-10')).toHaveLength(1);
  expect(await eventsOfRun('mine2', 'run-1')).toHaveLength(1);
});
