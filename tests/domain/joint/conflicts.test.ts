import { describe, expect, test } from 'vitest';
import { flankShift } from '../../../src/domain/joint/helix.ts';
import { passDepths } from '../../../src/domain/joint/passes.ts';
import { planJoint } from '../../../src/domain/joint/plan.ts';
import type { PlanInput } from '../../../src/domain/joint/plan-input.ts';
import { crestFromDepth, depthFromCrest } from '../../../src/domain/joint/profile.ts';
import { planSeat } from '../../../src/domain/joint/seat.ts';
import { tenonFromDepth, tenonFromEngagement } from '../../../src/domain/joint/sizes.ts';
import { learnTipFlat } from '../../../src/domain/joint/tip-flat.ts';
import type { Refusal } from '../../../src/domain/result.ts';
import { mm, rad } from '../../../src/domain/units/brands.ts';
import { gotten, refusalOf } from './results.ts';
import { tenToTheInch } from './ten-to-the-inch.ts';

const t = Math.tan(Math.PI / 6);
const P = 2.54;
const form = { pitch: mm(P), tipFlat: mm(0.2) };
const wanted = (clearance: number) => ({ recess: mm(40), clearance: mm(clearance) });

const conflict = (
  [field, given]: [string, number],
  [other, otherGiven]: [string, number],
  nearest: number | null,
  quantity = 'length',
) => ({
  problem: 'conflict',
  field,
  given,
  other,
  otherGiven,
  nearest: nearest === null ? null : expect.closeTo(nearest, 9),
  quantity,
});
const nearestOf = (refusal: Refusal): number =>
  refusal.problem === 'conflict' && refusal.nearest !== null ? refusal.nearest : Number.NaN;

describe('two numbers that cannot both be: which two, and the nearest that can', () => {
  test('a tip as wide as the pitch leaves nothing to offer', () => {
    expect(refusalOf(depthFromCrest({ pitch: mm(1), tipFlat: mm(1) }, mm(0)))).toEqual(
      conflict(['tipFlat', 1], ['pitch', 1], null),
    );
  });

  test('crest and tip wider than the pitch; just as wide is a depth of nothing', () => {
    expect(refusalOf(depthFromCrest(form, mm(2.4)))).toEqual(
      conflict(['crestFlat', 2.4], ['tipFlat', 0.2], 2.34),
    );
    expect(gotten(depthFromCrest({ pitch: mm(2), tipFlat: mm(0.5) }, mm(1.5)))).toBe(0);
  });

  test('a depth beyond the V', () => {
    const refusal = refusalOf(crestFromDepth(form, mm(2.2)));
    expect(refusal).toEqual(conflict(['depth', 2.2], ['pitch', P], 2.34 / (2 * t)));
    expect(gotten(crestFromDepth(form, mm(nearestOf(refusal))))).toBeCloseTo(0, 12);
  });

  test('a depth so shallow that the teeth would not reach each other', () => {
    const refusal = refusalOf(tenonFromDepth(form, wanted(1), mm(0.2)));
    const least = (P / 2 - 0.2 + t / 2) / (2 * t);
    expect(refusal).toEqual(conflict(['depth', 0.2], ['clearance', 1], least));
    expect(gotten(tenonFromDepth(form, wanted(1), mm(least + 1e-6))).engagedHeight).toBeGreaterThan(0);
    expect(refusalOf(tenonFromDepth(form, wanted(1), mm(least - 1e-6)))).toMatchObject({ field: 'depth' });
  });

  test('a depth so deep that crests would meet roots', () => {
    const refusal = refusalOf(tenonFromDepth(form, wanted(0.1), mm(2)));
    expect(refusal).toEqual(conflict(['depth', 2], ['tipFlat', 0.2], (P - 0.4 + 0.1 * t) / (2 * t)));
    expect(gotten(tenonFromDepth(form, wanted(0.1), mm(nearestOf(refusal)))).crestGap).toBeCloseTo(0, 9);
  });

  test('an engagement that the tip does not leave room for', () => {
    const refusal = refusalOf(tenonFromEngagement(form, wanted(0.1), 130, '0.75H'));
    const highest = (P - 0.4 + 0.2 * t) / (2 * t) - 0.05;
    expect(refusal).toEqual(
      conflict(['engagement', 130], ['tipFlat', 0.2], (100 * highest) / ((0.75 * P) / (2 * t)), 'percent'),
    );
    expect(gotten(tenonFromEngagement(form, wanted(0.1), nearestOf(refusal), '0.75H')).crestGap).toBeCloseTo(
      0,
      9,
    );
  });

  test('an engagement that the clearance does not leave room for, where the tip would', () => {
    const sharp = { pitch: mm(P), tipFlat: mm(0.05) };
    const refusal = refusalOf(tenonFromEngagement(sharp, wanted(0.3), 150, '0.75H'));
    expect(refusal).toMatchObject({ field: 'engagement', other: 'clearance', otherGiven: 0.3 });
    expect(
      gotten(tenonFromEngagement(sharp, wanted(0.3), nearestOf(refusal), '0.75H')).crestFlat,
    ).toBeCloseTo(0, 9);
  });

  test('no engagement at all, or a tip too wide for any, has no nearest', () => {
    expect(refusalOf(tenonFromEngagement(form, wanted(0.3), 0, '0.75H'))).toEqual(
      conflict(['engagement', 0], ['clearance', 0.3], null, 'percent'),
    );
    const blunt = { pitch: mm(P), tipFlat: mm(2) };
    expect(refusalOf(tenonFromEngagement(blunt, wanted(0.3), 1, '0.75H'))).toMatchObject({
      field: 'engagement',
      nearest: null,
    });
  });
});

