import { describe, expect, test } from 'vitest';
import { askewFlankShift } from '../../src/domain/alignment/askew-flank-shift.ts';
import { mm, rad } from '../../src/domain/units/brands.ts';
import { value } from './answer.ts';
import { grid, inDeg, inRad } from './grid.ts';
import { cutTo, wallsAt } from './groove.ts';

const SLOPE = Math.tan(Math.PI / 6);
const PARTS = ['tenon', 'recess'] as const;
type Hand = 'right' | 'left';

interface Case {
  readonly part: 'tenon' | 'recess';
  readonly pitch: number;
  readonly radius: number;
  readonly cutter: number;
  readonly side?: 1 | -1;
  readonly tiltDeg?: number;
  readonly hand?: Hand;
}

/** Half of what the groove is wider than the cutter's own section, seen at the radius of the turned piece. */
const widened = ({ part, pitch, radius, cutter, side = 1, tiltDeg = 0, hand = 'right' }: Case): number => {
  const [depth, tipFlat] = [0.6 * pitch, 0.2];
  const signed = hand === 'right' ? pitch : -pitch;
  const sweep = cutTo({
    part,
    pitch: signed,
    cutter: { radius: cutter, tipFlat },
    radius,
    depth,
    side,
    tiltDeg,
  });
  const { low, high } = wallsAt(sweep, radius, 1);
  return (high - low - tipFlat) / 2 - depth * SLOPE;
};

const foretold = ({ part, pitch, radius, cutter, side = 1, tiltDeg = 0, hand = 'right' }: Case): number => {
  return value(
    askewFlankShift({
      part,
      wall: 'inner',
      pitch: mm(pitch),
      hand,
      radius: mm(radius),
      cutterRadius: mm(cutter - 0.6 * pitch),
      lean: rad(0),
      // With the axes level, the tilt signed by the side of the work that the cutter touches.
      helixTilt: rad(side * inRad(tiltDeg)),
    }),
  );
};

describe('an upright disc', () => {
  const cases = PARTS.flatMap((part) =>
    grid([2.54, 1.27], [3.175, 1.5875]).flatMap((pitch) =>
      grid([12.5, 25, 50], [7.5, 37.5]).flatMap((radius) =>
        grid([0.4, 0.8], [0.5, 0.6, 0.7]).map((share) => ({ part, pitch, radius, cutter: share * radius })),
      ),
    ),
  );
  test.each(cases)(
    'widens each flank as foretold within 1 %: $part, pitch $pitch, radius $radius, cutter $cutter',
    (of) => {
      const sim = widened(of);
      expect(Math.abs(sim / foretold(of) - 1)).toBeLessThan(0.01);
    },
  );
});

describe('a tilted disc', () => {
  const cases = PARTS.flatMap((part) =>
    ([1, -1] as const).flatMap((side) =>
      (['right', 'left'] as const).flatMap((hand) =>
        grid([-3, -1, 1, 3], [-2, -1.75, -0.5, 0.5, 1.75, 2]).map((tiltDeg) => ({
          part,
          pitch: 2.54,
          radius: 25,
          cutter: 15,
          side,
          hand,
          tiltDeg,
        })),
      ),
    ),
  );
  test.each(cases)('$part, side $side, $hand hand, tilt $tiltDeg: within 10 % or 5 um', (of) => {
    const [sim, formula] = [widened(of), foretold(of)];
    expect(Math.abs(sim - formula)).toBeLessThan(Math.max(0.1 * formula, 0.005));
  });

  test.each(PARTS.flatMap((part) => (['right', 'left'] as const).map((hand) => [part, hand] as const)))(
    'laid along the helix takes the widening away: %s, %s hand',
    (part, hand) => {
      const of = { part, pitch: 2.54, radius: 12.5, cutter: 8, hand } as const;
      const lead = inDeg(Math.atan(2.54 / (2 * Math.PI * 12.5)));
      const best = hand === 'right' ? lead : -lead;
      expect(widened({ ...of, tiltDeg: best })).toBeLessThan(0.15 * widened(of));
      expect(widened({ ...of, tiltDeg: -best })).toBeGreaterThan(3 * widened(of));
    },
  );
});
