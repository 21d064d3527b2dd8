import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CalculatedBox, calculate } from '../../../src/domain/box/calculate.ts';
import type { Box, Plan } from '../../../src/domain/box/records.ts';
import { UNKNOWN_RIG } from '../../../src/domain/box/unknown-rig.ts';
import { type CutPiece, fitOf } from '../../../src/domain/joint/fit.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { bored, boxOf, cut, givenWith, turned } from './any-box.ts';
import { length, PLAN } from './planned-box.ts';

/** Pitch less the groove's width at the surface, from the section of a 60 degree V. */
const crestLeft = (pitch: number, { depth, tipFlat, flankShift = mm(0) }: CutPiece): number =>
  pitch - tipFlat - 2 * flankShift - 2 * depth * Math.tan(Math.PI / 6);

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A box by fit or by the turner's own depth, a blunt or a sharp tip; its recess cut well or badly; its tenon turned near or far off. */
const anyCase = fc.record({
  opening: within(15, 150),
  tpi: fc.constantFrom(8, 10, 12, 16, 20),
  clearance: fc.option(within(0.05, 1)),
  tip: within(0.02, 0.6),
  recessOff: fc.oneof(fc.constant(0), within(-0.8, 0.8)),
  over: fc.oneof(within(-0.5, 0.5), within(-3, 3)),
  taper: fc.oneof(fc.constant(0), within(-0.3, 0.3), within(-1.5, 1.5)),
});
type Case = typeof anyCase extends fc.Arbitrary<infer T> ? T : never;

const planOf = ({ opening, tpi, clearance }: Case): Plan => ({
  ...PLAN,
  opening: length(opening),
  pitch: length(25.4 / tpi),
  aim: { by: 'fit', clearance: clearance === null ? null : length(clearance) },
});

const given = ({ tip, opening }: Case) =>
  givenWith(null, { ...UNKNOWN_RIG, cutterRadius: length(opening / 5), tipFlat: length(tip) });

const sized = (box: Box, of: Case): CalculatedBox | null => {
  const found = calculate(box, given(of));
  return found.ok ? found.value : null;
};

/** The box with its bore read and its recess cut. */
const recessed = (of: Case): { readonly box: Box; readonly now: CalculatedBox } | null => {
  const box = { ...boxOf([bored(of.opening)]), plan: planOf(of) };
  const planned = sized(box, of);
  if (!planned) return null;
  const depth = Math.max(0.1, planned.plan.sizes.depth + of.recessOff);
  const done = [cut('recess', depth / 2), cut('recess', depth)].reduce((at, add) => add(at, 0), box);
  const now = sized(done, of);
  return now && { box: done, now };
};

const measured = (box: Box, end: number, shoulder: number): Box =>
  [turned(end), turned(shoulder, { where: 'shoulder' })].reduce((at, add) => add(at, 0), box);

/** Does what the page says, as often as it says it. */
const follow = (of: Case) => {
  const start = recessed(of);
  if (!start) return null;
  let [end, shoulder] = [
    start.now.target.tenon + of.over - of.taper / 2,
    start.now.target.tenon + of.over + of.taper / 2,
  ];
  for (let tries = 0; tries < 5; tries += 1) {
    const now = sized(measured(start.box, end, shoulder), of);
    if (!now?.check) return null;
    const { mend } = now.check;
    if (mend === null || mend.kind === 'joint') return { now, check: now.check };
    if (mend.kind === 'true' && mend.at === 'end') end -= mend.by;
    else if (mend.kind === 'true') shoulder -= mend.by;
    else [end, shoulder] = [mend.to, mend.to];
  }
  throw new Error('the page goes round in circles');
};

describe('whoever follows the tenon’s page', () => {
  it('ends with enough thread, crests that hold and the clearance wanted, or hears that this joint cannot', () => {
    let [ended, told] = [0, 0];
    fc.assert(
      fc.property(anyCase, (of) => {
        const found = follow(of);
        if (!found) return;
        const { now, check } = found;
        const tenon = {
          ...now.pair.tenon,
          diameter: now.tenon?.mean ?? now.pair.tenon.diameter,
          depth: check.depth,
        };
        const pair = { ...now.pair, tenon };
        const [fit, planned] = [fitOf(pair), fitOf(now.pair)];
        if (!fit.ok || !planned.ok) throw new Error('no fit');
        const crests = (['recess', 'tenon'] as const).map((part) => crestLeft(pair.pitch, pair[part]));
        const holds =
          fit.value.percentOf75 >= 50 - 1e-6 &&
          Math.min(...crests) >= 0.15 - 1e-6 &&
          Math.min(fit.value.recessCrestGap, fit.value.tenonCrestGap) >= -1e-6;
        if (check.mend) {
          told += 1;
          expect(now.limits).not.toEqual([]);
          return;
        }
        ended += 1;
        expect(holds).toBe(true);
        const wanted = planned.value.clearance;
        expect(fit.value.clearance).toBeGreaterThanOrEqual(wanted / 2 - 1e-6);
        expect(fit.value.clearance).toBeLessThanOrEqual(1.5 * wanted + 1e-6);
      }),
      { numRuns: 1000, seed: 11 },
    );
    expect(told).toBeGreaterThan(60);
    expect(ended).toBeGreaterThan(500);
  });

  it('with a recess cut as planned by fit, the joint itself can always be had', () => {
    fc.assert(
      fc.property(anyCase, (of) => {
        const found = follow({ ...of, recessOff: 0, tip: 0.2, clearance: null });
        expect(found?.check.mend ?? null).toBeNull();
      }),
      { numRuns: 300, seed: 12 },
    );
  });
});
