import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitOf } from '../../../src/domain/joint/fit.ts';
import { planJoint } from '../../../src/domain/joint/plan.ts';
import type { PlanInput } from '../../../src/domain/joint/plan-input.ts';
import type { PlanWarning } from '../../../src/domain/joint/plan-warnings.ts';
import { inches, mm, mmFromInches, moisture, pitchFromTpi } from '../../../src/domain/units/brands.ts';
import { draws } from './draws.ts';
import { numbersOf } from './numbers.ts';
import { gotten, refusalOf } from './results.ts';
import { cherry, tenToTheInch } from './ten-to-the-inch.ts';

const toldAll: PlanInput = {
  ...tenToTheInch,
  outside: mm(56),
  dial: { travelPerTurn: mm(1.27), marksPerTurn: 50 },
  slide: { travel: mm(100), recessDial: 'other' },
};
const sixteenToTheInch: PlanInput = {
  ...toldAll,
  recess: mm(30),
  pitch: pitchFromTpi(16),
  cutter: { ...toldAll.cutter, radius: mm(10) },
  outside: mm(44),
};
const codes = (input: PlanInput): readonly PlanWarning['code'][] =>
  gotten(planJoint(input)).warnings.map(({ code }) => code);

describe('a plan agrees with common practice (no source)', () => {
  test('tenon = recess + about 0.097 in, depth about 0.063 in at 10 to the inch', () => {
    const { sizes, clearance } = gotten(planJoint(toldAll));
    expect(Math.abs(sizes.allowance - mmFromInches(inches(0.097)))).toBeLessThan(0.03);
    expect(Math.abs(sizes.depth - mmFromInches(inches(0.063)))).toBeLessThan(0.05);
    expect(clearance).toMatchObject({ from: 'usual' });
    expect(clearance.clearance).toBeGreaterThanOrEqual(0.3);
    expect(clearance.clearance).toBeLessThanOrEqual(0.4);
  });

  test('tenon = recess + 0.053 to 0.061 in, depth about 0.036 in at 16 to the inch', () => {
    const { sizes } = gotten(planJoint(sixteenToTheInch));
    expect(sizes.allowance).toBeGreaterThan(mmFromInches(inches(0.053)));
    expect(sizes.allowance).toBeLessThan(mmFromInches(inches(0.061)));
    expect(Math.abs(sizes.depth - mmFromInches(inches(0.036)))).toBeLessThan(0.03);
  });

  test('three threads at 10 to the inch are just under a third of an inch, about 8 mm', () => {
    const { lengths } = gotten(planJoint(toldAll));
    expect(lengths.thread).toBeLessThan(mmFromInches(inches(1 / 3)));
    expect(lengths.thread).toBeGreaterThan(7.5);
    expect(lengths.thread).toBeLessThan(8.5);
  });

  test('the relief is about one and a half widths of a 1/16 in parting tool, one pitch', () => {
    const { lengths } = gotten(planJoint(toldAll));
    const cuts = mmFromInches(inches(1.5 / 16));
    expect(Math.abs(lengths.reliefWidth - cuts)).toBeLessThan(0.2);
    expect(Math.abs(lengths.reliefWidth - toldAll.pitch)).toBeLessThan(0.2);
  });

  test('the least wall is 3 mm at 10 and 2.5 mm at 16 to the inch', () => {
    expect(gotten(planJoint(toldAll)).wall.least).toBeCloseTo(3, 9);
    expect(gotten(planJoint(sixteenToTheInch)).wall.least).toBeCloseTo(2.5, 9);
  });
});

