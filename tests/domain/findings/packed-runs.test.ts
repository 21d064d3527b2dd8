import { expect, it } from 'vitest';
import { type CutRun, cutRuns } from '../../../src/domain/findings/rows/cut-run.ts';
import { FOLD_RULE, packRuns, unpackRuns } from '../../../src/domain/findings/rows/packed-runs.ts';
import type { Happening, SetUpEvent } from '../../../src/domain/setup/events.ts';
import { foldRun, type RunState } from '../../../src/domain/setup/fold.ts';
import type { Step } from '../../../src/domain/setup/procedure.ts';
import { DEMO_SEED, generateDemo } from '../../demo/generate.ts';
import { foldedRuns } from '../../demo/workshop.ts';

const demo = generateDemo(DEMO_SEED, Date.UTC(2026, 10, 25));

const kept = (runs: Iterable<RunState>, before: Iterable<CutRun> = []): readonly CutRun[] => {
  const keep = cutRuns(before);
  return Array.from(runs, keep);
};

it('set-ups come out of the packing as they went in', () => {
  const runs = kept(foldedRuns(demo.events).values());
  expect(runs.length).toBeGreaterThan(200);
  const text = packRuns(runs);
  expect([...unpackRuns(text).values()]).toEqual(runs);
  expect(text.length / runs.length).toBeLessThan(250);
});

it('set-ups folded later share the wording of those kept before', () => {
  const all = [...foldedRuns(demo.events).values()];
  const once = packRuns(kept(all));
  const before = [...unpackRuns(packRuns(kept(all.slice(0, 100)))).values()];
  expect(packRuns([...before, ...kept(all.slice(100), before)])).toBe(once);
});

const step = (key: string, more: Partial<Step> = {}): Step => ({
  ...{ key, sentence: `Do ${key}.`, why: '', hold: false, guards: ['lean'], reopenedBy: [], restsOn: [] },
  ...{ everyTime: false, onlyWithGroove: false, reading: null, drawing: null },
  ...more,
});
const steps = [
  ...[step('carried'), step('passed'), step('failed'), step('skipped')],
  ...[step('rests', { restsOn: ['skipped'] }), step('moved', { reopenedBy: ['banjo-moved'] })],
  ...[step('groove', { onlyWithGroove: true }), step('hold', { hold: true }), step('later')],
];
const happenings: readonly Happening[] = [
  {
    ...{ kind: 'started', boxId: 'box', part: 'tenon', procedureId: 'p', fromRun: 'before', groove: false },
    procedure: { name: 'p', version: 1, steps },
    inherited: [{ key: 'carried', since: 1 }],
  },
  { kind: 'ticked', steps: ['passed'], verdict: 'pass' },
  { kind: 'ticked', steps: ['failed'], verdict: 'fail' },
  { kind: 'ticked', steps: ['skipped'], verdict: 'skip' },
  { kind: 'ticked', steps: ['moved'], verdict: 'pass' },
  { kind: 'paused' },
  { kind: 'resumed' },
  { kind: 'ticked', steps: ['later', 'hold'], verdict: 'pass' },
  { kind: 'undone', target: { n: 8, writer: 'a' } },
  { kind: 'ticked', steps: ['hold'], verdict: 'pass' },
  { kind: 'moved', what: 'banjo-moved' },
  { kind: 'closed', how: 'cut' },
];

/** What earlier phones have kept was made by this very rule: when this fails, raise FOLD_RULE with it. */
it('the fold and the packing are still what the name of their rule stands for', () => {
  const events = happenings.map(
    (happening, i): SetUpEvent => ({
      ...{ logId: 'mine', runId: 'run', n: i + 1, writer: 'a' },
      ...{ at: 1000 * i * i, mono: 1000 * i * i, hid: 0, session: 's' },
      ...happening,
    }),
  );
  const { steps: _, ...packed } = JSON.parse(packRuns(kept([foldRun(events) as RunState])));
  expect({ rule: FOLD_RULE, ...packed }).toEqual({
    rule: 'runs 1',
    lists: [[0, 1, 2, 3, 4, 5, 6, 7, 8]],
    runs: [
      [
        'run',
        'tenon',
        'cut',
        'before',
        false,
        false,
        0,
        '412365710',
        [0, 1000, 3000, 5000, 0, 7000, 0, 54000, 0],
      ],
    ],
  });
});
