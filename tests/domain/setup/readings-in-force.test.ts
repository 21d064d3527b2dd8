import { expect, test } from 'vitest';
import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import { foldRun, type RunState } from '../../../src/domain/setup/fold.ts';
import { readingsInForce } from '../../../src/domain/setup/readings-in-force.ts';
import { type AnyEvent, begun, nextEvent } from './event-logs.ts';

const after = (...happenings: readonly object[]): RunState => {
  const log: AnyEvent[] = begun(DEFAULT_PROCEDURES['board-and-cone']);
  for (const happening of happenings) log.push(nextEvent(log, happening));
  return foldRun(log) as RunState;
};
const read = (turns: number, step = 'gap') => ({ kind: 'read', step, reading: { kind: 'turns', turns } });
const inForce = (run: RunState) => readingsInForce(run, 'gap').map((r) => (r.kind === 'turns' ? r.turns : 0));

test('readings of the step, oldest first, and of no other', () => {
  expect(inForce(after(read(1), read(9, 'dry-run'), read(2)))).toEqual([1, 2]);
});

test('a movement that loses the step makes its readings old; another movement does not', () => {
  expect(inForce(after(read(1), { kind: 'moved', what: 'post-loosened' }, read(2)))).toEqual([2]);
  expect(inForce(after(read(1), { kind: 'moved', what: 'dial-knocked' }, read(2)))).toEqual([1, 2]);
});

test('a step that failed was put right since', () => {
  const fail = { kind: 'ticked', steps: ['gap'], verdict: 'fail' };
  expect(inForce(after(read(1), fail, read(2)))).toEqual([2]);
  expect(inForce(after(read(1), { ...fail, steps: ['board'] }, read(2)))).toEqual([1, 2]);
});

test('what was taken back never was', () => {
  const n = 2;
  expect(inForce(after(read(1), read(2), { kind: 'undone', target: { n, writer: 'a' } }))).toEqual([2]);
  const moved = { kind: 'moved', what: 'post-loosened' };
  expect(inForce(after(read(1), moved, { kind: 'undone', target: { n: 3, writer: 'a' } }))).toEqual([1]);
});
