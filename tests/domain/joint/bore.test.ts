import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreOf } from '../../../src/domain/box/measured.ts';
import { type BoreMeasure, type Caliper, tenonForBore } from '../../../src/domain/joint/bore.ts';
import { fitOf } from '../../../src/domain/joint/fit.ts';
import { checkTenon } from '../../../src/domain/joint/tenon-check.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { numbersOf } from './numbers.ts';
import { gotten, refusalOf } from './results.ts';

const caliper: Caliper = { insideMinusOutside: null, uncertainty: mm(0.03) };
const read = (where: BoreMeasure['where'], along: number, across: number | null = null): BoreMeasure => ({
  where,
  along: mm(along),
  across: across === null ? null : mm(across),
  overCrests: false,
});

describe('a bore from its readings', () => {
  test('one reading is its mean, and says nothing of taper or roundness', () => {
    expect(gotten(boreOf([read('mouth', 40)], caliper))).toEqual({
      mean: 40,
      least: 40,
      outOfRound: null,
      taper: null,
      overCrests: false,
      uncertainty: 0.03,
    });
  });

  test('mean, taper and out-of-round of four', () => {
    const bore = gotten(boreOf([read('mouth', 40.2, 40.1), read('relief', 40.04, 40.0)], caliper));
    expect(bore.mean).toBeCloseTo((40.15 + 40.02) / 2, 9);
    expect(bore.taper).toBeCloseTo(0.13, 9);
    expect(bore.outOfRound).toBeCloseTo(0.1, 9);
    expect(bore.least).toBeCloseTo(40, 9);
    // Two readings of 0.03, half the out-of-round and half the taper, in quadrature.
    expect(bore.uncertainty).toBeCloseTo(Math.hypot(0.03 / Math.SQRT2, 0.05, 0.065), 9);
  });

  test('the relief alone says nothing of taper', () => {
    expect(gotten(boreOf([read('relief', 40)], caliper))).toMatchObject({ mean: 40, taper: null });
  });

  test('a place read often weighs no more than one read once', () => {
    const often = [read('mouth', 40.1), read('mouth', 40.1), read('mouth', 40.1), read('relief', 40)];
    expect(gotten(boreOf(often, caliper)).mean).toBeCloseTo(40.05, 9);
  });

  test('readings over crests give way to plain ones, and widen the doubt alone', () => {
    const fuzzy = { ...read('mouth', 39.8), overCrests: true };
    expect(gotten(boreOf([fuzzy, read('mouth', 40)], caliper))).toMatchObject({
      mean: 40,
      overCrests: false,
    });
    const alone = gotten(boreOf([fuzzy], caliper));
    expect(alone).toMatchObject({ mean: 39.8, overCrests: true });
    expect(alone.uncertainty).toBeCloseTo(Math.hypot(0.03, 0.05), 9);
  });

  test("the caliper's offset comes off, and cancels when it is zeroed on the bore", () => {
    const offset = { ...caliper, insideMinusOutside: mm(-0.06) };
    const bore = gotten(boreOf([read('mouth', 39.94)], offset));
    expect(bore.mean).toBeCloseTo(40, 9);
    expect(bore.least).toBeCloseTo(40, 9);
    const target = gotten(tenonForBore(bore, mm(2.47), mm(0.3), offset));
    expect(target.tenon).toBeCloseTo(42.47, 9);
    // What an outside reading of that tenon shows after a zero on the inside reading of 39.94.
    expect(39.94 + target.fromZero).toBeCloseTo(target.tenon, 9);
    expect(target.tolerance).toBeCloseTo(0.075, 9);
  });

  test('no readings, or one that is no bore, is refused', () => {
    expect(refusalOf(boreOf([], caliper))).toEqual({ problem: 'empty', field: 'bore' });
    expect(refusalOf(boreOf([read('mouth', 0)], caliper))).toMatchObject({ field: 'along' });
    expect(refusalOf(boreOf([read('mouth', 40), read('relief', 0)], caliper))).toMatchObject({
      field: 'along',
    });
    expect(refusalOf(boreOf([read('mouth', 40, Number.NaN)], caliper))).toMatchObject({ field: 'across' });
  });
});

describe('a tenon before it is threaded', () => {
  const cut = { depth: mm(1.633), tipFlat: mm(0.2) };
  const planned = {
    pitch: mm(2.54),
    recess: { ...cut, diameter: mm(40) },
    tenon: { ...cut, diameter: mm(42.4747) },
  };

  const turned = (diameter: number) => ({ mean: mm(diameter), taper: null });

  test('over size takes as much from the clearance; half as much more depth gives it back', () => {
    const plannedFit = gotten(fitOf(planned));
    const check = gotten(checkTenon(turned(42.5747), planned, mm(0.05)));
    expect(check.size).toBe('over');
    expect(check.fit.clearance).toBeCloseTo(plannedFit.clearance - 0.1, 9);
    const deeper = { ...planned.tenon, diameter: mm(42.5747), depth: check.depth };
    expect(gotten(fitOf({ ...planned, tenon: deeper })).clearance).toBeCloseTo(plannedFit.clearance, 9);
  });

  test('under size adds to it; within tolerance is right', () => {
    expect(gotten(checkTenon(turned(42.3), planned, mm(0.05)))).toMatchObject({
      size: 'under',
      mend: null,
    });
    expect(gotten(checkTenon(turned(42.5), planned, mm(0.05))).size).toBe('right');
  });

  test('off by all of the tolerance is still right', () => {
    const round = { ...planned, tenon: { ...cut, diameter: mm(42.5) } };
    expect(gotten(checkTenon(turned(42.75), round, mm(0.25))).size).toBe('right');
    expect(gotten(checkTenon(turned(42.25), round, mm(0.25))).size).toBe('right');
  });
});

test('no NaN comes out, whatever goes in', () => {
  const any = fc.oneof(fc.double(), fc.double({ min: 0, max: 100, noNaN: true })).map(mm);
  const measure = fc.record({
    where: fc.constantFrom('mouth' as const, 'relief' as const),
    along: any,
    across: fc.option(any),
    overCrests: fc.boolean(),
  });
  const tool = fc.record({ insideMinusOutside: fc.option(any), uncertainty: any });
  fc.assert(
    fc.property(
      fc.array(measure, { maxLength: 4 }),
      tool,
      any,
      any,
      (measures, used, allowance, clearance) => {
        const bore = boreOf(measures, used);
        const answers = [bore, bore.ok ? tenonForBore(bore.value, allowance, clearance, used) : null];
        expect(numbersOf(answers).filter((value) => !Number.isFinite(value))).toEqual([]);
      },
    ),
  );
});
