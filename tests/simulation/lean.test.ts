import { describe, expect, test } from 'vitest';
import { askewFlankShift } from '../../src/domain/alignment/askew-flank-shift.ts';
import { axialPlay } from '../../src/domain/alignment/play.ts';
import { mm, type Radians, rad } from '../../src/domain/units/brands.ts';
import { value } from './answer.ts';
import { grid, inDeg, inRad } from './grid.ts';
import { cutTo, rootAt, wallsAt } from './groove.ts';
import { playOf } from './mating.ts';
import { cutJoint, type Joint, type Stood, sizesOf } from './pieces.ts';

const PARTS = ['tenon', 'recess'] as const;
const SIDES = [1, -1] as const;
type Wall = 'inner' | 'mouth';
/** With the axes level a groove leans by the yaw, signed by the side of the work that the cutter touches. */
const leanOf = ({ yawDeg, side }: Stood): Radians => rad(side * inRad(yawDeg));
/** Each wall stands at 30 degrees and leans with the groove, which opens outward on a tenon and inward in a recess. */
const flankAngles = (part: 'tenon' | 'recess', lean: number): Record<Wall, number> => {
  const fromRoot = part === 'tenon' ? lean : -lean;
  return { inner: Math.PI / 6 + fromRoot, mouth: Math.PI / 6 - fromRoot };
};
/** What the climb of the helix takes off both: L^2 cos^2 A/(2 tan A), a few hundredths of a degree. */
const byClimb = (pitch: number, radius: number): number =>
  (-((pitch / (2 * Math.PI * radius)) ** 2) * Math.cos(Math.PI / 6) ** 2) / (2 * Math.tan(Math.PI / 6));

describe('a constant yaw', () => {
  const cases = PARTS.flatMap((part) =>
    SIDES.flatMap((side) =>
      [2.54, ...grid([], [1.5875, 3.175])].flatMap((pitch) =>
        grid([25], [12.5, 37.5]).flatMap((radius) =>
          grid([-3, -1, 0, 0.5, 2, 3], [-2, -0.5, 1]).map(
            (yawDeg) => [part, side, pitch, radius, yawDeg] as const,
          ),
        ),
      ),
    ),
  );
  test.each(cases)(
    '%s, side %s, pitch %s, radius %s, yaw %s: both flank angles within 0.06 degrees',
    (part, side, pitch, radius, yawDeg) => {
      const depth = 0.6 * pitch;
      const sweep = cutTo({
        part,
        pitch,
        cutter: { radius: radius * 0.6, tipFlat: 0.2 },
        radius,
        depth,
        side,
        yawDeg,
      });
      const height = 0.8 * depth;
      const deep = wallsAt(sweep, radius + (part === 'tenon' ? -height : height), 0.4);
      const top = wallsAt(sweep, radius, 0.4);
      const expected = flankAngles(part, leanOf({ yawDeg, side }));
      const byHelix = byClimb(pitch, radius);
      const seen: Record<Wall, number> = {
        inner: Math.atan((top.high - deep.high) / height),
        mouth: Math.atan((deep.low - top.low) / height),
      };
      for (const wall of ['inner', 'mouth'] as const)
        expect(Math.abs(inDeg(seen[wall] - expected[wall] - byHelix)), wall).toBeLessThan(0.06);
    },
  );

  test.each(PARTS)(
    'makes no taper and no thick side on a %s: depth and width alike all round and along',
    (part) => {
      const sweep = cutTo({
        part,
        pitch: 2.54,
        cutter: { radius: 13, tipFlat: 0.2 },
        radius: 21,
        depth: 1.6,
        side: 1,
        yawDeg: 2,
        tiltDeg: 1,
      });
      const roots: number[] = [];
      const widths: number[] = [];
      for (const turns of [0, 2, 4])
        for (const azimuth of [0, 1.3, 2.9, 4.4]) {
          roots.push(rootAt(sweep, azimuth, turns));
          const { low, high } = wallsAt(sweep, part === 'tenon' ? 20.5 : 21.5, azimuth, turns);
          widths.push(high - low);
        }
      expect(Math.max(...roots) - Math.min(...roots)).toBeLessThan(0.0002);
      expect(Math.max(...widths) - Math.min(...widths)).toBeLessThan(0.0002);
    },
  );
});

