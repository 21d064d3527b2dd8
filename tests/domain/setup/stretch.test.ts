import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import { foldRun, type RunState } from '../../../src/domain/setup/fold.ts';
import { stretchFromNow } from '../../../src/domain/setup/stretch.ts';
import { type AnyEvent, begun, eventLog, nextEvent, ticked } from './event-logs.ts';

const fold = (log: readonly AnyEvent[]): RunState => foldRun(log) as RunState;

test('a stretch begins at the step now, holds only open ones, and ends before the next open hold point', () => {
  let long = 0;
  fc.assert(
    fc.property(eventLog(), (log) => {
      const run = fold(log);
      const stretch = stretchFromNow(run);
      const open = run.steps.filter((s) => s.status === 'to-come' || s.status === 'reopened');
      const firstHold = open.findIndex((s) => s.step.hold);
      expect(stretch).toEqual(open.slice(0, firstHold < 0 ? open.length : firstHold).map((s) => s.step.key));
      for (const key of stretch) expect(run.steps.find((s) => s.step.key === key)?.step.hold).toBe(false);
      if (stretch.length > 1) long += 1;
    }),
    { numRuns: 400 },
  );
  expect(long).toBeGreaterThan(10);
});

test('ticked at once, a stretch settles its steps and no hold point, with times unknown', () => {
  const { steps } = DEFAULT_PROCEDURES['board-and-cone'];
  const holds = steps.filter((s) => s.hold).map((s) => s.key);
  const others = steps.filter((s) => !s.hold).map((s) => s.key);
  const moved = fc.constantFrom(null, 'banjo-moved', 'post-loosened', 'dont-know' as const);
  fc.assert(
    fc.property(fc.subarray(holds), fc.subarray(others), moved, fc.boolean(), (held, done, what, groove) => {
      const begin = ticked(begun(DEFAULT_PROCEDURES['board-and-cone'], { groove }), [...done, ...held]);
      const shaken = what ? [...begin, nextEvent(begin, { kind: 'moved', what })] : begin;
      // Hold points in the way are asked singly first.
      const log = ticked(
        shaken,
        fold(shaken)
          .steps.flatMap((s) => (s.step.hold ? s.step.key : []))
          .slice(0, 2),
      );
      const before = fold(log);
      const stretch = stretchFromNow(before);
      const after = fold([...log, nextEvent(log, { kind: 'ticked', steps: stretch, verdict: 'pass' })]);
      for (const [i, { step, status, spent, timeUnknown }] of after.steps.entries()) {
        const was = before.steps[i];
        if (stretch.length > 1 && stretch.includes(step.key))
          expect([status, timeUnknown, spent]).toEqual(['passed', true, was?.spent]);
        else if (!stretch.includes(step.key)) expect([status, spent]).toEqual([was?.status, was?.spent]);
      }
      expect(after.stray).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

test('there is none at a hold point', () => {
  expect(stretchFromNow(fold(begun(DEFAULT_PROCEDURES['board-and-cone'])))).toEqual([]);
});

test('from the board it reaches to the post', () => {
  const log = ticked(begun(DEFAULT_PROCEDURES['board-and-cone']), ['isolate', 'protect']);
  expect(stretchFromNow(fold(log))).toEqual(['board', 'cone', 'square-banjo']);
});

test('it ends before the step that a trial leaves out, which is then asked singly, and goes on behind it', () => {
  const log = ticked(begun(DEFAULT_PROCEDURES['board-and-cone']), ['isolate', 'protect']);
  expect(stretchFromNow(fold(log), 'cone')).toEqual(['board']);
  expect(stretchFromNow(fold(ticked(log, ['board'])), 'cone')).toEqual([]);
  expect(stretchFromNow(fold(ticked(log, ['board', 'cone'])), 'cone')).toEqual(['square-banjo']);
});
