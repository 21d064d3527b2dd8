import { describe, expect, test } from 'vitest';
import { axialGap } from '../../../src/domain/alignment/play.ts';
import { leanLimits } from '../../../src/domain/alignment/tolerance.ts';
import { planClearance, shiftsOf } from '../../../src/domain/joint/plan-clearance.ts';
import type { PlanInput } from '../../../src/domain/joint/plan-input.ts';
import { SLOPE } from '../../../src/domain/joint/profile.ts';
import { tenonFromDepth } from '../../../src/domain/joint/sizes.ts';
import { mm, rad } from '../../../src/domain/units/brands.ts';
import { gotten, refusalOf } from './results.ts';
import { tenToTheInch } from './ten-to-the-inch.ts';

const P = 2.54;
const wood = (tangential: number) => ({ strain: { radial: 0, tangential }, grain: 'end' }) as const;
const input: PlanInput = { ...tenToTheInch, woodOfRecess: wood(0.002), woodOfTenon: wood(0.002) };
const none = { recess: mm(0), tenon: mm(0) };
const sizes = gotten(
  tenonFromDepth({ pitch: mm(P), tipFlat: mm(0.2) }, { recess: mm(40), clearance: mm(0.3) }, mm(1.6)),
);
/** In one setting on opposite walls: leans cancel. */
const steady = { ...input, mismatch: rad(0) };

describe('helix widening of a plan', () => {
  test('is taken half way up the engaged flank, on both pieces', () => {
    const t = Math.tan(Math.PI / 6);
    const middle = sizes.engagedHeight / 2;
    const cutter = 15 - 1.6 + middle;
    const shift = (radius: number, sign: 1 | -1) =>
      (P / (2 * Math.PI * radius)) ** 2 / (2 * t * (1 / cutter + sign / radius));
    const shifts = gotten(shiftsOf(input, sizes));
    expect(shifts.recess).toBeCloseTo(shift(20 + middle, -1), 12);
    expect(shifts.tenon).toBeCloseTo(shift(sizes.tenon / 2 - middle, 1), 12);
    const big = { ...input, cutter: { ...input.cutter, radius: mm(40) } };
    expect(refusalOf(shiftsOf(big, sizes))).toMatchObject({ field: 'cutterRadius', other: 'workRadius' });
  });
});

describe('clearance of a plan', () => {
  test('what is wanted is taken as it is', () => {
    const wanted = { ...input, aim: { by: 'fit', clearance: mm(0.27) } } as const;
    expect(gotten(planClearance(wanted, sizes, none))).toMatchObject({ clearance: 0.27, from: 'wanted' });
  });

  test('the usual one, more where the season asks for it, and never more than twice the most usual', () => {
    const at = (tangential: number) =>
      gotten(
        planClearance(
          { ...steady, woodOfRecess: wood(tangential), woodOfTenon: wood(tangential) },
          sizes,
          none,
        ),
      );
    // 40 mm x strain x 3 points and 0.1 mm to run.
    expect(at(0.001)).toMatchObject({ from: 'usual', clearance: expect.closeTo(0.35, 9) });
    expect(at(0.003)).toMatchObject({ from: 'season', clearance: expect.closeTo(0.46, 9) });
    expect(at(0.01)).toMatchObject({ from: 'season', clearance: expect.closeTo(0.8, 9) });
  });

  test('a film counts eight times on the flanks, and the helix gives some back', () => {
    const { budget } = gotten(
      planClearance({ ...input, film: mm(0.02) }, sizes, {
        recess: mm(0.01),
        tenon: mm(0.02),
      }),
    );
    expect(budget.film).toBeCloseTo(0.16, 12);
    expect(budget.helix).toBeCloseTo(0.06 * Math.sqrt(3), 12);
    expect(refusalOf(planClearance({ ...input, film: mm(2) }, sizes, none))).toMatchObject({ field: 'film' });
  });

  test('leans that differ by a known angle take 2.309 he a radian; unknown, a quarter of the usual clearance is kept for them', () => {
    const budgetOf = (mismatch?: number) =>
      gotten(
        planClearance(mismatch === undefined ? input : { ...input, mismatch: rad(mismatch) }, sizes, none),
      ).budget;
    expect(budgetOf(0).mismatch).toBe(0);
    expect(budgetOf(0.02).mismatch).toBeCloseTo((4 / Math.sqrt(3)) * sizes.engagedHeight * 0.02, 12);
    expect(budgetOf().mismatch).toBeCloseTo(0.35 / 4, 12);
    expect(budgetOf().toCut).toBeCloseTo(budgetOf(0).toCut + 0.35 / 4, 12);
    expect(refusalOf(planClearance({ ...input, mismatch: rad(1) }, sizes, none))).toMatchObject({
      field: 'mismatch',
    });
  });

  test('a thread so shallow that hardly any lean could bind it is planned all the same', () => {
    const shallow = { ...sizes, engagedHeight: mm(0.01) };
    const { mismatch } = gotten(planClearance(input, shallow, none)).budget;
    expect(mismatch).toBeLessThan(0.02);
    expect(mismatch).toBeGreaterThan(0);
  });

  test('what is kept for lean is what a set-up may pass with', () => {
    const joint = {
      pitch: mm(P),
      hand: 'right',
      opening: mm(40),
      tenon: sizes.tenon,
      depth: sizes.depth,
      clearance: mm(0.35),
      threads: 3,
      cutterRadius: mm(15),
      shoulder: mm(50),
    } as const;
    const { mismatch } = gotten(leanLimits(joint));
    expect(gotten(planClearance(input, sizes, none)).budget.mismatch).toBeCloseTo(
      gotten(axialGap(sizes.engagedHeight, mismatch)) / SLOPE,
      9,
    );
  });
});
