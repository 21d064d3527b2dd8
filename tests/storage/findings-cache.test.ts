import { expect, test, vi } from 'vitest';
import type { Stored } from '../../src/domain/box/records.ts';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { makeBackup } from '../../src/storage/backup/make-backup.ts';
import { type Backup, readBackup } from '../../src/storage/backup/read-backup.ts';
import { takeIn } from '../../src/storage/backup/take-in.ts';
import { readCache, saveCache } from '../../src/storage/cache.ts';
import { disconnect } from '../../src/storage/connection.ts';
import { appendEvent } from '../../src/storage/events.ts';
import { changeRecord } from '../../src/storage/records.ts';
import { addLog, removeLog } from '../../src/storage/whole-log.ts';
import { write } from '../../src/storage/write.ts';
import { answerTo, type Meanwhile } from '../../src/workers/findings-answer.ts';
import type { Found } from '../../src/workers/findings-message.ts';
import { manyBoxes, NOW, RIGS } from '../demo/workshop.ts';
import { everything, withFreshDatabase } from './fresh-database.ts';

withFreshDatabase();
vi.setConfig({ testTimeout: 40_000 });

const author = { writer: 'phone-a', now: NOW };
const made = manyBoxes(20260701, 24);
const recordsOf = (logId: string, boxes = made): Stored[] => [
  ...Object.entries(RIGS).map(
    ([id, body]) => ({ logId, kind: 'rig', id, rev: 1, writer: 'w', savedAt: NOW, body }) as Stored,
  ),
  ...boxes.map(
    ({ id, box }) => ({ logId, kind: 'box', id, rev: 1, writer: 'w', savedAt: NOW, body: box }) as Stored,
  ),
];
const eventsOf = (logId: string, boxes = made): SetUpEvent[] =>
  boxes.flatMap(({ events }) => events.map((event) => ({ ...event, logId })));
const fill = (logId = 'mine', boxes = made) => addLog(recordsOf(logId, boxes), eventsOf(logId, boxes));

const silent: Meanwhile = { share: () => {}, last: () => {} };
const ask = (known: string | null = null, by = 'this code', meanwhile = silent) =>
  answerTo({ want: 'findings', logIds: ['mine'], woods: {}, known }, by, meanwhile);
/** What the page ends up showing. */
const found = async (by?: string): Promise<Found> => {
  let shown: Found | undefined;
  const last = (before: Found) => {
    shown = before;
  };
  const answer = await ask(null, by, { ...silent, last });
  if (answer.kind === 'found') shown = answer.found;
  if (!shown) throw new Error(answer.kind);
  return shown;
};
const rows = async (): Promise<string> => {
  const answer = await answerTo({ want: 'rows', logIds: ['mine'], woods: {} }, 'this code', silent);
  if (answer.kind !== 'sheet') throw new Error(answer.kind);
  return answer.text;
};
const emptyCache = () =>
  write(['cache', 'stale'], async (tx) => {
    await tx.objectStore('cache').clear();
    await tx.objectStore('stale').clear();
  });
/** The cache gives the same answer as reading everything. */
const expectAsWithoutCache = async () => {
  const [cached, cachedRows] = [await found(), await rows()];
  await emptyCache();
  expect([cached, cachedRows]).toEqual([await found(), await rows()]);
};
/** Stores that a piece of work reads from. */
const storesRead = async (work: () => Promise<unknown>): Promise<Set<string>> => {
  const spy = vi.spyOn(IDBDatabase.prototype, 'transaction');
  await work();
  const names = new Set(spy.mock.calls.flatMap(([stores]) => stores as string | string[]));
  spy.mockRestore();
  return names;
};

const [first] = made;
const lastOf = (events: readonly SetUpEvent[]) => events.at(-1) as SetUpEvent;
const after = (event: SetUpEvent, happening: object): SetUpEvent =>
  ({
    ...{ logId: 'mine', runId: event.runId, n: event.n + 1, writer: 'phone-a' },
    ...{ at: event.at + 1, mono: 1, hid: 0, session: 's' },
    ...happening,
  }) as SetUpEvent;
