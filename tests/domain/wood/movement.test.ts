import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, moisture, rad } from '../../../src/domain/units/brands.ts';
import {
  clearanceForMovement,
  clearanceForSeason,
  leastClearance,
  type MovingPiece,
  pitchMismatch,
  rimAfter,
} from '../../../src/domain/wood/movement.ts';
import { strainOf, usualStrain } from '../../../src/domain/wood/strain-of.ts';
import { numbersOf } from '../joint/numbers.ts';
import { gotten, refusalOf } from '../joint/results.ts';

const cherry = { radial: 0.00126, tangential: 0.00248 };
const maple = { radial: 0.00165, tangential: 0.00353 };
const end = (strain: typeof cherry, change: number): MovingPiece => ({
  strain,
  grain: 'end',
  change: moisture(change),
});
const side = (strain: typeof cherry, change: number): MovingPiece => ({
  strain,
  grain: 'side',
  change: moisture(change),
});

/** Gap of two ellipses round the turn, by looking: the least distance between them on one diameter, doubled. */
const seen = (c: number, D: number, recess: MovingPiece, tenon: MovingPiece, chi: number): number => {
  const radius = ({ strain, change }: MovingPiece, at: number, half: number): number => {
    const a = half * (1 + strain.radial * change);
    const b = half * (1 + strain.tangential * change);
    return (a * b) / Math.hypot(b * Math.cos(at), a * Math.sin(at));
  };
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 7200; i++) {
    const at = (Math.PI * i) / 3600;
    least = Math.min(least, 2 * (radius(recess, at, (D + c) / 2) - radius(tenon, at - chi, D / 2)));
  }
  return least;
};

describe('a joint after its wood has moved', () => {
  const change = fc.double({ min: -5, max: 5, noNaN: true });
  const wood = fc.record({
    radial: fc.double({ min: 0.0007, max: 0.003, noNaN: true }),
    tangential: fc.double({ min: 0.0007, max: 0.0055, noNaN: true }),
  });

  test('leaves the clearance that two real ellipses leave, within 0.015 mm', () => {
    fc.assert(
      fc.property(
        wood,
        wood,
        change,
        change,
        fc.double({ min: 0, max: Math.PI, noNaN: true }),
        fc.double({ min: 20, max: 80, noNaN: true }),
        (one, other, dry, wet, chi, diameter) => {
          const [recess, tenon] = [end(one, dry), end(other, wet)];
          const found = gotten(leastClearance(mm(0.3), mm(diameter), recess, tenon, rad(chi)));
          expect(Math.abs(found - seen(0.3, diameter, recess, tenon, chi))).toBeLessThan(0.015);
        },
      ),
      { numRuns: 150 },
    );
  }, 60_000);

  test('never binds at any angle once it has the clearance that the movement asks for', () => {
    fc.assert(
      fc.property(
        wood,
        wood,
        change,
        change,
        fc.double({ min: 0, max: Math.PI, noNaN: true }),
        (one, other, a, b, chi) => {
          const [recess, tenon] = [end(one, a), end(other, b)];
          const asked = gotten(clearanceForMovement(mm(50), recess, tenon));
          expect(gotten(leastClearance(mm(asked), mm(50), recess, tenon, rad(chi)))).toBeGreaterThan(-1e-9);
          const worst = Math.sign(a) === Math.sign(b) ? Math.PI / 2 : 0;
          if (one.tangential > one.radial === other.tangential > other.radial)
            expect(gotten(leastClearance(mm(asked), mm(50), recess, tenon, rad(worst)))).toBeCloseTo(0, 9);
        },
      ),
    );
  });

  test('one wood in line with itself never pinches', () => {
    const found = gotten(leastClearance(mm(0.3), mm(50), end(cherry, 4), end(cherry, 4), rad(0)));
    expect(found).toBeCloseTo(0.3, 9);
  });

  test('a season asks for the worse of drying and wetting', () => {
    const [lively, calm] = [
      { strain: maple, grain: 'end' },
      { strain: cherry, grain: 'end' },
    ] as const;
    const wet = gotten(clearanceForMovement(mm(50), end(maple, 3), end(cherry, 3)));
    const dry = gotten(clearanceForMovement(mm(50), end(maple, -3), end(cherry, -3)));
    expect(dry).toBeGreaterThan(wet);
    expect(gotten(clearanceForSeason(mm(50), lively, calm, moisture(3)))).toBeCloseTo(dry, 9);
    expect(gotten(clearanceForSeason(mm(50), calm, calm, moisture(3)))).toBeCloseTo(50 * 0.00122 * 3, 9);
    expect(gotten(clearanceForSeason(mm(50), calm, calm, moisture(0)))).toBe(0);
  });

  test('side grain moves by the whole of CT: cherry, 50 mm, 3 %, 0.37 mm', () => {
    const piece = { strain: cherry, grain: 'side' } as const;
    expect(gotten(clearanceForSeason(mm(50), piece, piece, moisture(3)))).toBeCloseTo(0.372, 9);
    const rim = gotten(rimAfter(mm(50), side(cherry, 3)));
    expect(rim.least).toBe(50);
    expect(rim.outOfRound).toBeCloseTo(0.372, 9);
  });

  test('side grain drifts out of pitch, end grain does not', () => {
    expect(gotten(pitchMismatch(mm(7.62), end(cherry, 3), end(maple, 3)))).toBe(0);
    expect(gotten(pitchMismatch(mm(7.62), side(cherry, 3), end(cherry, 3)))).toBeCloseTo(
      7.62 * 0.00248 * 3,
      9,
    );
  });

  test('a wood that dries shrinks, most along the rings', () => {
    const rim = gotten(rimAfter(mm(50), end(cherry, -4)));
    expect(rim.least).toBeCloseTo(50 * (1 - 4 * 0.00248), 9);
    expect(rim.greatest).toBeCloseTo(50 * (1 - 4 * 0.00126), 9);
  });
});

test('a wood that the tables lack is stood in for by the mean of its group', () => {
  expect(strainOf('Unobtainium')).toBeNull();
  for (const group of ['hardwood', 'softwood', 'tropical'] as const) {
    const usual = usualStrain(group);
    expect(usual.tangential).toBeGreaterThan(usual.radial);
    expect(usual.tangential).toBeLessThan(0.004);
  }
  expect(strainOf('Boxwood, European')).not.toBeNull();
});

test('what is no number, or no wood, is refused; no NaN comes out', () => {
  expect(refusalOf(rimAfter(mm(Number.NaN), end(cherry, 3)))).toMatchObject({ problem: 'not-a-number' });
  const any = fc.oneof(
    fc.double(),
    fc.double({ min: 0, max: 60, noNaN: true }),
    fc.double({ min: 0, max: 0.01, noNaN: true }),
  );
  const piece = fc.record({
    strain: fc.record({ radial: any, tangential: any }),
    grain: fc.constantFrom('end' as const, 'side' as const),
    change: any.map(moisture),
  });
  fc.assert(
    fc.property(piece, piece, any, any, any, (recess, tenon, a, b, c) => {
      const answers = [
        leastClearance(mm(a), mm(b), recess, tenon, rad(c)),
        clearanceForMovement(mm(b), recess, tenon),
        clearanceForSeason(mm(b), recess, tenon, moisture(c)),
        pitchMismatch(mm(a), recess, tenon),
        rimAfter(mm(b), recess),
      ];
      expect(numbersOf(answers).filter((value) => !Number.isFinite(value))).toEqual([]);
    }),
    { numRuns: 1000 },
  );
});
