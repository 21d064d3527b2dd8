// @vitest-environment happy-dom
import { signal } from '@preact/signals';
import { cleanup, render } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { type CalculatedBox, calculate } from '../../src/domain/box/calculate.ts';
import { jointUnder, type KnownPair, knownPair } from '../../src/domain/box/joint-under.ts';
import type { Box, Rig } from '../../src/domain/box/records.ts';
import { UNKNOWN_RIG } from '../../src/domain/box/unknown-rig.ts';
import { MM_PER_INCH, rad } from '../../src/domain/units/brands.ts';
import { JointScale } from '../../src/ui/joint/joint-scale.tsx';
import { gotten } from '../domain/joint/results.ts';
import { givenOf, length, PLAN, plannedBox } from './plan-shop.ts';

afterEach(cleanup);

const inch = (value: number) => length(value * MM_PER_INCH, `${value} in`);
const t = Math.tan(Math.PI / 6);
/** 10 to the inch, a tip flat of 0.2 mm, 0.35 mm of clearance, a cross-screw of 20 to the inch with 50 marks. */
const [P, F, C] = [2.54, 0.2, 0.35];
const RIG: Rig = {
  ...UNKNOWN_RIG,
  cutterRadius: length(12.7),
  tipFlat: length(F),
  aheadOfTooth: length(2),
  travelPerTurn: inch(0.05),
  marksPerTurn: 50,
};
const BORE = 1.575 * MM_PER_INCH;
const box = (change: Partial<Box> = {}): Box =>
  plannedBox({
    plan: { ...PLAN, opening: inch(1.575) },
    bore: [{ id: 'b', seq: 1, where: 'mouth', along: inch(1.575), across: null, overCrests: false }],
    ...change,
  });
const calculated = (of: Box = box(), rig: Rig = RIG): CalculatedBox => gotten(calculate(of, givenOf(rig)));

describe('a recess of 1.575 in at 10 to the inch, measured', () => {
  // Engagement 75 % of 0.75 H = 0.75 x 0.75 x P/(2 tan 30): tenon = recess + 2 he, k = (P - (2 he + c) tan 30)/2, d = (P - f - k)/(2 tan 30).
  const he = (0.75 * 0.75 * P) / (2 * t);
  const k = (P - (2 * he + C) * t) / 2;
  const d = (P - F - k) / (2 * t);

  it('gives the tenon: recess + 0.0974 in, 1.672 in', () => {
    const { target } = calculated();
    expect(target.tenon).toBeCloseTo(BORE + 2 * he, 9);
    expect(target.tenon / MM_PER_INCH).toBeCloseTo(1.6724, 4);
  });

  it('gives the depth, 0.066 in for both pieces, and 1 turn and 16 marks of the dial', () => {
    const { plan } = calculated();
    expect(plan.sizes.depth).toBeCloseTo(d, 9);
    expect(plan.passes.at(-1)?.depth).toBeCloseTo(d, 9);
    const marks = Math.round((2 * 50 * d) / 1.27) / 2;
    expect(plan.passes.at(-1)?.dial).toMatchObject({ wholeTurns: 1, marks: marks - 50 });
    expect(plan.passes.at(-1)?.dial?.turns).toBeCloseTo(d / 1.27, 9);
  });

  it('gives the passes: two thirds of it, then all', () => {
    const [first, ...rest] = calculated().plan.passes;
    expect(rest).toHaveLength(1);
    expect(first?.depth).toBeCloseTo((2 * d) / 3, 9);
    expect(first?.dial?.turns).toBeCloseTo((2 * d) / 3 / 1.27, 9);
  });
});