describe('the same of cutters, passes and seats', () => {
  test('a scrap pair with less play than a sharp tip leaves, or more than one half the pitch wide', () => {
    const scrap = {
      pitch: mm(P),
      recess: mm(40),
      tenon: mm(42.4747),
      recessDepth: mm(1.6),
      tenonDepth: mm(1.6),
    };
    const slack = refusalOf(learnTipFlat({ ...scrap, endPlay: mm(3) }));
    const reach = t * (40 - 42.4747 + 6.4);
    expect(slack).toEqual(conflict(['endPlay', 3], ['tenon', 42.4747], reach));
    expect(gotten(learnTipFlat({ ...scrap, endPlay: mm(nearestOf(slack) - 1e-9) })).tipFlat).toBeCloseTo(
      P / 2,
      6,
    );
    const shallow = { ...scrap, recessDepth: mm(0.5), tenonDepth: mm(0.5) };
    // So shallow that any tip below half the pitch would bind: no play at all is the nearest.
    expect(nearestOf(refusalOf(learnTipFlat({ ...shallow, endPlay: mm(1) })))).toBe(0);
    const tight = refusalOf(learnTipFlat({ ...scrap, tenon: mm(41), endPlay: mm(0) }));
    expect(tight).toEqual(conflict(['endPlay', 0], ['tenon', 41], t * (40 - 41 + 6.4) - P));
  });

  test('a cutter as big as its recess; a tenon takes one of any size', () => {
    const cut = { pitch: mm(P), workRadius: mm(20), cutterRadius: mm(20) };
    expect(refusalOf(flankShift({ ...cut, part: 'recess' }))).toEqual(
      conflict(['cutterRadius', 20], ['workRadius', 20], 19),
    );
    expect(gotten(flankShift({ ...cut, part: 'tenon' }))).toBeGreaterThan(0);
  });

  test('passes beyond the V', () => {
    const deepest = 2.34 / (2 * t);
    expect(refusalOf(passDepths({ form, depth: mm(2.2) }, { by: 'crumbly' }))).toEqual(
      conflict(['depth', 2.2], ['pitch', P], deepest),
    );
    expect(gotten(passDepths({ form, depth: mm(deepest) }, { by: 'crumbly' })).at(-1)).toBe(deepest);
  });

  test('grain just as far off as there is room for; floor and thread that stop it together', () => {
    const room = { bottomGap: mm(1.3), freeThread: mm(1.3 - 0.3) };
    const seat = gotten(planSeat(mm(P), { toGo: rad(1) }, 'figure', room, mm(0.05)));
    expect(seat).toMatchObject({ limitedBy: 'floor', most: 1 });
  });

  test('grain further off than the room there is to turn', () => {
    const at = { toGo: rad(5) };
    expect(
      refusalOf(planSeat(mm(P), at, 'figure', { bottomGap: mm(0.8), freeThread: mm(3) }, mm(0.05))),
    ).toEqual(conflict(['toGo', 5], ['bottomGap', 0.8], (2 * Math.PI * 0.5) / P, 'angle'));
    expect(
      refusalOf(planSeat(mm(P), at, 'figure', { bottomGap: mm(3), freeThread: mm(0.4) }, mm(0.05))),
    ).toEqual(conflict(['toGo', 5], ['freeThread', 0.4], (2 * Math.PI * 0.4) / P, 'angle'));
  });
});

describe('the same of a whole plan', () => {
  const input: PlanInput = {
    ...tenToTheInch,
    cutter: { ...tenToTheInch.cutter, radius: mm(12) },
    aim: { by: 'fit', clearance: mm(0.3) },
  };

  test('a cutter that cannot enter: half a millimetre of room is the least', () => {
    const big = { ...input.cutter, radius: mm(20) };
    expect(refusalOf(planJoint({ ...input, cutter: big }))).toEqual(
      conflict(['recess', 40], ['cutterRadius', 20], 41),
    );
    gotten(planJoint({ ...input, cutter: { ...big, radius: mm(19.5) } }));
  });

  test('an outside with no wood left, and the one that leaves the least wall', () => {
    const { lengths, wall } = gotten(planJoint(input));
    const least = lengths.recessReliefDiameter + 2 * wall.least;
    expect(refusalOf(planJoint({ ...input, outside: mm(43) }))).toEqual(
      conflict(['outside', 43], ['recess', 40], least),
    );
    expect(gotten(planJoint({ ...input, outside: mm(least) })).wall.wall).toBeCloseTo(wall.least, 9);
  });

  test('fewer than three threads, counted in turns', () => {
    expect(refusalOf(planJoint({ ...input, threads: 2 }))).toEqual({
      problem: 'out-of-range',
      field: 'threads',
      given: 2,
      min: 3,
      max: 20,
      quantity: 'turns',
    });
  });

  test('a pitch so coarse that no core is left', () => {
    const small = {
      ...input,
      recess: mm(4.4),
      cutter: { ...input.cutter, radius: mm(1.7), tipFlat: mm(0.1) },
    };
    expect(refusalOf(planJoint(small))).toEqual(conflict(['pitch', P], ['recess', 4.4], null));
  });
});