describe('the mated pair under lean', () => {
  const joint: Joint = {
    pitch: 2.54,
    opening: 40,
    engagement: 75,
    clearance: 0.2,
    tipFlat: 0.2,
    cutterRadius: { tenon: 15, recess: 12 },
  };

  /** The play that the closed forms foretell, helix widening at half the engaged height included. */
  const foretold = (of: Joint, stood: Readonly<Record<'tenon' | 'recess', Stood>>): number => {
    const { tenon, depth } = sizesOf(of);
    const middle = (of.opening + tenon) / 4;
    const piece = (part: 'tenon' | 'recess') => {
      const lean = leanOf(stood[part]);
      const height = part === 'tenon' ? middle - (tenon / 2 - depth) : of.opening / 2 + depth - middle;
      const shift = (wall: Wall) =>
        value(
          askewFlankShift({
            part,
            wall,
            pitch: mm(of.pitch),
            hand: 'right',
            radius: mm(middle),
            cutterRadius: mm(of.cutterRadius[part] - height),
            lean,
            helixTilt: rad(0),
          }),
        );
      return {
        diameter: mm(part === 'tenon' ? tenon : of.opening),
        depth: mm(depth),
        tipFlat: mm(of.tipFlat),
        lean,
        flankShift: mm((shift('inner') + shift('mouth')) / 2),
      };
    };
    return value(axialPlay({ pitch: mm(of.pitch), tenon: piece('tenon'), recess: piece('recess') }));
  };

  const leans: readonly (readonly [number, number, 1 | -1])[] = grid(
    [
      [0, 0, 1],
      [0.5, 0.5, 1],
      [1, 1, 1],
      [2, 2, 1],
      [1, 1, -1],
      [2, 2, -1],
      [2, 0, 1],
      [0, 1, 1],
    ],
    [
      [-1, -1, 1],
      [3, 3, -1],
      [1.5, 0.5, -1],
      [1.5, -0.5, 1],
      [0.25, 0.25, 1],
      [-2, 1, 1],
    ],
  );
  const joints = grid(
    [joint],
    [
      { ...joint, pitch: 1.5875, clearance: 0.15, tipFlat: 0.1 },
      { ...joint, pitch: 3.175, opening: 75, clearance: 0.35, cutterRadius: { tenon: 20, recess: 20 } },
    ],
  );
  test.each(joints.flatMap((of) => leans.map((lean) => [of.pitch, ...lean, of] as const)))(
    'pitch %s, yaw %s on the tenon, %s on the recess cut on side %s: play within 2 um',
    (_pitch, tenonYaw, recessYaw, recessSide, of) => {
      const stood = {
        tenon: { yawDeg: tenonYaw, side: 1 },
        recess: { yawDeg: recessYaw, side: recessSide },
      } as const;
      expect(Math.abs(playOf(cutJoint(of, stood)) - foretold(of, stood))).toBeLessThan(0.002);
    },
  );

  test('equal yaw cancels on opposite sides of the work and doubles on one', () => {
    const play = (side: 1 | -1, yawDeg: number) =>
      playOf(cutJoint(joint, { tenon: { yawDeg, side: 1 }, recess: { yawDeg, side } }));
    const straight = play(1, 0);
    expect(straight - play(-1, 2)).toBeLessThan(0.006);
    expect(straight - play(1, 2)).toBeGreaterThan(0.11);
  });

  test('the hand of the thread makes no difference to it', () => {
    const stood = { tenon: { yawDeg: 1, side: 1 }, recess: { yawDeg: 1, side: 1 } } as const;
    expect(playOf(cutJoint(joint, stood, 'left'))).toBeCloseTo(playOf(cutJoint(joint, stood)), 3);
  });
});
