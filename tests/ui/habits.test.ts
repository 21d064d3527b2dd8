import { expect, test } from 'vitest';
import { lastLength } from '../../src/app/last-length.ts';
import { readUsualTimes, usualTimes } from '../../src/app/usual-times.ts';
import type { Reading } from '../../src/domain/setup/reading.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { addLog } from '../../src/storage/whole-log.ts';
import { withFreshDatabase } from '../storage/fresh-database.ts';
import { sampleBox, started, storedBox, ticked } from '../storage/sample-log.ts';

withFreshDatabase();

const length = (text: string, value: number) => ({ text, mm: mm(value) });
const gap = (over: string): Reading => ({
  kind: 'gap',
  gap: length('0.1 mm', 0.1),
  over: length(over, 80),
  plane: 'lean',
});

/** Box `number` with one set-up, begun in the order of the numbers, whose board took so many seconds. */
const boxWithRun = (number: number, seconds: number, ...readings: Reading[]) => {
  const runId = `run-${number}`;
  const at = 1_930_000_000_000 + number * 3_600_000;
  const place = (n: number, mono: number) => ({ runId, n, at: at + mono, mono });
  return {
    record: storedBox({
      id: `box-${number}`,
      body: sampleBox({ number, setUps: [{ runId, part: 'recess', seq: 1 }] }),
    }),
    events: [
      started({ ...place(1, 0), boxId: `box-${number}` }),
      ticked(2, 'isolate', place(2, 0)),
      ticked(3, 'protect', place(3, 0)),
      ticked(4, 'board', place(4, seconds * 1000)),
      ...readings.map((reading, i) => ({
        ...started(),
        ...place(5 + i, seconds * 1000),
        kind: 'read' as const,
        step: 'gap',
        reading,
      })),
    ],
  };
};
const fill = (...boxes: readonly ReturnType<typeof boxWithRun>[]) =>
  addLog(
    boxes.map(({ record }) => record),
    boxes.flatMap(({ events }) => events),
  );

test('the usual time comes from the newest set-ups, however long the log is', async () => {
  await fill(...Array.from({ length: 60 }, (_, i) => boxWithRun(i + 1, i + 1)));
  await readUsualTimes();
  // The last ten took 51 to 60 s.
  expect(usualTimes.value?.get('board')).toMatchObject({ median: 55_500, count: 10 });
});

test('the length offered for a gap is the one of the newest box that has a reading', async () => {
  expect(await lastLength('gap')).toBeNull();
  await fill(boxWithRun(1, 5, gap('2 in')), boxWithRun(2, 5, gap('80 mm'), gap('3 in')), boxWithRun(3, 5));
  expect(await lastLength('gap')).toBe('3 in');
  expect(await lastLength('sweep')).toBeNull();
});