/** Takes back a step that was passed, so that the row of its box changes. */
const takeBack = () => {
  const { events } = first as (typeof made)[number];
  const passed = events.find(
    (event) => event.kind === 'ticked' && event.verdict === 'pass' && scored.has(event.steps[0] ?? ''),
  ) as SetUpEvent;
  const own = events.filter(({ runId }) => runId === passed.runId);
  return after(lastOf(own), { kind: 'undone', target: { n: passed.n, writer: passed.writer } });
};
const scored = new Set(
  made
    .flatMap(({ events }) =>
      events.flatMap((event) => (event.kind === 'started' ? event.procedure.steps : [])),
    )
    .flatMap(({ key, hold }) => (hold ? [] : [key])),
);
const sound = async (file: Blob): Promise<Backup> => {
  const backup = await readBackup(file);
  if (!backup.ok) throw new Error(JSON.stringify(backup.error));
  return backup.value;
};

test('with nothing written, the cached answer is given without reading the log', async () => {
  await fill();
  const before = await found();
  expect(before.rows).toBeGreaterThan(15);
  // As if the app had been closed and opened again.
  await disconnect();
  expect(await storesRead(async () => expect(await found()).toEqual(before))).toEqual(
    new Set(['cache', 'stale']),
  );
  expect(await ask(before.from)).toEqual({ kind: 'unchanged' });
});

test('an event makes its own set-up stale, and only that one is read again', async () => {
  await fill();
  const before = await found();
  await appendEvent(takeBack());
  const read = vi.spyOn(IDBObjectStore.prototype, 'getAll');
  const now = await found();
  const eventReads = read.mock.contexts.filter((store) => (store as IDBObjectStore).name === 'events');
  read.mockRestore();
  expect(eventReads).toHaveLength(1);
  expect(now.from).not.toBe(before.from);
  await expectAsWithoutCache();
});

test('a trial fit makes the answer stale, and the last answer is shown until the next is ready', async () => {
  await fill();
  const before = await found();
  const untried = made.find(({ box }) => box.trials.length > 0) as (typeof made)[number];
  await changeRecord('mine', 'box', untried.id, author, () => ({ ...untried.box, trials: [] }));
  const last = vi.fn();
  const answer = await ask(null, 'this code', { ...silent, last });
  expect(last).toHaveBeenCalledExactlyOnceWith(before, expect.any(Number));
  expect(answer).toMatchObject({ kind: 'found', found: { rows: before.rows } });
  expect(answer).not.toMatchObject({ found: { firstTries: before.firstTries } });
  await expectAsWithoutCache();
});

test('a new caliper offset or tip flat makes the answer stale', async () => {
  await fill();
  const before = await found();
  const length = (value: number) => ({ mm: mm(value), text: `${value} mm` });
  await changeRecord('mine', 'instrument', 'caliper', author, () => ({
    name: 'Shop caliper',
    insideMinusOutside: length(0.1),
  }));
  const offset = await found();
  const clearances = ({ allowances }: Found) =>
    allowances.pitches.flatMap(({ marks }) => marks.map(({ clearance }) => clearance));
  expect(clearances(offset)).toEqual(clearances(before).map((each) => expect.closeTo(each - 0.1, 2)));
  await expectAsWithoutCache();
  await changeRecord('mine', 'rig', 'rig-long', author, (rig) => rig && { ...rig, tipFlat: length(0.3) });
  expect((await found()).from).not.toBe(offset.from);
  await expectAsWithoutCache();
});

test('a change that changes no row leaves the answer, and the next question reads no log', async () => {
  await fill();
  const { from } = await found();
  const { id, box } = first as (typeof made)[number];
  await changeRecord('mine', 'box', id, author, () => ({ ...box, name: 'another name' }));
  expect(await ask(from)).toEqual({ kind: 'unchanged' });
  expect(await storesRead(() => ask(from))).toEqual(new Set(['cache', 'stale']));
});

