import { describe, expect, it } from 'vitest';
import { UNKNOWN_CALIPER } from '../../../src/domain/box/given.ts';
import type { Box } from '../../../src/domain/box/records.ts';
import { UNKNOWN_RIG } from '../../../src/domain/box/unknown-rig.ts';
import { caseOf } from '../../../src/domain/findings/answers/case-of.ts';
import { suspects } from '../../../src/domain/findings/answers/suspects.ts';
import { groupBy } from '../../../src/domain/group-by.ts';
import { foldRun, type RunState } from '../../../src/domain/setup/fold.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { DEMO_SEED, generateDemo } from '../../demo/generate.ts';

const GIVEN = { rig: UNKNOWN_RIG, caliper: UNKNOWN_CALIPER };
const demo = generateDemo(DEMO_SEED, Date.UTC(2026, 10, 25));
const events = groupBy(demo.events, (event) => event.runId);
const boxes = demo.records.filter((record) => record.kind === 'box').map((record) => record.body as Box);
const runsOf = (box: Box): RunState[] =>
  box.setUps.map(({ runId }) => foldRun(events.get(runId) ?? [])).filter((run) => run !== null);

describe('one box as a case', () => {
  it('is none when every trial was right, and one for every box that was not', () => {
    for (const box of boxes) {
      const found = caseOf(box, runsOf(box), GIVEN);
      expect(found === null).toBe(box.trials.every((trial) => trial.right));
    }
  });

  it('a step missed in either part is missed, never done as well', () => {
    for (const box of boxes) {
      const found = caseOf(box, runsOf(box), GIVEN);
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
      const found = caseOf(box, runsOf(box), GIVEN);
      if (!found || found.symptoms.length === 0) continue;
      const all = suspects(found);
      named += all.length;
      expect(all.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
    }
    expect(named).toBeGreaterThan(0);
  });

  it('takes what was measured from the record at that trial: plain readings, the jaws compared', () => {
    const length = (value: number) => ({ mm: mm(value), text: '' });
    const bore = (seq: number, where: 'mouth' | 'relief', along: number, across: number | null) => ({
      ...{ id: `b${seq}`, seq, where, along: length(along), overCrests: false },
      across: across === null ? null : length(across),
    });
    const [tried] = boxes.filter(({ trials }) => trials.some(({ right }) => !right));
    if (!tried) throw new Error('the demo has lids that were not right');
    const box = {
      ...tried,
      tenon: [],
      cuts: [],
      trials: [{ ...tried.trials.find(({ right }) => !right), seq: 9 }],
    };
    const measured = (...readings: ReturnType<typeof bore>[]) =>
      caseOf({ ...box, bore: readings } as Box, [], GIVEN)?.measured;
    expect(Object.keys(measured(bore(1, 'mouth', 50, null)) ?? {})).toEqual(['suits']);
    expect(measured(bore(1, 'mouth', 50, 49.9), bore(2, 'relief', 49.8, null))).toMatchObject({
      taper: expect.closeTo(0.15, 9),
      oval: expect.closeTo(0.1, 9),
    });
  });
});
