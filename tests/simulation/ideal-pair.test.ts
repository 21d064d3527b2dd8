import { describe, expect, test } from 'vitest';
import { flankShift } from '../../src/domain/joint/helix.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { value } from './answer.ts';
import { outsideBy } from './cutter-solid.ts';
import { grid } from './grid.ts';
import { cutTo, inLathe, wallsAt } from './groove.ts';
import { playOf } from './mating.ts';
import { cutJoint, type Joint, sizesOf } from './pieces.ts';

const SLOPE = Math.tan(Math.PI / 6);

/** Helix widening of both pieces at a radius, from the closed form. */
const shiftsAt = (joint: Joint, radius: number): number => {
  const { tenon, depth } = sizesOf(joint);
  const shift = (part: 'tenon' | 'recess', height: number) =>
    value(
      flankShift({
        part,
        pitch: mm(joint.pitch),
        workRadius: mm(radius),
        cutterRadius: mm(joint.cutterRadius[part] - height),
      }),
    );
  return shift('tenon', radius - (tenon / 2 - depth)) + shift('recess', joint.opening / 2 + depth - radius);
};

type Row = readonly [
  tpi: number,
  opening: number,
  engagement: number,
  clearance: number,
  tip: number,
  cutter: number,
  inRecess: number,
];
const usual: readonly Row[] = [
  [8, 50, 70, 0.25, 0.3, 15, 15],
  [10, 40, 75, 0.2, 0.2, 15, 12],
  [12, 70, 80, 0.3, 0.25, 20, 20],
  [16, 24, 65, 0.15, 0.1, 8, 8],
  [20, 20, 60, 0.1, 0.1, 8, 6],
];
const more: readonly Row[] = [8, 9, 10, 11, 12, 14, 16, 18, 20].flatMap((tpi) =>
  [25, 50, 100].flatMap((opening): Row[] => [
    [tpi, opening, 60, 0.35, 0.2, 12, 8],
    [tpi, opening, 75, 0.1, 0.1, 20, 9],
  ]),
);

describe('two pieces cut with the jig in line', () => {
  test.each(grid(usual, more))(
    '%s tpi, opening %s, engagement %s, clearance %s, tip %s, cutters %s and %s: play within half a micrometre',
    (tpi, opening, engagement, clearance, tipFlat, tenonCutter, recessCutter) => {
      const joint: Joint = {
        pitch: 25.4 / tpi,
        opening,
        engagement,
        clearance,
        tipFlat,
        cutterRadius: { tenon: tenonCutter, recess: recessCutter },
      };
      // The flanks touch where the widening is least.
      const widening = Math.min(shiftsAt(joint, opening / 2), shiftsAt(joint, sizesOf(joint).tenon / 2));
      const expected = clearance * SLOPE + 2 * widening;
      expect(Math.abs(playOf(cutJoint(joint)) - expected)).toBeLessThan(0.0005);
      expect(Math.abs(playOf(cutJoint(joint, undefined, 'left')) - expected)).toBeLessThan(0.0005);
    },
  );
});

test('the walls are those of a point-by-point sweep of the solid', () => {
  for (const part of ['tenon', 'recess'] as const) {
    const sweep = cutTo({
      part,
      pitch: 2.54,
      cutter: { radius: 12, tipFlat: 0.2 },
      radius: 20,
      depth: 1.5,
      side: 1,
      yawDeg: 1.5,
      tiltDeg: -1,
    });
    const [radius, azimuth] = [part === 'tenon' ? 19.4 : 20.6, 0.7];
    const walls = wallsAt(sweep, radius, azimuth);
    const facing = -azimuth;
    const removed = (s: number): boolean => {
      for (let step = -6000; step <= 6000; step += 1)
        if (outsideBy(sweep.cutter, inLathe(sweep, radius, azimuth, s, facing + step / 6000)) <= 0)
          return true;
      return false;
    };
    for (const [s, expected] of [
      [walls.low - 0.0002, false],
      [walls.low + 0.0002, true],
      [(walls.low + walls.high) / 2, true],
      [walls.high - 0.0002, true],
      [walls.high + 0.0002, false],
    ] as const)
      expect(removed(s), `${part} at ${s}`).toBe(expected);
  }
});
