import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import { foldRun, type RunState } from '../../../src/domain/setup/fold.ts';
import { MOVEMENTS, type Movement, type Procedure, reopenedBy } from '../../../src/domain/setup/procedure.ts';
import { type AnyEvent, begun, eventLog, nextEvent, ticked } from './event-logs.ts';

/** What a movement takes away, word for word. Isolate and clear come with every row. Common practice, no source. */
const EVERYTHING = 'everything';
const BOARD_AND_CONE: Readonly<Record<Movement, readonly string[] | typeof EVERYTHING>> = {
  'banjo-moved': ['banjo-back', 'shake', 'pick-up', 'touch-off', 'dry-run'],
  'post-loosened': [
    ...['board', 'cone', 'square-banjo', 'lock-post', 'gap'],
    ...['cutter', 'banjo-back', 'shake', 'pick-up', 'touch-off', 'dry-run'],
  ],
  'chuck-off': ['seat-chuck', 'shake', 'pick-up', 'touch-off', 'dry-run'],
  'cutter-changed': ['cutter', 'pick-up', 'touch-off'],
  'dial-knocked': ['touch-off'],
  'headstock-swung': EVERYTHING,
  'it-grabbed': EVERYTHING,
  'dont-know': EVERYTHING,
};
/** The bar takes the place of board and cone; all else is the same. */
const TRUE_BAR: typeof BOARD_AND_CONE = {
  ...BOARD_AND_CONE,
  'post-loosened': [
    ...['bar-grip', 'lock-post', 'bar-slide', 'square-banjo'],
    ...['cutter', 'banjo-back', 'shake', 'pick-up', 'touch-off', 'dry-run'],
  ],
};

const keysOf = (procedure: Procedure) => procedure.steps.map((step) => step.key);
const rowOf = (table: typeof BOARD_AND_CONE, procedure: Procedure, what: Movement): Set<string> => {
  const row = table[what];
  return new Set(row === EVERYTHING ? keysOf(procedure) : ['isolate', ...row, 'clear']);
};
const fold = (log: readonly AnyEvent[]): RunState => foldRun(log) as RunState;
const reopened = (run: RunState) => run.steps.filter((s) => s.status === 'reopened').map((s) => s.step.key);

describe.each([
  ['board and cone', DEFAULT_PROCEDURES['board-and-cone'], BOARD_AND_CONE],
  ['true bar', DEFAULT_PROCEDURES['true-bar'], TRUE_BAR],
] as const)('something moved, with %s', (_name, procedure, table) => {
  test('every movement has its row', () => {
    expect(Object.keys(table).sort()).toEqual([...MOVEMENTS].sort());
  });

  test.each(MOVEMENTS)('%s re-opens exactly its row when all was done', (what) => {
    const done = ticked(begun(procedure), keysOf(procedure));
    const run = fold([...done, nextEvent(done, { kind: 'moved', what })]);
    const row = rowOf(table, procedure, what);
    expect(new Set(reopened(run))).toEqual(row);
    for (const { step, status, since, reopenedBy: by } of run.steps) {
      expect(status).toBe(row.has(step.key) ? 'reopened' : 'passed');
      expect(by).toBe(row.has(step.key) ? what : null);
      expect(since === null).toBe(row.has(step.key));
    }
    expect(run.now).toBe('isolate');
    expect(run.withheldBy).toEqual(expect.arrayContaining(['isolate', 'clear']));
  });

  test.each(MOVEMENTS)('%s re-opens what was carried, failed or skipped as well', (what) => {
    const since = 1_750_000_000_000;
    const carried = begun(procedure, { inherited: keysOf(procedure).map((key) => ({ key, since })) });
    const row = rowOf(table, procedure, what);
    expect(new Set(reopened(fold([...carried, nextEvent(carried, { kind: 'moved', what })])))).toEqual(row);
    for (const verdict of ['fail', 'skip'] as const) {
      const settled = ticked(begun(procedure), keysOf(procedure), verdict);
      const run = fold([...settled, nextEvent(settled, { kind: 'moved', what })]);
      // A skipped support still closes what rests on it when it lies outside the row; none of the rows splits that way.
      expect(new Set(reopened(run))).toEqual(row);
    }
  });

  test.each(MOVEMENTS)('%s leaves alone what was still to come, and what there is no groove for', (what) => {
    const begunOnly = begun(procedure, { groove: false });
    const run = fold([...begunOnly, nextEvent(begunOnly, { kind: 'moved', what })]);
    expect(reopened(run)).toEqual([]);
    expect(run.steps.find((s) => s.step.key === 'pick-up')?.status).toBe('not-needed');
  });

  test.each(MOVEMENTS)('%s after a pass also asks to pick up the groove, if its row says so', (what) => {
    const begunOnly = begun(procedure, { groove: false });
    const done = ticked(
      begunOnly,
      keysOf(procedure).filter((key) => key !== 'pick-up'),
    );
    const row = rowOf(table, procedure, what);
    const run = fold([...done, nextEvent(done, { kind: 'moved', what, groove: true })]);
    expect(new Set(reopened(run))).toEqual(row);
    expect(run.steps.find((s) => s.step.key === 'pick-up')?.status).toBe(
      row.has('pick-up') ? 'reopened' : 'not-needed',
    );
    // Before any pass there is nothing to pick up, and what was written before movements told is taken so.
    for (const before of [{ groove: false }, {}]) {
      const early = fold([...done, nextEvent(done, { kind: 'moved', what, ...before })]);
      row.delete('pick-up');
      expect(new Set(reopened(early))).toEqual(row);
    }
  });
});

test('whatever came before, a movement takes its row from what stood and touches nothing else', () => {
  let moves = 0;
  fc.assert(
    fc.property(eventLog(), fc.constantFrom(...MOVEMENTS), (log, what) => {
      const before = fold(log);
      fc.pre(before.closed === null);
      const after = fold([...log, nextEvent(log, { kind: 'moved', what })]);
      const row = reopenedBy(before.procedure, what);
      for (const [i, was] of before.steps.entries()) {
        const is = after.steps[i];
        const open = was.status === 'to-come' || was.status === 'reopened' || was.status === 'not-needed';
        if (open || was.status === 'closed') continue;
        moves += 1;
        if (row.has(was.step.key)) expect(is?.status).toBe('reopened');
        else expect(is).toEqual(was);
      }
    }),
    { numRuns: 400 },
  );
  expect(moves).toBeGreaterThan(500);
});

test('a movement taken back is as if nothing had moved', () => {
  const procedure = DEFAULT_PROCEDURES['board-and-cone'];
  const done = ticked(begun(procedure), keysOf(procedure));
  for (const what of MOVEMENTS) {
    const moved = [...done, nextEvent(done, { kind: 'moved', what })];
    const { n, writer } = moved.at(-1) as AnyEvent;
    const back = [...moved, nextEvent(moved, { kind: 'undone', target: { n, writer } })];
    expect(fold(back).steps).toEqual(fold(done).steps);
  }
});

test('isolate and clear are re-opened by every movement, also in a procedure whose list forgot them', () => {
  const procedure = DEFAULT_PROCEDURES['board-and-cone'];
  const bare = { ...procedure, steps: procedure.steps.map((step) => ({ ...step, reopenedBy: [] })) };
  for (const what of MOVEMENTS) expect(reopenedBy(bare, what)).toEqual(new Set(['isolate', 'clear']));
});