describe('its sizes hang together', () => {
  const planned = () => gotten(planJoint(toldAll));

  test('the expected fit is the planned clearance and the helix widening on top', () => {
    const plan = planned();
    const helix = (2 * (plan.shifts.recess + plan.shifts.tenon)) / Math.tan(Math.PI / 6);
    expect(plan.fit.clearance).toBeCloseTo(plan.clearance.clearance + helix, 9);
    expect(helix).toBeGreaterThan(0);
  });

  test('axial lengths add up', () => {
    const { lengths } = planned();
    expect(lengths.reliefWidth).toBeCloseTo(1.9 + 2.54 / 4, 9);
    expect(lengths.tenonLength).toBeCloseTo(lengths.thread + lengths.reliefWidth, 9);
    expect(lengths.recessDepth).toBeCloseTo(lengths.recessThread + lengths.reliefWidth, 9);
    expect(lengths.bottomGap).toBeCloseTo(lengths.recessDepth - lengths.tenonLength, 9);
    expect(lengths.blank.cost).toBeCloseTo(lengths.tenonLength + 3.2, 9);
    expect(lengths.blank.tenonIn).toBe('base');
    expect(lengths.blank.tenon).toBeCloseTo(lengths.tenonLength, 9);
    expect(lengths.blank.kerfs).toBeCloseTo(3.2, 9);
    expect(gotten(planJoint({ ...toldAll, recessIn: 'base' })).lengths.blank.tenonIn).toBe('lid');
    expect(lengths.tenonTurns).toBeCloseTo(3.25, 9);
    expect(lengths.recessTurns).toBeCloseTo(lengths.recessThread / 2.54 + 0.25, 9);
    expect(lengths.recessThread).toBeCloseTo(3 * 2.54 + lengths.reliefWidth, 9);
  });

  test('reliefs go past the root by 0.2 to 0.3 mm, chamfers end on it', () => {
    const { lengths, sizes } = planned();
    for (const past of [
      (lengths.recessReliefDiameter - lengths.recessChamferDiameter) / 2,
      (lengths.tenonChamferDiameter - lengths.tenonReliefDiameter) / 2,
    ]) {
      expect(past).toBeGreaterThanOrEqual(0.2);
      expect(past).toBeLessThanOrEqual(0.3);
    }
    expect(lengths.recessChamferDiameter).toBeCloseTo(40 + 2 * sizes.depth, 9);
    expect(lengths.tenonChamferDiameter).toBeCloseTo(sizes.tenon - 2 * sizes.depth, 9);
  });

  test('the work axis stands at cutter plus work radius, or at their difference', () => {
    const plan = planned();
    expect(plan.places.tenon).toBeCloseTo(15 + plan.sizes.tenon / 2, 9);
    expect(plan.places.recess).toBeCloseTo(5, 9);
    expect(plan.places.travel).toBeCloseTo(plan.places.tenon - plan.places.recess, 9);
    const across = planJoint({ ...toldAll, slide: { travel: mm(100), recessDial: 'same' } });
    expect(gotten(across).places.travel).toBeCloseTo(plan.places.tenon + 5 + plan.sizes.depth, 9);
  });

  test('two thirds, then one third, in dial marks', () => {
    const plan = planned();
    expect(plan.passes.map(({ depth }) => depth / plan.sizes.depth)).toEqual([2 / 3, 1]);
    const last = plan.passes.at(-1)?.dial;
    expect(last?.turns).toBeCloseTo(plan.sizes.depth / 1.27, 9);
    expect((last?.wholeTurns ?? 0) * 50 + (last?.marks ?? 0)).toBeCloseTo((plan.sizes.depth / 1.27) * 50, 0);
  });

  test('in the manner that the turner likes, and without a dial when none is known', () => {
    const depthsBy = (passes: PlanInput['passes']) => {
      const plan = gotten(planJoint({ ...toldAll, passes, dial: null }));
      expect(plan.passes.map(({ dial }) => dial)).toEqual(plan.passes.map(() => null));
      return plan.passes.map(({ depth }) => depth / plan.sizes.depth);
    };
    expect(depthsBy('crumbly')).toEqual([0.6, 0.9, 1].map((share) => expect.closeTo(share, 12)));
    // With a tip flat of 0.2 mm, half the chip is cut at 0.68 of a depth of 1.6 mm: 0.2 d + d^2 tan 30.
    expect(depthsBy('equal-area')).toEqual([expect.closeTo(0.679, 2), 1]);
    expect(refusalOf(planJoint({ ...toldAll, dial: { travelPerTurn: mm(0) } }))).toMatchObject({
      field: 'travelPerTurn',
    });
  });

  test("a turner's own depth gives the tenon that suits it", () => {
    const depth = mmFromInches(inches(0.075));
    const own = gotten(planJoint({ ...toldAll, aim: { by: 'depth', depth, clearance: mm(0.3) } }));
    expect(own.sizes.depth).toBeCloseTo(depth, 9);
    const cut = { depth, tipFlat: mm(0.2) };
    const fit = fitOf({
      pitch: toldAll.pitch,
      recess: { ...cut, diameter: mm(40) },
      tenon: { ...cut, diameter: own.sizes.tenon },
    });
    expect(gotten(fit).clearance).toBeCloseTo(0.3, 9);
  });

  test('a wide box in a lively wood gets the clearance that the season asks for', () => {
    const { clearance, warnings } = gotten(
      planJoint({ ...toldAll, recess: mm(90), outside: null, moistureSwing: moisture(4) }),
    );
    expect(clearance.from).toBe('season');
    expect(clearance.budget.oval).toBeCloseTo(90 * 0.00122 * 4, 9);
    expect(clearance.clearance).toBeCloseTo(clearance.budget.toCut, 9);
    expect(warnings).toEqual([]);
  });
});

