import fc from 'fast-check';
import { expect, test } from 'vitest';
import { slipAllowance } from '../../../src/domain/box/slip-allowance.ts';
import { mm } from '../../../src/domain/units/brands.ts';

const depths = (...list: number[]) => list.map(mm);

test('no groove, nothing to miss', () => expect(slipAllowance(null, depths(1.0667, 1.6))).toBeNull());

test('after 2/3 of 1.6 mm the last pass absorbs 0.308 mm (geometric model of the project, simulated)', () => {
  expect(slipAllowance(mm(1.0667), depths(1.0667, 1.6))).toEqual({
    passesLeft: 1,
    absorbed: expect.closeTo(0.308, 3),
  });
});

test('several passes to come absorb together what the deepest of them does', () => {
  expect(slipAllowance(mm(0.96), depths(0.96, 1.44, 1.6))).toEqual({
    passesLeft: 2,
    absorbed: expect.closeTo((1.6 - 0.96) / Math.sqrt(3), 9),
  });
});

test('at full depth, or past it, nothing is absorbed', () => {
  expect(slipAllowance(mm(1.6), depths(1.0667, 1.6))).toEqual({ passesLeft: 0, absorbed: 0 });
  expect(slipAllowance(mm(1.7), depths(1.0667, 1.6))).toEqual({ passesLeft: 0, absorbed: 0 });
  // A dial is not set closer than a hundredth.
  expect(slipAllowance(mm(1.595), depths(1.0667, 1.6))).toEqual({ passesLeft: 0, absorbed: 0 });
});

test('any numbers at all: a finite amount or no answer, less the deeper the groove is', () => {
  const depth = fc.oneof(fc.double(), fc.double({ min: 0, max: 3, noNaN: true }));
  fc.assert(
    fc.property(depth, fc.array(depth, { maxLength: 4 }), (reached, planned) => {
      const found = slipAllowance(mm(reached), depths(...planned));
      if (found) expect(Number.isFinite(found.absorbed) && found.absorbed >= 0).toBe(true);
    }),
  );
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1.6, noNaN: true }),
      fc.double({ min: 0, max: 1.6, noNaN: true }),
      (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((at) => slipAllowance(mm(at), depths(1.6)));
        expect(less?.absorbed).toBeGreaterThanOrEqual(more?.absorbed ?? Number.NaN);
      },
    ),
  );
});
