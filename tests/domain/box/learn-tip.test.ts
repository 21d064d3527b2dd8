import { expect, it } from 'vitest';
import { learnTip } from '../../../src/domain/box/learn-tip.ts';
import { fitOf } from '../../../src/domain/joint/fit.ts';
import { flankShift } from '../../../src/domain/joint/helix.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { gotten } from '../joint/results.ts';

const pitch = mm(2.54);
const tipFlat = mm(0.25);
const depth = mm(1.55);
/** A cutter big for its recess, so that the helix widens the grooves by more than a caliper can miss. */
const cutterRadius = mm(11);
const recess = mm(26);
const tenon = mm(28.4);

/** The end play of a pair cut with that cutter, the helix's widening included. */
const playFelt = () => {
  const half = (tenon - recess) / 4;
  const shift = (part: 'recess' | 'tenon') =>
    gotten(
      flankShift({
        part,
        pitch,
        workRadius: mm((recess + tenon) / 4),
        cutterRadius: mm(cutterRadius - (depth - half)),
      }),
    );
  const piece = (part: 'recess' | 'tenon', diameter: typeof recess) => ({
    diameter,
    depth,
    tipFlat,
    flankShift: shift(part),
  });
  return gotten(fitOf({ pitch, recess: piece('recess', recess), tenon: piece('tenon', tenon) })).endPlay;
};
const pair = () => ({ pitch, recess, tenon, recessDepth: depth, tenonDepth: depth, endPlay: playFelt() });

it('with the cutter’s radius known, the helix’s share is not taken for tip flat', () => {
  expect(gotten(learnTip(pair(), cutterRadius)).tipFlat).toBeCloseTo(tipFlat, 9);
});

it('without it, the tip seems wider by that share', () => {
  expect(gotten(learnTip(pair(), null)).tipFlat).toBeGreaterThan(tipFlat + 0.02);
});

it('a cutter that cannot have cut the pair says nothing about it', () => {
  expect(gotten(learnTip(pair(), mm(60))).tipFlat).toBe(gotten(learnTip(pair(), null)).tipFlat);
});
