import { describe, expect, it } from 'vitest';
import type { BothWaysPlan } from '../../../src/domain/box/records.ts';
import { type Standing, standingOf } from '../../../src/domain/experiment/both-ways-standing.ts';
import { drawLots, type Lot } from '../../../src/domain/experiment/draw-lots.ts';
import type { TrialBox } from '../../../src/domain/experiment/trial-box.ts';
import { type Expected, trialPower } from '../../../src/domain/experiment/trial-power.ts';
import { type Random, seededRandom } from '../../../src/domain/random.ts';
import { must } from '../../domain/findings/expect-digits.ts';
import { measured, pick, TIMEOUT } from './scale.ts';

interface Found {
  /** Share of trials called clear at either look. */
  readonly clear: number;
  /** Share of trials whose range held the true difference at both looks. */
  readonly held: number;
}

const trialOf = (values: readonly number[], lots: readonly Lot[], taken: number): Standing => {
  const kind = values.every((value) => value === 0 || value === 1) ? 'fit' : 'time';
  const plan: BothWaysPlan = {
    ...{ step: 'gap', sentence: '', drawnOn: '2031-01-01', givenUp: false },
    measure: { kind },
    lots,
    boxes: [],
  };
  const boxes = values
    .slice(0, taken)
    .map((value): TrialBox => ({ value, fit: kind === 'fit' ? value : 1, finished: true, did: null }));
  return standingOf(plan, boxes);
};

const simulated = (
  boxes: number,
  trials: number,
  truth: number,
  measure: (lot: Lot, random: Random) => number,
): Found => {
  let [clear, held] = [0, 0];
  for (let trial = 0; trial < trials; trial++) {
    const random = seededRandom(5, trial);
    const lots = must(drawLots(boxes, random));
    const values = lots.map((lot) => measure(lot, random));
    const looks = [boxes / 2, boxes].map((taken) => {
      const standing = trialOf(values, lots, taken);
      if (standing.look === 'none-yet') throw new Error('no look where one is due');
      return standing.measured;
    });
    if (looks.some((look) => look.clear)) clear++;
    if (looks.every(({ interval }) => !interval || (interval.low <= truth && truth <= interval.high))) held++;
  }
  return { clear: clear / trials, held: held / trials };
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

describe('a trial both ways, two looks', () => {
  it.each(CASES)(
    '%i boxes, %j: simulated as the shown power says',
    (boxes, expected) => {
      const trials = pick(600, 10_000);
      const truth =
        expected.measure === 'reading' ? expected.effect : expected.withRate - expected.withoutRate;
      const { clear: found, held } = simulated(boxes, trials, truth, (lot, random) =>
        expected.measure === 'reading'
          ? random.normal(lot === 'with' ? expected.effect : 0, 1)
          : Number(random.chance(lot === 'with' ? expected.withRate : expected.withoutRate)),
      );
      const shown = trialPower(boxes, expected);
      measured(
        'both ways',
        boxes,
        JSON.stringify(expected),
        trials,
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