describe('lean from 0 to 2 degrees', () => {
  const known = (recessDial: Rig['recessDial']): KnownPair => {
    const rig = { ...RIG, jigSide: 'front', recessDial } as const;
    return gotten(knownPair(box(), calculated(box(), rig), new Map()));
  };
  const at = (pair: KnownPair, degrees: number) => {
    const lean = rad((degrees * Math.PI) / 180);
    return gotten(jointUnder(pair, { ...pair.asItIs, lean: { recess: lean, tenon: lean } }));
  };
  /** Slopes, in degrees from upright, of the flanks of a drawn thread, in order. */
  const drawn = (pair: KnownPair, part: 'recess' | 'tenon', degrees: number): number[] => {
    cleanup();
    const seen = at(pair, degrees);
    const { container } = render(<JointScale known={pair} seen={signal(seen)} pitch="10 tpi" />);
    const outline = container.querySelector(`.${part}`)?.getAttribute('points') ?? '';
    const points = outline.split(' ').map((point) => point.split(',').map(Number));
    return points
      .slice(1)
      .map(([x = 0, y = 0], i) => {
        const [px = 0, py = 0] = points[i] ?? [];
        return { run: Math.abs(x - px), rise: Math.abs(y - py) };
      })
      .filter(({ rise }) => rise > 10)
      .map(({ run, rise }) => (Math.atan(run / rise) * 180) / Math.PI);
  };
  const around = (degrees: number) => expect.closeTo(degrees, 0);

  it('is seen: one flank at 32 degrees and the other at 28, in both pieces, on either sense of the dial', () => {
    for (const recessDial of ['same', 'other'] as const)
      for (const part of ['recess', 'tenon'] as const) {
        const pair = known(recessDial);
        expect(drawn(pair, part, 0).slice(0, 2)).toEqual([around(30), around(30)]);
        const [one = 0, other = 0] = drawn(pair, part, 2);
        expect([one, other].sort((a, b) => a - b)).toEqual([around(28), around(32)]);
      }
  });

  it('leans the drawn teeth alike where they cancel, and against each other where they double', () => {
    const isAlike = (recessDial: 'same' | 'other') => {
      const [recess, tenon] = (['recess', 'tenon'] as const).map((part) => {
        const [one = 0, other = 0] = drawn(known(recessDial), part, 2);
        return one > other;
      });
      // The first flank of a recess is drawn rising, the first of a tenon falling: a recess's first lies along a tenon's second.
      return recess !== tenon;
    };
    expect(isAlike('same')).toBe(true);
    expect(isAlike('other')).toBe(false);
  });

  it('eats the play all the way where the dial goes the other way in the recess', () => {
    const pair = known('other');
    const plays = [0, 0.5, 1, 1.5, 2].map((degrees) => at(pair, degrees).endPlay);
    expect(plays).toEqual([...plays].sort((a, b) => b - a));
    // The far end of the flanks opens by 4/3 of the engaged height a radian, of twice the lean; the tip's corners take f tan 30 a radian each.
    const lean = (2 * Math.PI) / 180;
    const he = at(pair, 0).fit.engagedHeight;
    expect((plays[0] ?? 0) - (plays[4] ?? 0)).toBeCloseTo((4 / 3) * he * 2 * lean + 2 * F * t * lean, 2);
  });

  it('leaves it where the dial goes the same way', () => {
    const pair = known('same');
    const plays = [0, 0.5, 1, 1.5, 2].map((degrees) => at(pair, degrees).endPlay);
    expect(Math.max(...plays) - Math.min(...plays)).toBeLessThan(0.01);
  });
});

describe('my dial goes to 1 1/2 turns, at 10 to the inch on a cross-screw of 20 to the inch', () => {
  const own = box({ plan: { ...PLAN, opening: inch(1.575), aim: { by: 'depth', dialTurns: 1.5 } } });

  it('is 0.075 in of depth, and the tenon that suits it', () => {
    const { plan, target } = calculated(own);
    const depth = 0.075 * MM_PER_INCH;
    expect(plan.sizes.depth).toBeCloseTo(depth, 9);
    const crest = P - F - 2 * depth * t;
    expect(plan.sizes.crestFlat).toBeCloseTo(crest, 9);
    expect(target.tenon).toBeCloseTo(BORE + (P - 2 * crest) / t - plan.clearance.clearance, 9);
    expect(plan.passes.at(-1)?.dial).toMatchObject({ wholeTurns: 1, marks: 25 });
  });
});
