import { describe, expect, it } from 'vitest';
import type { ExperimentPlan } from '../../../src/domain/box/records.ts';
import { drawLots, type Lot } from '../../../src/domain/experiment/draw-lots.ts';
import type { ExperimentBox } from '../../../src/domain/experiment/experiment-box.ts';
import { type Expected, experimentPower } from '../../../src/domain/experiment/experiment-power.ts';
import { type ExperimentStatus, experimentStatus } from '../../../src/domain/experiment/experiment-status.ts';
import { type Random, seededRandom } from '../../../src/domain/random.ts';
import { must } from '../../domain/findings/expect-digits.ts';
import { measured, pick, TIMEOUT } from './scale.ts';

interface Found {
  /** Share of experiments called clear at either look. */
  readonly clear: number;
  /** Share of experiments whose range held the true difference at both looks. */
  readonly held: number;
}

const experimentOf = (values: readonly number[], lots: readonly Lot[], taken: number): ExperimentStatus => {
  const kind = values.every((value) => value === 0 || value === 1) ? 'fit' : 'time';
  const plan: ExperimentPlan = {
    ...{ step: 'gap', sentence: '', drawnOn: '2031-01-01', givenUp: false },
    measure: { kind },
    lots,
    boxes: [],
  };
  const boxes = values
    .slice(0, taken)
    .map((value): ExperimentBox => ({ value, fit: kind === 'fit' ? value : 1, finished: true, did: null }));
  return experimentStatus(plan, boxes);
};

const simulated = (
  boxes: number,
  experiments: number,
  truth: number,
  measure: (lot: Lot, random: Random) => number,
): Found => {
  let [clear, held] = [0, 0];
  for (let experiment = 0; experiment < experiments; experiment++) {
    const random = seededRandom(5, experiment);
    const lots = must(drawLots(boxes, random));
    const values = lots.map((lot) => measure(lot, random));
    const looks = [boxes / 2, boxes].map((taken) => {
      const status = experimentOf(values, lots, taken);
      if (status.look === 'none-yet') throw new Error('no look where one is due');
      return status.measured;
    });
    if (looks.some((look) => look.clear)) clear++;
    if (looks.every(({ interval }) => !interval || (interval.low <= truth && truth <= interval.high))) held++;
  }
  return { clear: clear / experiments, held: held / experiments };
};

const CASES: readonly (readonly [number, Expected])[] = [
  [24, { measure: 'reading', effect: 0 }],
  [40, { measure: 'reading', effect: 0 }],
  [40, { measure: 'reading', effect: 0.8 }],
  [80, { measure: 'reading', effect: 0.5 }],
  [40, { measure: 'right', withRate: 0.3, withoutRate: 0.3 }],
  [40, { measure: 'right', withRate: 0.15, withoutRate: 0.35 }],
  [80, { measure: 'right', withRate: 0.15, withoutRate: 0.35 }],
];

describe('an experiment both ways, two looks', () => {
  it.each(CASES)(
    '%i boxes, %j: simulated as the shown power says',
    (boxes, expected) => {
      const experiments = pick(600, 10_000);
      const truth =
        expected.measure === 'reading' ? expected.effect : expected.withRate - expected.withoutRate;
      const { clear: found, held } = simulated(boxes, experiments, truth, (lot, random) =>
        expected.measure === 'reading'
          ? random.normal(lot === 'with' ? expected.effect : 0, 1)
          : Number(random.chance(lot === 'with' ? expected.withRate : expected.withoutRate)),
      );
      const shown = experimentPower(boxes, expected);
      measured(
        'both ways',
        boxes,
        JSON.stringify(expected),
        experiments,
        `simulated ${found.toFixed(3)}`,
        `shown ${shown.toFixed(3)}`,
        `range holds ${held.toFixed(3)}`,
      );
      expect(Math.abs(found - shown)).toBeLessThan(pick(0.09, 0.03));
      expect(held).toBeGreaterThan(pick(0.915, 0.94));
      if (truth === 0) expect(found).toBeLessThan(pick(0.085, 0.056));
    },
    TIMEOUT,
  );
});
