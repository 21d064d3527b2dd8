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
  fc.assert(
    fc.property(eventLog(), (log) => {
      const before = fold(log);
      const stretch = stretchFromNow(before);
      fc.pre(stretch.length > 1 && before.closed === null);
      const after = fold([...log, nextEvent(log, { kind: 'ticked', steps: stretch, verdict: 'pass' })]);
      for (const [i, { step, status, spent, timeUnknown }] of after.steps.entries()) {
        const was = before.steps[i];
        if (stretch.includes(step.key))
          expect([status, timeUnknown, spent]).toEqual(['passed', true, was?.spent]);
        else expect([status, spent]).toEqual([was?.status, was?.spent]);
      }
      expect(after.stray).toEqual(before.stray);
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