describe('what a turner should know is told', () => {
  test('of a season: binding is what the wood does by itself, running tight is with the lean that may be left', () => {
    const ofWanted = (clearance: number) => {
      const aim = { by: 'fit', clearance: mm(clearance) } as const;
      const { warnings, clearance: planned } = gotten(planJoint({ ...toldAll, aim }));
      const eaten = warnings.find(({ code }) => code === 'clearance-eaten-by-season');
      return { eaten, budget: planned.budget };
    };
    const { budget } = ofWanted(0.3);
    const byWoodAlone = budget.oval - budget.helix;
    expect(ofWanted(budget.toCut + 0.001).eaten).toBeUndefined();
    expect(ofWanted(byWoodAlone + 0.01).eaten).toMatchObject({ left: expect.closeTo(0.01, 2) });
    expect(ofWanted(byWoodAlone - 0.01).eaten).toMatchObject({ left: expect.closeTo(-0.01, 2) });
  });

  test('nothing, of an ordinary box', () => {
    expect(codes(sixteenToTheInch)).toEqual([]);
  });

  test.each<[PlanWarning['code'], Partial<PlanInput>]>([
    ['wall-thin', { outside: mm(48) }],
    ['engagement-low', { aim: { by: 'depth', depth: mm(1.2), clearance: null } }],
    ['clearance-eaten-by-season', { recess: mm(90), outside: null, aim: { by: 'fit', clearance: mm(0.2) } }],
    ['tenon-longer-than-recess', { turnedDepth: mm(8) }],
    ['cutter-rubs', { recess: mm(32), outside: null }],
    ['neck-touches', { cutter: { ...toldAll.cutter, neckRadius: mm(14) } }],
    ['crest-thin', { aim: { by: 'depth', depth: mm(1.95), clearance: mm(0.4) } }],
    ['relief-wide', { cutter: { ...toldAll.cutter, aheadOfTooth: mm(4) } }],
    ['slide-short', { slide: { travel: mm(20), recessDial: 'other' } }],
    ['side-grain', { woodOfTenon: { ...cherry, grain: 'side' } }],
  ])('%s', (code, change) => {
    expect(codes({ ...toldAll, cutter: { ...toldAll.cutter, radius: mm(12) } })).not.toContain(code);
    expect(codes({ ...toldAll, ...change })).toContain(code);
  });

  test('with the numbers that made it so', () => {
    const [wall] = gotten(planJoint({ ...toldAll, outside: mm(48) })).warnings;
    expect(wall).toMatchObject({ code: 'wall-thin', least: 3 });
    if (wall?.code !== 'wall-thin') throw new Error('no wall');
    expect(codes({ ...toldAll, outside: mm(wall.outside + 0.001) })).not.toContain('wall-thin');
  });

  const warningOf = <C extends PlanWarning['code']>(code: C, change: Partial<PlanInput>) => {
    const { warnings } = gotten(planJoint({ ...toldAll, ...change }));
    const found = warnings.find((warning): warning is PlanWarning & { code: C } => warning.code === code);
    if (!found) throw new Error(`no ${code}`);
    return found;
  };

  test('from the recess that a warning names upward, the cutter no longer rubs', () => {
    const { recess, shift, most } = warningOf('cutter-rubs', { recess: mm(32), outside: null });
    expect(shift).toBeGreaterThan(most);
    const at = (diameter: number) => codes({ ...toldAll, recess: mm(diameter), outside: null });
    expect(at(recess + 0.01)).not.toContain('cutter-rubs');
    expect(at(recess - 0.01)).toContain('cutter-rubs');
  });

  test('a relief may be one and a half pitches wide', () => {
    const wide = { ...toldAll.cutter, aheadOfTooth: mm(4) };
    expect(warningOf('relief-wide', { cutter: wide })).toMatchObject({
      width: expect.closeTo(4 + 2.54 / 4, 9),
      most: expect.closeTo(1.5 * 2.54, 9),
    });
  });

  test('a neck that stays off the wood is no matter', () => {
    const slim = { ...toldAll.cutter, neckRadius: mm(10) };
    expect(codes({ ...toldAll, cutter: slim })).not.toContain('neck-touches');
  });

  test('side grain in the recess is told of as well as in the tenon', () => {
    expect(codes({ ...toldAll, woodOfRecess: { ...cherry, grain: 'side' } })).toContain('side-grain');
  });
});

