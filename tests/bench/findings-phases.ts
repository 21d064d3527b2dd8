import { workshopOf } from '../../src/domain/box/given.ts';
import type { Box, Stored } from '../../src/domain/box/records.ts';
import { allowances } from '../../src/domain/findings/answers/allowance.ts';
import { byHardness } from '../../src/domain/findings/answers/by-hardness.ts';
import { stepLinks } from '../../src/domain/findings/answers/step-links.ts';
import { stepTimes } from '../../src/domain/findings/answers/step-times.ts';
import { woodsByPitch } from '../../src/domain/findings/answers/woods-by-pitch.ts';
import { type CutRun, cutRuns } from '../../src/domain/findings/rows/cut-run.ts';
import { packRuns, unpackRuns } from '../../src/domain/findings/rows/packed-runs.ts';
import { rowsFromLogs } from '../../src/domain/findings/rows/rows-from-log.ts';
import { foldRun } from '../../src/domain/setup/fold.ts';
import { sha256 } from '../../src/domain/sha256.ts';
import { boxesFromNewest, isAnyOpen } from '../../src/storage/boxes.ts';
import { readCache } from '../../src/storage/cache.ts';
import { disconnect } from '../../src/storage/connection.ts';
import { changeRecord, listRecords } from '../../src/storage/records.ts';
import { eachRunOfLog } from '../../src/storage/runs-of-log.ts';
import { addLog } from '../../src/storage/whole-log.ts';
import { write } from '../../src/storage/write.ts';
import { answerTo } from '../../src/workers/findings-answer.ts';
import { manyBoxes, NOW, RIGS } from '../demo/workshop.ts';

const LOG = 'mine';
const DAY = 86_400_000;
const AT_ONCE = 250;

const stored = (kind: Stored['kind'], id: string, body: unknown): Stored =>
  ({ logId: LOG, kind, id, rev: 1, writer: 'bench', savedAt: NOW, body }) as Stored;

/** Puts so many boxes of the invented workshop in, two a day, the newest three days ago. */
export const fill = async (boxes: number): Promise<void> => {
  const made = manyBoxes(20260701, boxes);
  await addLog(
    Object.entries(RIGS).map(([id, rig]) => stored('rig', id, rig)),
    [],
  );
  for (let from = 0; from < boxes; from += AT_ONCE) {
    const some = made.slice(from, from + AT_ONCE);
    const records = some.map(({ id, box }, i) => {
      const at = NOW - (3 + Math.floor((boxes - 1 - from - i) / 2)) * DAY;
      return stored('box', id, { ...box, startedOn: new Date(at).toISOString().slice(0, 10) });
    });
    const events = some.flatMap((each) => each.events.map((event) => ({ ...event, logId: LOG })));
    await write(['records', 'events'], (tx) =>
      Promise.all([
        ...records.map((record) => tx.objectStore('records').put(record)),
        ...events.map((event) => tx.objectStore('events').put(event)),
      ]),
    );
  }
  await disconnect();
};

/** Empties the cache. */
export const forget = async (): Promise<void> => {
  await write(['cache'], (tx) => tx.objectStore('cache').clear());
  await disconnect();
};

type Phase = readonly [name: string, ms: number];

/** Every part of an answer by itself, one after another, then three whole ones: the first ever, the next, one after a change. */
export const phases = async (): Promise<readonly Phase[]> => {
  const times: Phase[] = [];
  const timed = async <T>(name: string, work: () => T | Promise<T>): Promise<T> => {
    const from = performance.now();
    const value = await work();
    times.push([name, performance.now() - from]);
    return value;
  };

  await timed('Bench: is a box open', () => isAnyOpen(LOG));
  await timed('Bench: the newest box', () => boxesFromNewest(LOG, 1, () => true));
  await timed('Boxes: the newest 40', () => boxesFromNewest(LOG, 40, () => true));
  const records = await timed('read all boxes', () => listRecords(LOG, 'box'));
  await timed('clone them', () => structuredClone(records));

  const small = cutRuns();
  const runs = new Map<string, CutRun>();
  let folding = 0;
  const from = performance.now();
  await eachRunOfLog(LOG, (events) => {
    const start = performance.now();
    const run = foldRun(events);
    if (run) runs.set(run.runId, small(run));
    folding += performance.now() - start;
  });
  times.push(
    ['read all events, folding left out', performance.now() - from - folding],
    ['fold them', folding],
  );
  const packed = await timed('pack the set-ups', () => packRuns(runs.values()));
  await timed(`unpack them (${Math.round(packed.length / 1000)} kB)`, () => unpackRuns(packed));

  const boxes = new Map(records.flatMap(({ id, body }) => (body ? [[id, body as Box] as const] : [])));
  const workshop = workshopOf([
    ...(await listRecords(LOG, 'rig')),
    ...(await listRecords(LOG, 'instrument')),
    ...(await listRecords(LOG, 'wood')),
  ]);
  const woodFacts = () => ({ group: 'hardwood', hardness: 5000 });
  const table = await timed('rows', () => rowsFromLogs([{ log: LOG, boxes, ...workshop, runs, woodFacts }]));
  await timed('their name', () => sha256(new TextEncoder().encode(JSON.stringify(table))));
  await timed('step links', () => stepLinks(table));
  await timed('woods by pitch', () => woodsByPitch(table));
  await timed('by hardness', () => byHardness(table));
  await timed('allowances', () => allowances(table));
  await timed('times', () => stepTimes(table));

  const ask = (known: string | null) =>
    answerTo({ want: 'findings', logIds: [LOG], woods: {}, known }, 'the bench', {
      share: () => {},
      last: () => {},
    });
  const answer = await timed('whole: the first ever', () => ask(null));
  if (answer.kind === 'found') await timed('clone the answer', () => structuredClone(answer.found));
  await timed('whole: again', () => ask(null));
  await timed('reading the cache', () => readCache(LOG));
  const newestBox = records.reduce((most, each) =>
    most.body && each.body && each.body.number > most.body.number ? each : most,
  );
  await changeRecord(
    LOG,
    'box',
    newestBox.id,
    { writer: 'bench', now: NOW },
    (box) => box && { ...box, trials: [] },
  );
  await timed('whole: after a change', () => ask(null));
  await changeRecord(LOG, 'box', newestBox.id, { writer: 'bench', now: NOW }, () => newestBox.body as Box);
  await disconnect();
  return times;
};
