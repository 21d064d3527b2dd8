import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import type { EventRef, SetUpEvent } from '../../../src/domain/setup/events.ts';
import { foldRun, type RunState, type StepState } from '../../../src/domain/setup/fold.ts';
import type { Span } from '../../../src/domain/setup/time.ts';
import { type AnyEvent, begun, eventLog, logAndShuffle, nextEvent, ticked } from './event-logs.ts';

const BOARD = DEFAULT_PROCEDURES['board-and-cone'];
const RUNS = { numRuns: 400 };

const fold = (log: readonly AnyEvent[]): RunState => {
  const state = foldRun(log);
  if (!state) throw new Error('no start');
  return state;
};

/** All that a screen shows of where the set-up stands; the timeline and who wrote are left out. */
const standing = (log: readonly AnyEvent[]) => {
  const { steps, now, paused, closed, withheldBy, total, pausedFor, unplaced, stray } = fold(log);
  return { steps, now, paused, closed, withheldBy, total, pausedFor, unplaced, stray };
};

const is = (ref: EventRef) => (e: EventRef) => e.n === ref.n && e.writer === ref.writer;
const CAN_BE_UNDONE = ['ticked', 'read', 'moved', 'paused', 'resumed', 'closed'];

describe('a log in any state', () => {
  test('folds from any beginning of it, without a throw, once it holds its start', () => {
    fc.assert(
      fc.property(eventLog(), fc.nat(30), (log, cut) => {
        const beginning = log.slice(0, cut);
        expect(foldRun(beginning) === null).toBe(beginning.length === 0);
      }),
      RUNS,
    );
  });

  test('without its start is never guessed at', () => {
    fc.assert(
      fc.property(eventLog(), (log) => {
        const headless = log.filter((e) => e.kind !== 'started');
        expect(foldRun(headless)).toBeNull();
      }),
      RUNS,
    );
  });

  test('means the same in whatever order its events arrive', () => {
    fc.assert(
      fc.property(logAndShuffle, ([log, shuffled]) => {
        expect(fold(shuffled)).toEqual(fold(log));
      }),
      RUNS,
    );
  });

  test('gives every event a place in its timeline, in the order of n and writer', () => {
    fc.assert(
      fc.property(logAndShuffle, ([log, shuffled]) => {
        const line = fold(shuffled).timeline.map(({ event }) => event);
        expect(line).toHaveLength(log.length);
        for (const [i, event] of line.entries()) {
          const before = line[i - 1];
          if (before)
            expect(before.n < event.n || (before.n === event.n && before.writer < event.writer)).toBe(true);
        }
      }),
      RUNS,
    );
  });

  test('is never changed by folding', () => {
    fc.assert(
      fc.property(eventLog(), (log) => {
        const before = structuredClone(log);
        foldRun(log);
        expect(log).toEqual(before);
      }),
      { numRuns: 100 },
    );
  });
});

describe('undo', () => {
  test('restores the state without the event, wherever either stands', () => {
    fc.assert(
      fc.property(eventLog(), fc.nat(), fc.boolean(), (log, pick, first) => {
        const candidates = log.filter((e) => CAN_BE_UNDONE.includes(e.kind));
        const target = candidates[pick % Math.max(1, candidates.length)];
        fc.pre(target !== undefined);
        if (!target) return;
        const undo = nextEvent(log, { kind: 'undone', target: { n: target.n, writer: target.writer } });
        const without = log.filter((e) => !is(target)(e));
        expect(standing(first ? [undo, ...log] : [...log, undo])).toEqual(standing(without));
      }),
      RUNS,
    );
  });

  test('strikes the event through and keeps it', () => {
    const log = ticked(begun(BOARD), ['isolate', 'protect']);
    const target = log.at(-1) as AnyEvent;
    const { timeline } = fold([...log, nextEvent(log, { kind: 'undone', target })]);
    expect(timeline.map(({ event, undone }) => [event.kind, undone])).toEqual([
      ['started', false],
      ['ticked', false],
      ['ticked', true],
      ['undone', false],
    ]);
  });

  test('never takes back a start, another undo, or what it does not know', () => {
    fc.assert(
      fc.property(eventLog(), fc.nat(), (log, pick) => {
        const fixed = log.filter((e) => !CAN_BE_UNDONE.includes(e.kind));
        const { n, writer } = fixed[pick % fixed.length] as AnyEvent;
        for (const target of [
          { n, writer },
          { n: 4711, writer: 'nobody' },
        ])
          expect(standing([...log, nextEvent(log, { kind: 'undone', target })])).toEqual(standing(log));
      }),
      RUNS,
    );
  });

  test('brings back a run that was closed', () => {
    const log = ticked(begun(BOARD), ['isolate']);
    const closed = [...log, nextEvent(log, { kind: 'closed', how: 'abandoned' })];
    const target = closed.at(-1) as AnyEvent;
    const open = [...closed, nextEvent(closed, { kind: 'undone', target })];
    const on = fold(ticked(open, ['protect']));
    expect(on.closed).toBeNull();
    expect(on.stray).toEqual([]);
    expect(on.now).toBe('board');
  });
});