describe('what cannot be is refused, with the nearest that can', () => {
  test('a cutter that cannot enter', () => {
    const refusal = refusalOf(
      planJoint({ ...toldAll, recess: mm(15), cutter: { ...toldAll.cutter, radius: mm(8) } }),
    );
    expect(refusal).toMatchObject({
      problem: 'conflict',
      field: 'recess',
      other: 'cutterRadius',
      nearest: 17,
    });
  });

  test('a depth beyond the V', () => {
    const deep = { ...toldAll, aim: { by: 'depth', depth: mm(2.5), clearance: mm(0.3) } } as const;
    const refusal = refusalOf(planJoint(deep));
    expect(refusal).toMatchObject({ problem: 'conflict', field: 'depth', other: 'pitch' });
  });

  test('crests that would cross, and the depth that would not', () => {
    const deep = { ...toldAll, aim: { by: 'depth', depth: mm(1.98), clearance: mm(0.05) } } as const;
    const refusal = refusalOf(planJoint(deep));
    expect(refusal).toMatchObject({ problem: 'conflict', field: 'depth', other: 'tipFlat', otherGiven: 0.2 });
    if (refusal.problem !== 'conflict' || refusal.nearest === null) throw new Error('no nearest');
    const nearest = mm(refusal.nearest);
    const plan = gotten(planJoint({ ...deep, aim: { ...deep.aim, depth: nearest } }));
    expect(plan.sizes.crestGap).toBeCloseTo(0, 6);
  });

  test('a box with no wall left', () => {
    const refusal = refusalOf(planJoint({ ...toldAll, outside: mm(43) }));
    expect(refusal).toMatchObject({ problem: 'conflict', field: 'outside', other: 'recess' });
  });

  test('fewer than three threads', () => {
    expect(refusalOf(planJoint({ ...toldAll, threads: 2.5 }))).toMatchObject({
      problem: 'out-of-range',
      field: 'threads',
      min: 3,
    });
  });

  test('a pitch too coarse for the tenon to keep a core', () => {
    const refusal = refusalOf(
      planJoint({
        ...toldAll,
        recess: mm(5),
        outside: null,
        pitch: mm(6),
        cutter: { ...toldAll.cutter, radius: mm(2) },
      }),
    );
    expect(refusal.problem).not.toBe('not-a-number');
  });
});

test('no NaN comes out, whatever goes in', () => {
  const any = fc.oneof(
    fc.double(),
    fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, 0, -1),
    fc.double({ min: 0, max: 100, noNaN: true }),
  );
  const length = any.map(mm);
  const maybe = fc.option(length);
  const piece = fc.record({
    strain: fc.record({ radial: any, tangential: any }),
    grain: fc.constantFrom('end' as const, 'side' as const),
  });
  const sane = <T>(usual: T, wild: fc.Arbitrary<T>) =>
    fc.oneof({ weight: 25, arbitrary: fc.constant(usual) }, wild);
  const input: fc.Arbitrary<PlanInput> = fc.record({
    recess: fc.oneof(length, fc.double({ min: 10, max: 120, noNaN: true }).map(mm)),
    pitch: sane(pitchFromTpi(10), length),
    woodOfRecess: sane(cherry, piece) as fc.Arbitrary<PlanInput['woodOfRecess']>,
    woodOfTenon: sane(cherry, piece) as fc.Arbitrary<PlanInput['woodOfTenon']>,
    moistureSwing: sane(moisture(3), any.map(moisture)),
    cutter: sane(
      toldAll.cutter,
      fc.record({ radius: length, tipFlat: length, aheadOfTooth: length, neckRadius: maybe }),
    ),
    aim: fc.oneof(
      fc.constant(toldAll.aim),
      fc.record({ by: fc.constant('fit' as const), clearance: maybe }),
      fc.record({ by: fc.constant('depth' as const), depth: length, clearance: maybe }),
    ),
    recessIn: fc.constantFrom('lid' as const, 'base' as const),
    threads: sane(3, any),
    kerf: sane(mm(1.6), length),
    film: sane(mm(0), length),
    outside: sane(null, maybe),
    turnedDepth: sane(null, maybe),
    passes: fc.constantFrom('two-thirds' as const, 'equal-area' as const, 'crumbly' as const),
    dial: fc.option(fc.record({ travelPerTurn: sane(mm(1.27), length), marksPerTurn: sane(50, any) })),
    slide: fc.option(
      fc.record({
        travel: sane(mm(80), length),
        recessDial: fc.constantFrom('same' as const, 'other' as const),
      }),
    ),
  });
  let planned = 0;
  fc.assert(
    fc.property(input, (given) => {
      const plan = planJoint(given);
      if (plan.ok) planned++;
      expect(numbersOf(plan).filter((value) => !Number.isFinite(value))).toEqual([]);
    }),
    { numRuns: 30 * draws },
  );
  expect(planned).toBeGreaterThan(draws);
}, 60_000);
