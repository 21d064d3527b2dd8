import { describe, expect, it } from 'vitest';
import { bothWays } from '../../../src/domain/findings/both-ways.ts';
import { drawLots, type Lot } from '../../../src/domain/findings/draw-lots.ts';
import { type Expected, trialPower } from '../../../src/domain/findings/trial-power.ts';
import { type Random, seededRandom } from '../../../src/domain/log/random.ts';
import { must } from '../../domain/findings/expect-digits.ts';
import { measured, pick, TIMEOUT } from './scale.ts';

/** Share of trials called clear at either look. */
const clearShare = (boxes: number, trials: number, measure: (lot: Lot, random: Random) => number): number => {
  let clear = 0;
  for (let trial = 0; trial < trials; trial++) {
    const random = seededRandom(5, trial);
    const all = must(drawLots(boxes, random)).map((lot) => ({ lot, value: measure(lot, random) }));
    if (bothWays(all.slice(0, boxes / 2), boxes).clear || bothWays(all, boxes).clear) clear++;
  }
  return clear / trials;
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
      const found = clearShare(boxes, trials, (lot, random) =>
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
      );
      expect(Math.abs(found - shown)).toBeLessThan(pick(0.09, 0.03));
      const nothing =
        expected.measure === 'reading' ? expected.effect === 0 : expected.withRate === expected.withoutRate;
      if (nothing) expect(found).toBeLessThan(pick(0.085, 0.056));
    },
    TIMEOUT,
  );
});