const find = (run: RunState, key: string): StepState => {
  const state = run.steps.find((s) => s.step.key === key);
  if (!state) throw new Error(key);
  return state;
};

describe('a step', () => {
  test('holds the last verdict given to it, whatever others say', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.constantFrom('isolate', 'lock-post', 'cutter'),
            fc.constantFrom('pass', 'fail', 'skip'),
          ),
        ),
        (verdicts) => {
          const log = verdicts.reduce<AnyEvent[]>(
            (soFar, [step, verdict]) => ticked(soFar, [step], verdict as 'pass'),
            begun(BOARD),
          );
          const words = { pass: 'passed', fail: 'failed', skip: 'skipped' } as const;
          for (const key of ['isolate', 'lock-post', 'cutter']) {
            const last = verdicts.findLast(([step]) => step === key);
            expect(find(fold(log), key).status).toBe(last ? words[last[1] as 'pass'] : 'to-come');
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  test('that rests on a skipped one is closed, and nothing else is', () => {
    fc.assert(
      fc.property(eventLog(), (log) => {
        const run = fold(log);
        const status = (key: string) => run.steps.find((s) => s.step.key === key)?.status;
        for (const { step, status: own } of run.steps) {
          const unsupported = step.restsOn.some(
            (key) => status(key) === 'skipped' || status(key) === 'closed',
          );
          if (own === 'closed') expect(unsupported).toBe(true);
          if (own === 'to-come' || own === 'reopened') expect(unsupported).toBe(false);
        }
      }),
      RUNS,
    );
  });

  test('closed by a skip comes back when the other is done after all', () => {
    const skipped = ticked(ticked(begun(BOARD), ['isolate', 'protect']), ['board'], 'skip');
    expect(find(fold(skipped), 'cone').status).toBe('closed');
    expect(find(fold(skipped), 'gap').status).toBe('closed');
    expect(fold(skipped).now).toBe('square-banjo');
    const done = fold(ticked(skipped, ['board']));
    expect(find(done, 'cone').status).toBe('to-come');
    expect(find(done, 'gap').status).toBe('to-come');
    expect(done.now).toBe('cone');
  });

  test('rests on a skipped one through others too, in whatever order they are listed', () => {
    const [board, cone, gap] = ['board', 'cone', 'gap'].map((key) => BOARD.steps.find((s) => s.key === key));
    if (!board || !cone || !gap) throw new Error('default procedure');
    const steps = [{ ...gap, restsOn: ['cone'] }, cone, { ...board, restsOn: ['gap'] }];
    const log = begun({ ...BOARD, steps: [steps[0], cone, board] as (typeof gap)[] });
    expect(fold(ticked(log, ['board'], 'skip')).steps.map((s) => s.status)).toEqual([
      'closed',
      'closed',
      'skipped',
    ]);
    const circle = begun({ ...BOARD, steps: steps as (typeof gap)[] });
    expect(fold(ticked(circle, ['cone'], 'skip')).steps.map((s) => s.status)).toEqual([
      'closed',
      'skipped',
      'closed',
    ]);
    const done = ticked(ticked(circle, ['cone'], 'skip'), ['cone']);
    expect(fold(done).steps.map((s) => s.status)).toEqual(['to-come', 'passed', 'to-come']);
  });

  test('that was settled, re-opened and closed comes back as re-opened', () => {
    const all = ticked(
      begun(BOARD),
      BOARD.steps.map((s) => s.key),
    );
    const moved = [...all, nextEvent(all, { kind: 'moved', what: 'post-loosened' })];
    const skipped = ticked(moved, ['board'], 'skip');
    expect(find(fold(skipped), 'gap')).toMatchObject({ status: 'closed', reopenedBy: null });
    expect(find(fold(ticked(skipped, ['board'])), 'gap')).toMatchObject({
      status: 'reopened',
      reopenedBy: 'post-loosened',
    });
  });

  test('says what re-opened it while it is re-opened, and since when it holds while it holds', () => {
    fc.assert(
      fc.property(eventLog(), (log) => {
        for (const { status, reopenedBy, since } of fold(log).steps) {
          expect(reopenedBy !== null).toBe(status === 'reopened');
          expect(since !== null).toBe(status === 'passed' || status === 'carried');
        }
      }),
      RUNS,
    );
  });

  test('is asked only with a groove when it is about the groove', () => {
    expect(find(fold(begun(BOARD, { groove: false })), 'pick-up').status).toBe('not-needed');
    expect(find(fold(begun(BOARD, { groove: true })), 'pick-up').status).toBe('to-come');
  });

  test('to do next is the first open one, and none when all are settled', () => {
    fc.assert(
      fc.property(eventLog(), (log) => {
        const run = fold(log);
        const open = run.steps.filter((s) => s.status === 'to-come' || s.status === 'reopened');
        expect(run.now).toBe(open[0]?.step.key ?? null);
      }),
      RUNS,
    );
  });
});

describe('a hold point', () => {
  test('withholds the cut until it is passed, carried or has nothing to say', () => {
    fc.assert(
      fc.property(eventLog(), (log) => {
        const run = fold(log);
        const held = run.steps
          .filter((s) => s.step.hold)
          .filter((s) => !['passed', 'carried', 'not-needed'].includes(s.status));
        expect(run.withheldBy).toEqual(held.map((s) => s.step.key));
      }),
      RUNS,
    );
  });

  test('is not waved through in a tick of several steps', () => {
    const log = begun(BOARD);
    const run = fold([
      ...log,
      nextEvent(log, { kind: 'ticked', steps: BOARD.steps.map((s) => s.key), verdict: 'pass' }),
    ]);
    expect(run.withheldBy).toEqual(BOARD.steps.filter((s) => s.hold).map((s) => s.key));
    expect(find(run, 'board').status).toBe('passed');
    expect(run.stray).toHaveLength(1);
  });
});

const plus = (a: Span, b: Span): Span => ({
  min: a.min + b.min,
  max: a.max + b.max,
  exact: a.exact && b.exact,
});

describe('time', () => {
  test('of the steps, the pauses and what belongs to no step make up the total', () => {
    fc.assert(
      fc.property(eventLog(), (log) => {
        const run = fold(log);
        const parts = run.steps.reduce((sum, s) => plus(sum, s.spent), plus(run.pausedFor, run.unplaced));
        expect(parts).toEqual(run.total);
        expect(
          run.timeline.reduce((sum, { gap }) => plus(sum, gap), { min: 0, max: 0, exact: true }),
        ).toEqual(run.total);
      }),
      RUNS,
    );
  });

  test('is never negative, and its bounds are in order', () => {
    fc.assert(
      fc.property(eventLog(), (log) => {
        const run = fold(log);
        const spans = [
          run.total,
          run.pausedFor,
          run.unplaced,
          ...run.steps.map((s) => s.spent),
          ...run.timeline.map((t) => t.gap),
        ];
        for (const { min, max } of spans) {
          expect(min).toBeGreaterThanOrEqual(0);
          expect(max).toBeGreaterThanOrEqual(min);
        }
      }),
      RUNS,
    );
  });

  test('is exact only within one page load, hidden 30 s at most, both clocks within 2 s', () => {
    let exact = 0;
    fc.assert(
      fc.property(eventLog(), (log) => {
        const { timeline, stray } = fold(log);
        const counts = timeline
          .filter(({ event, undone }) => !undone && event.kind !== 'undone')
          // An event that names a step nobody knows is stray, but its time was spent.
          .filter(({ event }) => !stray.includes(event) || !isOutside(event, log))
          .map(({ event, gap }) => ({ event, gap }));
        for (const [i, { event, gap }] of counts.entries()) {
          const before = counts[i - 1]?.event;
          if (!before) continue;
          const wall = event.at - before.at;
          const mono = event.mono - before.mono;
          const allowed =
            event.session === before.session &&
            mono >= 0 &&
            event.hid - before.hid <= 30_000 &&
            Math.abs(wall - mono) <= 2_000;
          expect(gap.exact).toBe(allowed);
          if (allowed) expect(gap).toEqual({ min: mono, max: mono, exact: true });
          if (allowed) exact += 1;
        }
      }),
      RUNS,
    );
    expect(exact).toBeGreaterThan(500);
  });

  test('of a step ticked with others is unknown, of a step ticked alone is its own', () => {
    fc.assert(
      fc.property(eventLog(), (log) => {
        const run = fold(log);
        for (const state of run.steps) {
          const last = run.timeline.findLast(
            ({ event, undone }) =>
              !undone && !isOutside(event, log) && event.kind === 'ticked' && given(event, state),
          )?.event as (SetUpEvent & { kind: 'ticked' }) | undefined;
          expect(state.timeUnknown).toBe(last !== undefined && last.steps.length > 1);
        }
      }),
      RUNS,
    );
  });

  test('after a pause is the pause', () => {
    const log = ticked(begun(BOARD), ['isolate']);
    const paused = [...log, nextEvent(log, { kind: 'paused' })];
    const resumed = [...paused, nextEvent(paused, { kind: 'resumed' })];
    const run = fold(ticked(resumed, ['protect']));
    expect(run.pausedFor.max).toBe(20_000);
    // Until the pause button was pressed, somebody was at the step.
    expect(find(run, 'protect').spent.max).toBe(40_000);
    expect(fold(paused).paused).toBe(true);
    expect(run.paused).toBe(false);
  });
});

/** Whether a tick gave this step its verdict: a hold point takes none from a tick of several. */
const given = (event: AnyEvent, { step }: StepState): boolean => {
  const { steps } = event as SetUpEvent & { kind: 'ticked' };
  return steps.includes(step.key) && !(step.hold && steps.length > 1);
};

/** Before the start, after the close, a second start, or of a kind nobody knows. */
const isOutside = (event: AnyEvent, log: readonly AnyEvent[]): boolean => {
  if (event.kind === 'polished') return true;
  const inOrder = fold(log).timeline;
  const start = inOrder.findIndex(({ event: e }) => e.kind === 'started');
  const close = inOrder.findIndex(({ event: e, undone }) => e.kind === 'closed' && !undone);
  const place = inOrder.findIndex(({ event: e }) => e === event);
  if (event.kind === 'started') return place !== start;
  return place < start && event.n < (inOrder[start]?.event.n ?? 0) ? true : close >= 0 && place > close;
};

describe('two writers', () => {
  test('that share an n make the run contested, and nothing else does', () => {
    let contested = 0;
    fc.assert(
      fc.property(eventLog(), (log) => {
        const shared = log.some((a) => log.some((b) => a.n === b.n && a.writer !== b.writer));
        expect(fold(log).contested).toBe(shared);
        if (shared) contested += 1;
      }),
      RUNS,
    );
    expect(contested).toBeGreaterThan(20);
  });
});

describe('what a newer version wrote', () => {
  test('is kept, listed and makes the run read-only, and nothing else does', () => {
    fc.assert(
      fc.property(eventLog(), (log) => {
        const foreign = log.filter((e) => e.kind === 'polished');
        const run = fold(log);
        expect(run.readOnly).toBe(foreign.length > 0);
        expect(run.stray).toEqual(expect.arrayContaining(foreign));
      }),
      RUNS,
    );
  });
});

describe('a stray event', () => {
  const log = ticked(begun(BOARD), ['isolate']);
  const closed = [...log, nextEvent(log, { kind: 'closed', how: 'cut' })];

  test('of an unknown step is listed, its known steps are ticked', () => {
    const odd = nextEvent(log, { kind: 'ticked', steps: ['board', 'polish-the-brass'], verdict: 'pass' });
    const run = fold([...log, odd]);
    expect(run.stray).toEqual([odd]);
    expect(find(run, 'board').status).toBe('passed');
  });

  test('after the close changes nothing but the list', () => {
    const late = nextEvent(closed, { kind: 'ticked', steps: ['protect'], verdict: 'pass' });
    const { stray, ...rest } = standing([...closed, late]);
    const { stray: none, ...before } = standing(closed);
    expect([stray, none]).toEqual([[late], []]);
    expect(rest).toEqual(before);
  });

  test('is a second start', () => {
    const again = { ...(log[0] as AnyEvent), n: 3 };
    expect(fold([...log, again]).stray).toEqual([again]);
  });

  test('is what was written before the start', () => {
    const early = { ...nextEvent(log, { kind: 'paused' }), n: 0 };
    expect(fold([...log, early])).toMatchObject({ stray: [early], paused: false });
  });
});

test('the next n is one more than the last seen', () => {
  fc.assert(
    fc.property(eventLog(), (log) => {
      expect(fold(log).nextN).toBe(Math.max(...log.map((e) => e.n)) + 1);
    }),
    { numRuns: 100 },
  );
});
