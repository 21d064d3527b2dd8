import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/domain/box/records.ts';
import { caseOf, shapeOf } from '../../../src/domain/findings/answers/case-of.ts';
import { suspects } from '../../../src/domain/findings/answers/suspects.ts';
import { groupBy } from '../../../src/domain/group-by.ts';
import { foldRun, type RunState } from '../../../src/domain/setup/fold.ts';
import { DEMO_SEED, generateDemo } from '../../demo/generate.ts';

const demo = generateDemo(DEMO_SEED, Date.UTC(2026, 10, 25));
const events = groupBy(demo.events, (event) => event.runId);
const boxes = demo.records.filter((record) => record.kind === 'box').map((record) => record.body as Box);
const runsOf = (box: Box): RunState[] =>
  box.setUps.map(({ runId }) => foldRun(events.get(runId) ?? [])).filter((run) => run !== null);

describe('one box as a case', () => {
  it('is none when every trial was right, and one for every box that was not', () => {
    for (const box of boxes) {
      const found = caseOf(box, runsOf(box), {});
      expect(found === null).toBe(box.trials.every((trial) => trial.right));
    }
  });

  it('a step missed in either part is missed, never done as well', () => {
    for (const box of boxes) {
      const found = caseOf(box, runsOf(box), {});
      if (!found) continue;
      const missed = runsOf(box).flatMap((run) =>
        run.steps
          .filter(({ status }) => status === 'skipped' || status === 'failed')
          .map(({ step }) => step.key),
      );
      expect(found.missed).toEqual(expect.arrayContaining(missed));
      expect(found.done.filter((key) => found.missed.includes(key))).toEqual([]);
    }
  });

  it('names suspects whose chances are shares of one whole', () => {
    let named = 0;
    for (const box of boxes) {
      const found = caseOf(box, runsOf(box), {});
      if (!found || found.symptoms.length === 0) continue;
      const all = suspects(found);
      named += all.length;
      expect(all.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
    }
    expect(named).toBeGreaterThan(0);
  });

  it('reads taper and ovality off the bore only where both readings are there', () => {
    const [box] = boxes.filter(({ bore }) => bore.length > 0);
    if (!box) throw new Error('the demo measures its bores');
    const [reading] = box.bore;
    if (!reading) throw new Error('a bore');
    const at = (where: 'mouth' | 'relief', along: number, across: number | null) => ({
      ...reading,
      where,
      along: { mm: along as typeof reading.along.mm, text: '' },
      across: across === null ? null : { mm: across as typeof reading.along.mm, text: '' },
    });
    expect(shapeOf({ ...box, bore: [at('mouth', 50, null)] })).toEqual({});
    expect(shapeOf({ ...box, bore: [at('mouth', 50, 49.9), at('relief', 49.8, null)] })).toEqual({
      taper: expect.closeTo(0.2, 9),
      oval: expect.closeTo(0.1, 9),
    });
  });
});