test('an import makes the cache stale: new boxes, and new events of a cached set-up', async () => {
  await fill('mine', made.slice(0, 20));
  const event = takeBack();
  await write(['events'], async (tx) => {
    for (const each of eventsOf('mine', made.slice(20))) await tx.objectStore('events').put(each);
    await tx.objectStore('events').put({ ...event, writer: 'phone-b' });
  });
  await write(['records'], async (tx) => {
    for (const each of recordsOf('mine')) await tx.objectStore('records').put(each);
  });
  const file = await makeBackup(NOW, []);
  await removeLog('mine');
  await fill('mine', made.slice(0, 20));
  const before = await found();
  await takeIn(await sound(file), NOW, 'phone-new');
  const now = await found();
  expect(now.rows).toBeGreaterThan(before.rows);
  await expectAsWithoutCache();
});

test('a deleted log leaves no cache, and a log put in its place is read whole', async () => {
  await fill();
  await found();
  await appendEvent(takeBack());
  await removeLog('mine');
  expect(await everything()).toMatchObject({ cache: [], stale: [] });
  await fill('mine', made.slice(0, 5));
  expect((await found()).rows).toBeLessThanOrEqual(5);
  await fill('mine', made.slice(0, 9));
  await expectAsWithoutCache();
});

test('another build, or other facts of the woods, ignore the cached answer', async () => {
  await fill();
  await found();
  expect(await storesRead(() => ask(null, 'newer code'))).toContain('records');
  const woods = { 'European boxwood': { group: 'hardwood', hardness: 9000 } };
  const asked = () =>
    answerTo({ want: 'findings', logIds: ['mine'], woods, known: null }, 'newer code', silent);
  expect(await storesRead(asked)).toContain('records');
});

test('set-ups folded by another rule are folded again', async () => {
  await fill();
  const right = await rows();
  const before = await readCache('mine');
  await saveCache(before, 'runs', { rule: 'runs 0', stamp: 'old', value: 'not what it is now' });
  expect(await rows()).toBe(right);
});

test('what is written while the log is read stays marked stale', async () => {
  await fill();
  let written: Promise<void> | undefined;
  const meanwhile = {
    ...silent,
    share: () => {
      written ??= appendEvent(takeBack());
    },
  };
  const asked = ask(null, 'this code', meanwhile);
  await asked;
  await written;
  expect((await readCache('mine')).stale).toHaveLength(1);
  await expectAsWithoutCache();
});

test('of two readings at the same time, the one that ends later does not overwrite the newer cache', async () => {
  await fill();
  await found();
  const older = await readCache('mine');
  await appendEvent(takeBack());
  const right = await found();
  expect(await saveCache(older, 'runs', { rule: 'runs 1', stamp: 'late', value: null })).toBeNull();
  expect(await found()).toEqual(right);
});

test('a log that is deleted while it is read is not cached', async () => {
  await fill();
  const before = await readCache('mine');
  await removeLog('mine');
  expect(await saveCache(before, 'runs', { rule: 'runs 1', stamp: 'late', value: null })).toBeNull();
  const none = await readCache('mine');
  expect(await saveCache(none, 'runs', { rule: 'runs 1', stamp: 'late', value: null })).toBeNull();
  expect((await everything()).cache).toEqual([]);
});

test('an interrupted first reading continues where it stopped', async () => {
  await fill();
  const right = await rows();
  await emptyCache();
  vi.spyOn(performance, 'now').mockImplementation(
    (
      (time = 0) =>
      () =>
        (time += 20_000)
    )(),
  );
  const { eachRunOfLog } = await import('../../src/storage/runs-of-log.ts');
  const ids: string[] = [];
  await eachRunOfLog('mine', (run) => ids.push(run[0]?.runId ?? ''), undefined, '');
  const half = ids[Math.floor(ids.length / 2)] as string;
  const rest: string[] = [];
  await eachRunOfLog('mine', (run) => rest.push(run[0]?.runId ?? ''), undefined, half);
  expect(rest).toEqual(ids.slice(ids.indexOf(half) + 1));
  vi.restoreAllMocks();
  expect(await rows()).toBe(right);
});
