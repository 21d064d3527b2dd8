import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calculate } from '../../../src/domain/box/calculate.ts';
import {
  type Conditions,
  jointUnder,
  type KnownPair,
  knownPair,
} from '../../../src/domain/box/joint-under.ts';
import { pairToBe, passesOf } from '../../../src/domain/box/pair.ts';
import type { Box, Rig } from '../../../src/domain/box/records.ts';
import { UNKNOWN_RIG } from '../../../src/domain/box/unknown-rig.ts';
import { mm, moisture, rad } from '../../../src/domain/units/brands.ts';
import { clearanceForSeason } from '../../../src/domain/wood/movement.ts';
import { gotten } from '../joint/results.ts';
import { givenOf, length, plannedBox } from './planned-box.ts';

const BOX = plannedBox();
const known = (box: Partial<Box> = {}, rig: Partial<Rig> = {}): KnownPair => {
  const whole = plannedBox(box);
  const theRig = { ...UNKNOWN_RIG, ...rig };
  return gotten(knownPair(whole, gotten(calculate(whole, givenOf(theRig))), new Map()));
};
const under = (pair: KnownPair, change: Partial<Conditions> = {}) =>
  gotten(jointUnder(pair, { ...pair.asItIs, ...change }));
const degrees = (n: number) => rad((n * Math.PI) / 180);
const both = (n: number) => ({ lean: { recess: degrees(n), tenon: degrees(n) } });

const cut = (part: 'recess' | 'tenon', depth: number, id: string) => ({
  id,
  seq: 10 + Number(id),
  part,
  runId: null,
  at: 1,
  depth: length(depth),
  correction: false,
});

describe('a joint as it is', () => {
  it('is the plan before anything is measured, with the fit the plan expects', () => {
    const pair = known();
    const plan = gotten(calculate(BOX, givenOf(UNKNOWN_RIG)));
    expect(Object.values(pair.isReal).flatMap((part) => Object.values(part))).toEqual(Array(4).fill(false));
    const seen = under(pair);
    expect(seen.endPlay).toBeCloseTo(plan.plan.fit.endPlay, 9);
    expect(seen.clearance).toBeCloseTo(plan.plan.fit.clearance, 9);
  });

  it('takes what was measured and cut in the place of what was planned', () => {
    const plan = gotten(calculate(BOX, givenOf(UNKNOWN_RIG))).plan;
    const depth = plan.sizes.depth;
    const pair = known({
      bore: [{ id: 'b', seq: 1, where: 'mouth', along: length(50.2), across: null, overCrests: false }],
      tenon: [{ id: 't', seq: 2, where: 'end', diameter: length(52.5), overCrests: false }],
      cuts: [cut('recess', 1.1, '1'), cut('recess', depth + 0.05, '2'), cut('tenon', 1.1, '3')],
    });
    expect(pair.isReal).toEqual({
      recess: { diameter: true, depth: true },
      tenon: { diameter: true, depth: false },
    });
    expect(pair.pair.recess).toMatchObject({ diameter: 50.2, depth: depth + 0.05 });
    expect(pair.pair.tenon.diameter).toBe(52.5);
  });

  it('a tenon off its size is cut to the depth that suits it, so the play stays as planned', () => {
    const bore = [
      { id: 'b', seq: 1, where: 'mouth' as const, along: length(50), across: null, overCrests: false },
    ];
    const plain = known({ bore });
    const over = plain.pair.tenon.diameter + 0.3;
    const tenon = [{ id: 't', seq: 2, where: 'end' as const, diameter: length(over), overCrests: false }];
    const fat = known({ bore, tenon });
    expect(fat.pair.tenon.depth).toBeCloseTo(plain.pair.tenon.depth + 0.15, 6);
    expect(under(fat).endPlay).toBeCloseTo(under(plain).endPlay, 6);
    const calculated = gotten(calculate({ ...BOX, bore, tenon }, givenOf(UNKNOWN_RIG)));
    expect(gotten(passesOf('tenon', calculated)).at(-1)?.depth).toBeCloseTo(fat.pair.tenon.depth, 9);
    expect(gotten(passesOf('recess', calculated)).at(-1)?.depth).toBe(calculated.plan.sizes.depth);
    expect(gotten(pairToBe(calculated))).toEqual(fat.pair);
  });
});

describe('what if', () => {
  it('a tenth off the diameter, or half a tenth deeper, gives the same clearance', () => {
    const pair = known();
    const before = under(pair).clearance;
    expect(under(pair, { slimmer: mm(0.1) }).clearance).toBeCloseTo(before + 0.1, 9);
    expect(under(pair, { deeper: mm(0.05) }).clearance).toBeCloseTo(before + 0.1, 9);
  });

  it('equal leans of the jig eat play where the dial goes the other way in the recess, and hardly any where it goes the same way', () => {
    const doubles = known({}, { jigSide: 'front', recessDial: 'other' });
    const cancels = known({}, { jigSide: 'front', recessDial: 'same' });
    const unknown = known();
    const lost = (pair: KnownPair) => under(pair).endPlay - under(pair, both(2)).endPlay;
    expect(lost(doubles)).toBeGreaterThan(0.1);
    expect(lost(cancels)).toBeLessThan(0.01);
    expect(lost(unknown)).toBeCloseTo(lost(doubles), 9);
    const leans = under(cancels, both(2)).lean;
    expect(leans.recess).toBe(-leans.tenon);
  });

  it('a jig in front or behind changes nothing of the play', () => {
    for (const recessDial of ['same', 'other'] as const)
      expect(under(known({}, { jigSide: 'front', recessDial }), both(1.5)).endPlay).toBeCloseTo(
        under(known({}, { jigSide: 'behind', recessDial }), both(1.5)).endPlay,
        9,
      );
  });

  it('a season takes what the plan reckons a season takes, to the second order', () => {
    const pair = known();
    const asked = gotten(clearanceForSeason(mm(50), pair.woods.recess, pair.woods.tenon, pair.swing));
    const left = [pair.swing, -pair.swing].map(
      (points) => under(pair, { moisture: moisture(points) }).clearance,
    );
    expect(Math.abs(under(pair).clearance - Math.min(...left) - asked)).toBeLessThan(0.03);
  });

  it('no slider, however far, makes a number that is none', () => {
    const pair = known();
    const range = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
    fc.assert(
      fc.property(
        range(0.5),
        range(0.6),
        range(3),
        range(3),
        range(6),
        (slimmer, deeper, one, two, points) => {
          const seen = under(pair, {
            slimmer: mm(slimmer),
            deeper: mm(deeper),
            lean: { recess: degrees(one), tenon: degrees(two) },
            moisture: moisture(points),
          });
          for (const value of [seen.endPlay, seen.clearance, seen.eatenByLean, seen.fit.percentOf75])
            expect(Number.isFinite(value)).toBe(true);
          expect(seen.eatenByLean).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});
