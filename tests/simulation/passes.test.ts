import { describe, expect, test } from 'vitest';
import { slipAbsorbed } from '../../src/domain/alignment/slip.ts';
import { flankShift } from '../../src/domain/joint/helix.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { value } from './answer.ts';
import { grid } from './grid.ts';
import { cutTo, wallsAt } from './groove.ts';

const PITCH = 2.54;
const LAST = 1.6;

const RADIUS = 25;
const CUTTER = 12;
type Part = 'tenon' | 'recess';

/** How much wider than the last pass alone the groove of several passes is, each pass moved along the work by its slip. */
const wider = (part: Part, passes: readonly (readonly [depth: number, slip: number])[]): number => {
  const walls = (depth: number) =>
    wallsAt(
      cutTo({ part, pitch: PITCH, cutter: { radius: CUTTER, tipFlat: 0.2 }, radius: RADIUS, depth, side: 1 }),
      RADIUS,
      0,
    );
  const own = walls(LAST);
  let { low, high } = own;
  for (const [depth, slip] of passes) {
    const earlier = walls(depth);
    low = Math.min(low, earlier.low + slip);
    high = Math.max(high, earlier.high + slip);
  }
  return high - low - (own.high - own.low);
};

/** A shallower pass meets the surface with a larger disc, which widens the helix a little more: up to 0.4 um, foretold for itself. */
const moreHelix = (part: Part, depth: number): number => {
  const shift = (cut: number) =>
    value(flankShift({ part, pitch: mm(PITCH), workRadius: mm(RADIUS), cutterRadius: mm(CUTTER - cut) }));
  return shift(depth) - shift(LAST);
};

describe('a slip between passes', () => {
  const cases = (['tenon', 'recess'] satisfies Part[]).flatMap((part) =>
    grid([1.0667, 1.55, 1.6], [0.8, 1.2, 1.3]).flatMap((depth) =>
      grid([0.01, 0.2, -0.4], [0.1, 0.3, -0.05, 0.6]).map((slip) => [part, depth, slip] as const),
    ),
  );
  test.each(cases)('%s, pass of %s slipped by %s: widening within 0.2 um', (part, depth, slip) => {
    const widening = Math.max(0, Math.abs(slip) - value(slipAbsorbed(mm(LAST), mm(depth))));
    const expected = widening > 0 ? widening + moreHelix(part, depth) : 0;
    expect(Math.abs(wider(part, [[depth, slip]]) - expected)).toBeLessThan(0.0002);
  });

  test('of several, the worst counts when all went one way', () => {
    const passes = [
      [0.8, 0.3],
      [1.3, 0.25],
    ] as const;
    const widening = Math.max(
      ...passes.map(([depth, slip]) => slip - value(slipAbsorbed(mm(LAST), mm(depth)))),
    );
    expect(Math.abs(wider('tenon', passes) - widening - moreHelix('tenon', 1.3))).toBeLessThan(0.0002);
  });
});
