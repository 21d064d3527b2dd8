import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import { foldRun, type RunState } from '../../../src/domain/setup/fold.ts';
import { carriedOver, movementsBetween } from '../../../src/domain/setup/inherit.ts';
import { MOVEMENTS, type Movement, reopenedBy } from '../../../src/domain/setup/procedure.ts';
import { type AnyEvent, begun, eventLog, nextEvent, ticked } from './event-logs.ts';

const BOARD = DEFAULT_PROCEDURES['board-and-cone'];
const NEVER = ['isolate', 'protect', 'clear', 'touch-off', 'dry-run'];
const fold = (log: readonly AnyEvent[]): RunState => foldRun(log) as RunState;
const allDone = () =>
  ticked(
    begun(BOARD),
    BOARD.steps.map((s) => s.key),
  );
const keys = (run: RunState, moved: readonly Movement[], into = BOARD) =>
  carriedOver(run, into, moved).map((c) => c.key);

const movements = fc.subarray([...MOVEMENTS]);

describe('what the next set-up carries over', () => {
  test('never is a step that is asked every time', () => {
    let carried = 0;
    fc.assert(
      fc.property(eventLog(), movements, (log, moved) => {
        const run = fold(log);
        const got = keys(run, moved, run.procedure);
        carried += got.length;
        for (const key of NEVER) expect(got).not.toContain(key);
      }),
      { numRuns: 400 },
    );
    expect(carried).toBeGreaterThan(100);
  });

  test.each(Object.values(DEFAULT_PROCEDURES))(
    'in $name, asked every time are exactly those five',
    ({ steps }) => {
      expect(
        steps
          .filter((s) => s.everyTime)
          .map((s) => s.key)
          .sort(),
      ).toEqual([...NEVER].sort());
    },
  );

  test('held before, lost nothing to what moved, and keeps the time since when it holds', () => {
    fc.assert(
      fc.property(eventLog(), movements, (log, moved) => {
        const run = fold(log);
        const lost = new Set(moved.flatMap((what) => [...reopenedBy(run.procedure, what)]));
        const expected =
          run.contested || run.readOnly
            ? []
            : run.steps
                .filter(({ status }) => status === 'passed' || status === 'carried')
                .filter(({ step }) => !NEVER.includes(step.key) && !lost.has(step.key))
                .map(({ step, since }) => ({ key: step.key, since }));
        expect(carriedOver(run, run.procedure, moved)).toEqual(expected);
      }),
      { numRuns: 400 },
    );
  });

  test('is nothing from a contested run: its setting is not known', () => {
    const log = allDone();
    const last = log.at(-1) as AnyEvent;
    const other = { ...last, writer: 'b' };
    expect(keys(fold(log), [])).toContain('lock-post');
    expect(keys(fold([...log, other]), [])).toEqual([]);
  });

  test('is nothing from a run that a newer version wrote in', () => {
    const log = allDone();
    expect(keys(fold([...log, nextEvent(log, { kind: 'polished' })]), [])).toEqual([]);
  });

  test('goes only into steps that the next procedure has', () => {
    const bar = DEFAULT_PROCEDURES['true-bar'];
    const got = keys(fold(allDone()), [], bar);
    expect(got.filter((key) => !bar.steps.some((s) => s.key === key))).toEqual([]);
    expect(got).toContain('lock-post');
    expect(got).not.toContain('board');
  });

  test('survives a second hand-over with the time of the first', () => {
    const first = fold(allDone());
    const inherited = carriedOver(first, BOARD, ['chuck-off']);
    const second = fold(begun(BOARD, { inherited }));
    expect(carriedOver(second, BOARD, [])).toEqual(inherited);
    expect(second.steps.find((s) => s.step.key === 'gap')).toMatchObject({ status: 'carried' });
  });

  test('is no step about a groove that is not there', () => {
    const inherited = [{ key: 'pick-up', since: 1 }];
    const run = fold(begun(BOARD, { groove: false, inherited }));
    expect(keys(run, [])).toEqual([]);
  });
});

describe('between the recess and the tenon', () => {
  test.each([
    ['recess-first', 2, ['cutter', 'seat-chuck', 'banjo-back', 'shake', 'pick-up']],
    [
      'recess-first',
      1,
      [
        'board',
        'cone',
        'square-banjo',
        'lock-post',
        'gap',
        'seat-chuck',
        'cutter',
        'banjo-back',
        'shake',
        'pick-up',
      ],
    ],
    ['both-turned', 1, ['seat-chuck', 'shake', 'pick-up']],
    ['both-turned', 2, ['seat-chuck', 'shake', 'pick-up']],
  ] as const)('%s with %i banjo(s) asks again for what the work itself moved', (route, banjos, asked) => {
    const carried = keys(fold(allDone()), movementsBetween(route, banjos));
    const again = BOARD.steps.map((s) => s.key).filter((key) => !carried.includes(key));
    expect(new Set(again)).toEqual(new Set([...NEVER, ...asked]));
  });
});
