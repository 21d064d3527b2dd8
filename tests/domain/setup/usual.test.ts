import { describe, expect, it } from 'vitest';
import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import type { SetUpEvent } from '../../../src/domain/setup/events.ts';
import { foldRun, type RunState } from '../../../src/domain/setup/fold.ts';
import { undoTarget } from '../../../src/domain/setup/undo.ts';
import { usualTimes } from '../../../src/domain/setup/usual.ts';

type Tap = { after: number } & (
  | { kind: 'ticked'; steps: string[]; verdict: 'pass' | 'fail' | 'skip' }
  | { kind: 'undone'; target: { n: number; writer: string } }
  | { kind: 'paused' }
);

/** A run whose taps come so many ms after one another, on one awake page. */
const runOf = (...taps: Tap[]): RunState => {
  let at = 0;
  const place = (n: number) => ({
    logId: 'l',
    runId: 'r',
    writer: 'w',
    n,
    at,
    mono: at,
    hid: 0,
    session: 's',
  });
  const events: SetUpEvent[] = [
    {
      ...place(1),
      kind: 'started',
      boxId: 'b',
      part: 'recess',
      procedureId: 'p',
      procedure: DEFAULT_PROCEDURES['board-and-cone'],
      inherited: [],
      fromRun: null,
      groove: false,
    },
  ];
  taps.forEach(({ after, ...tap }, i) => {
    at += after;
    events.push({ ...place(i + 2), ...tap } as SetUpEvent);
  });
  const run = foldRun(events);
  if (!run) throw new Error('no run');
  return run;
};
const board = (after: number): RunState =>
  runOf({ after, kind: 'ticked', steps: ['board'], verdict: 'pass' });

describe('the usual time of a step', () => {
  it('is the median of the last ten, with the middle half beside it', () => {
    const times = [9, 9, 9, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100].map((s) => board(s * 1000));
    // The last ten are 10 to 100 s: median 55, quartiles 32.5 and 77.5 (type 7, worked by hand).
    expect(usualTimes(times).get('board')).toEqual({ median: 55_000, low: 32_500, high: 77_500, count: 10 });
  });

  it('is unknown for hold points, for stretches ticked at once, and with no run at all', () => {
    const run = runOf(
      { after: 5000, kind: 'ticked', steps: ['isolate'], verdict: 'pass' },
      { after: 5000, kind: 'ticked', steps: ['board', 'cone'], verdict: 'pass' },
    );
    expect(usualTimes([run]).size).toBe(0);
    expect(usualTimes([]).size).toBe(0);
  });
});

describe('undo', () => {
  const tick = (after: number): Tap => ({ after, kind: 'ticked', steps: ['board'], verdict: 'pass' });

  it('takes back the newest tap, then the one before it', () => {
    expect(undoTarget(runOf(tick(1), { after: 1, kind: 'paused' }))?.kind).toBe('paused');
    expect(
      undoTarget(
        runOf(
          tick(1),
          { after: 1, kind: 'paused' },
          { after: 1, kind: 'undone', target: { n: 3, writer: 'w' } },
        ),
      ),
    ).toMatchObject({ kind: 'ticked', n: 2 });
  });

  it('never takes back the start', () => {
    expect(undoTarget(runOf())).toBeNull();
    expect(
      undoTarget(runOf(tick(1), { after: 1, kind: 'undone', target: { n: 2, writer: 'w' } })),
    ).toBeNull();
  });
});
