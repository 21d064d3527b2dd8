import { describe, expect, it } from 'vitest';
import type { Box, Instrument, Rig, Trial } from '../../../src/domain/box/records.ts';
import { stepLinks } from '../../../src/domain/findings/answers/step-links.ts';
import { type CutRun, cutRuns } from '../../../src/domain/findings/rows/cut-run.ts';
import { type FoldedLog, rowsFromLogs } from '../../../src/domain/findings/rows/rows-from-log.ts';
import { groupBy } from '../../../src/domain/group-by.ts';
import { foldRun } from '../../../src/domain/setup/fold.ts';
import { DEMO_SEED, generateDemo } from '../../demo/generate.ts';

const NOW = Date.UTC(2026, 10, 25);

const demo = (): FoldedLog => {
  const { records, events } = generateDemo(DEMO_SEED, NOW);
  const runs = new Map<string, CutRun>();
  const keep = cutRuns();
  for (const [id, list] of groupBy(events, (event) => event.runId)) {
    const run = foldRun(list);
    if (run) runs.set(id, keep(run));
  }
  const of = <T>(kind: string): ReadonlyMap<string, T> =>
    new Map(records.flatMap((r) => (r.kind === kind && r.body ? [[r.id, r.body as T] as const] : [])));
  return {
    log: 'demo',
    boxes: of<Box>('box'),
    rigs: of<Rig>('rig'),
    calipers: of<Instrument>('instrument'),
    ownWoods: new Map(),
    runs,
    woodFacts: (wood) => ({ group: 'hardwood', hardness: wood === 'Yellow-poplar' ? 2400 : 5000 }),
  };
};

const log = demo();
const table = rowsFromLogs([log]);
const first = [...log.boxes].find(([, box]) => box.trials[0]?.right) as [string, Box];
const one = (box: Box, id = first[0]): FoldedLog => ({ ...log, boxes: new Map([[id, box]]) });
const trialOf = (change: Partial<Trial>): Trial => ({
  ...(first[1].trials[0] as Trial),
  right: false,
  ...change,
});

describe('rows from a log', () => {
  it('every box gives a row or is counted with its reason', () => {
    const left = Object.values(table.leftOut).reduce((sum, n) => sum + n, 0);
    expect(table.rows.length + left).toBe(log.boxes.size);
    expect(table.rows.length).toBeGreaterThan(100);
  });

  it('hold points are in no row and no step', () => {
    const holds = new Set(
      [...log.runs.values()].flatMap((run) =>
        run.steps.filter(({ step }) => step.hold).map(({ step }) => step.key),
      ),
    );
    expect(holds.size).toBeGreaterThan(5);
    expect(table.steps.filter(({ key }) => holds.has(key))).toEqual([]);
    for (const row of table.rows)
      for (const steps of Object.values(row.steps))
        for (const key of Object.keys(steps)) expect(holds.has(key)).toBe(false);
  });

  it('boxes of one day share a cluster; another log never does', () => {
    const byDay = groupBy(table.rows, (row) => row.day);
    for (const rows of byDay.values()) expect(new Set(rows.map((row) => row.cluster)).size).toBe(1);
    const pooled = rowsFromLogs([log, { ...log, log: 'club' }]);
    const mine = new Set(pooled.rows.filter((row) => row.log === 'demo').map((row) => row.cluster));
    expect(pooled.rows.filter((row) => row.log === 'club' && mine.has(row.cluster))).toEqual([]);
  });

  it('a contested set-up leaves its box out, and says so', () => {
    const run = [...log.runs.values()].find(
      ({ runId, closed }) => closed === 'cut' && first[1].setUps.some((ref) => ref.runId === runId),
    ) as CutRun;
    const runs = new Map([...log.runs, [run.runId, { ...run, contested: true }]]);
    const found = rowsFromLogs([{ ...one(first[1]), runs }]);
    expect(found.rows).toEqual([]);
    expect(found.leftOut['set-up-contested']).toBe(1);
  });

  it('tight, then right at the next trial, is eased; with torn threads it is not', () => {
    const right = first[1].trials[0] as Trial;
    const tight = trialOf({ goingOn: ['stiff-all-the-way'], seated: null, threads: ['sound'] });
    const tryOf = (trials: readonly Trial[]) =>
      rowsFromLogs([one({ ...first[1], trials })]).rows[0]?.firstTry;
    expect(tryOf([tight, right])).toBe('eased');
    expect(tryOf([tight, tight, right])).toBe('failed');
    expect(tryOf([trialOf({ goingOn: ['stiff-all-the-way'], threads: ['torn'] }), right])).toBe('failed');
    expect(tryOf([tight, { ...right, afterFinish: true }])).toBe('failed');
  });

  it('scrapped for the thread before any trial is an outcome; scrapped for the wood is none', () => {
    const scrapped = (scrapReason: 'thread' | 'wood') => {
      const closing = {
        ...(first[1].closing as NonNullable<Box['closing']>),
        outcome: 'scrapped' as const,
        scrapReason,
      };
      return rowsFromLogs([one({ ...first[1], trials: [], closing })]).rows[0]?.firstTry;
    };
    expect(scrapped('thread')).toBe('scrapped');
    expect(scrapped('wood')).toBe('unknown');
  });

  it('a ring is credited for the thread it carries, not the lid', () => {
    const plan = {
      ...first[1].plan,
      lid: { wood: 'Yellow-poplar', grain: 'end' as const },
      base: { wood: 'Cherry, black', grain: 'end' as const },
    };
    const woodOf = (insert: Box['plan']['insert']) =>
      rowsFromLogs([one({ ...first[1], plan: { ...plan, insert } })]).rows[0]?.wood;
    expect(woodOf(null)).toBe('Yellow-poplar');
    expect(woodOf({ in: 'lid', wood: 'Boxwood, European', grain: 'end' })).not.toBe('Yellow-poplar');
  });

  it('what the demo says of itself: no harmless step is called strong', () => {
    const strong = stepLinks(table)
      .links.filter(({ wording }) => wording.word === 'strong')
      .map(({ step }) => step);
    expect(strong.filter((step) => !['gap', 'touch-off', 'pick-up'].includes(step))).toEqual([]);
  });
});
