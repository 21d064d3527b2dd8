import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { engagementPercent, usualEngagement } from '../../../src/domain/joint/engagement.ts';
import { type CutPiece, fitOf, type Pair, tenonForClearance } from '../../../src/domain/joint/fit.ts';
import { crestFromDepth, depthFromCrest } from '../../../src/domain/joint/profile.ts';
import { tenonFromDepth, tenonFromEngagement } from '../../../src/domain/joint/sizes.ts';
import { learnTipFlat } from '../../../src/domain/joint/tip-flat.ts';
import { mm, pitchFromTpi } from '../../../src/domain/units/brands.ts';
import { gotten, refusalOf } from './results.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const piece: fc.Arbitrary<CutPiece> = fc.record({
  diameter: within(20, 60).map(mm),
  depth: within(0.2, 2).map(mm),
  tipFlat: within(0, 0.4).map(mm),
  flankShift: within(0, 0.1).map(mm),
});
const pair: fc.Arbitrary<Pair> = fc.record({
  pitch: within(1, 4).map(mm),
  recess: piece,
  tenon: piece,
});

describe('sizing and fit are each other turned round', () => {
  const given = fc.record({
    pitch: within(1, 4),
    tip: within(0, 0.08),
    recess: within(10, 100),
    loose: within(0, 0.2),
    percent: within(30, 80),
    of: fc.constantFrom('0.75H' as const, '0.625H' as const),
  });

  test('a tenon sized for an engagement and a clearance has both, by both customs', () => {
    fc.assert(
      fc.property(given, ({ pitch: p, tip, recess, loose, percent, of }) => {
        const pitch = mm(p);
        const form = { pitch, tipFlat: mm(tip * p) };
        const sizes = gotten(
          tenonFromEngagement(form, { recess: mm(recess), clearance: mm(loose) }, percent, of),
        );
        const cut = { depth: sizes.depth, tipFlat: form.tipFlat };
        const fit = gotten(
          fitOf({
            pitch,
            recess: { ...cut, diameter: mm(recess) },
            tenon: { ...cut, diameter: sizes.tenon },
          }),
        );
        expect(fit.clearance).toBeCloseTo(loose, 9);
        expect(of === '0.75H' ? fit.percentOf75 : fit.percentOf62).toBeCloseTo(percent, 7);
        expect(fit.percentOf62).toBeCloseTo(fit.percentOf75 * 1.2, 7);
        expect(fit.tenonCrestGap).toBeCloseTo(sizes.crestGap, 9);
        expect(fit.recessCrestGap).toBeCloseTo(sizes.crestGap, 9);
        expect(fit.endPlay).toBeCloseTo(sizes.endPlay, 9);
      }),
    );
  });

  test('from depth and from engagement agree', () => {
    fc.assert(
      fc.property(given, ({ pitch: p, tip, recess, loose, percent, of }) => {
        const form = { pitch: mm(p), tipFlat: mm(tip * p) };
        const wanted = { recess: mm(recess), clearance: mm(loose) };
        const sizes = gotten(tenonFromEngagement(form, wanted, percent, of));
        const again = gotten(tenonFromDepth(form, wanted, sizes.depth));
        expect(again.tenon).toBeCloseTo(sizes.tenon, 8);
        expect(again.crestFlat).toBeCloseTo(sizes.crestFlat, 8);
      }),
    );
  });

  test('a tenon asked for by clearance has it, whatever the two depths', () => {
    fc.assert(
      fc.property(pair, within(-1, 1), (any, clearance) => {
        const diameter = gotten(tenonForClearance(any, mm(clearance)));
        fc.pre(diameter >= 3);
        const fit = gotten(fitOf({ ...any, tenon: { ...any.tenon, diameter } }));
        expect(fit.clearance).toBeCloseTo(clearance, 9);
      }),
    );
  });

  test('a tip flat is learned back from a scrap pair cut with it', () => {
    fc.assert(
      fc.property(within(0, 0.4), within(-0.3, 0.3), within(0, 0.02), (tip, apart, shifts) => {
        const pitch = mm(2.54);
        const cut = { depth: mm(1.5), tipFlat: mm(tip) };
        const recess = { ...cut, diameter: mm(40), flankShift: mm(shifts / 2) };
        const tenon = { ...cut, depth: mm(1.5 + apart), flankShift: mm(shifts / 2) };
        const diameter = gotten(tenonForClearance({ pitch, recess, tenon }, mm(0.3)));
        const play = gotten(fitOf({ pitch, recess, tenon: { ...tenon, diameter } })).endPlay;
        const learned = gotten(
          learnTipFlat({
            pitch,
            recess: recess.diameter,
            tenon: diameter,
            recessDepth: recess.depth,
            tenonDepth: tenon.depth,
            endPlay: play,
            flankShifts: mm(shifts),
          }),
        );
        expect(learned.tipFlat).toBeCloseTo(tip, 9);
        expect(learned.uncertainty).toBeCloseTo(1.041 * 0.03, 4);
      }),
    );
  });
});

describe('laws of a fit', () => {
  test('more clearance never gives less play', () => {
    fc.assert(
      fc.property(pair, within(-1, 1), within(0, 1), (any, clearance, more) => {
        const at = (wanted: number) => {
          const diameter = gotten(tenonForClearance(any, mm(wanted)));
          fc.pre(diameter >= 3);
          return gotten(fitOf({ ...any, tenon: { ...any.tenon, diameter } }));
        };
        expect(at(clearance + more).endPlay).toBeGreaterThanOrEqual(at(clearance).endPlay - 1e-9);
      }),
    );
  });

  test('a deeper cut, in either piece, never tightens the flanks, and opens them alike', () => {
    fc.assert(
      fc.property(pair, within(0, 1), (any, by) => {
        const deeper = (part: 'recess' | 'tenon') =>
          gotten(fitOf({ ...any, [part]: { ...any[part], depth: mm(any[part].depth + by) } }));
        const before = gotten(fitOf(any));
        for (const after of [deeper('recess'), deeper('tenon')]) {
          expect(after.clearance).toBeCloseTo(before.clearance + 2 * by, 9);
          expect(after.flankGap).toBeGreaterThanOrEqual(before.flankGap - 1e-12);
        }
        expect(deeper('recess').tenonCrestGap).toBeCloseTo(before.tenonCrestGap + by, 9);
        expect(deeper('tenon').tenonCrestGap).toBeCloseTo(before.tenonCrestGap, 9);
      }),
    );
  });

  test('the gap square to one flank is a quarter of the clearance', () => {
    fc.assert(
      fc.property(pair, (any) => {
        const fit = gotten(fitOf(any));
        expect(fit.flankGap).toBeCloseTo(fit.clearance / 4, 9);
        expect(fit.endPlay).toBeCloseTo(0.57735027 * fit.clearance, 7);
      }),
    );
  });

  test('what touches first is named', () => {
    const cut = { depth: mm(1.6), tipFlat: mm(0.2) };
    const at = (tenon: number, tenonDepth: number) =>
      gotten(
        fitOf({
          pitch: mm(2.54),
          recess: { ...cut, diameter: mm(40) },
          tenon: { ...cut, diameter: mm(tenon), depth: mm(tenonDepth) },
        }),
      ).tightest;
    expect(at(42.47, 1.6)).toBe('flank');
    expect(at(43.3, 2.1)).toBe('tenon-crest');
    expect(
      gotten(
        fitOf({
          pitch: mm(2.54),
          recess: { ...cut, diameter: mm(40), depth: mm(2) },
          tenon: { ...cut, diameter: mm(42.8), depth: mm(1.35) },
        }),
      ).tightest,
    ).toBe('recess-crest');
  });
});

describe('the profile', () => {
  test('depth and crest flat are each other turned round', () => {
    fc.assert(
      fc.property(within(1, 6), within(0, 0.4), within(0, 0.6), (p, tip, crest) => {
        const form = { pitch: mm(p), tipFlat: mm(tip * p) };
        const depth = gotten(depthFromCrest(form, mm(crest * p * 0.99)));
        expect(gotten(crestFromDepth(form, depth))).toBeCloseTo(crest * p * 0.99, 9);
      }),
    );
  });

  test('a sharp tip and no crest cut the whole of H', () => {
    const form = { pitch: mm(2.54), tipFlat: mm(0) };
    expect(gotten(depthFromCrest(form, mm(0)))).toBeCloseTo(0.8660254 * 2.54, 6);
  });

  test('75 % of the one custom is 90 % of the other; the usual for a pitch', () => {
    const pitch = pitchFromTpi(10);
    const height = mm(0.75 * 0.75 * (pitch / (2 * Math.tan(Math.PI / 6))));
    expect(gotten(engagementPercent(height, '0.75H', pitch))).toBeCloseTo(75, 9);
    expect(gotten(engagementPercent(height, '0.625H', pitch))).toBeCloseTo(90, 9);
    expect(gotten(usualEngagement(pitch))).toBeCloseTo(75, 9);
    expect(gotten(usualEngagement(pitchFromTpi(16)))).toBeCloseTo(70, 9);
  });
});

describe('what cannot be is refused, and the nearest that can is offered', () => {
  const form = { pitch: mm(2.54), tipFlat: mm(0.2) };
  const wanted = { recess: mm(40), clearance: mm(0.05) };
  const nearestOf = (result: Parameters<typeof refusalOf>[0]): number => {
    const refusal = refusalOf(result);
    if (refusal.problem !== 'conflict' || refusal.nearest === null) throw new Error(JSON.stringify(refusal));
    return refusal.nearest;
  };

  test('a depth beyond the V', () => {
    const nearest = nearestOf(crestFromDepth(form, mm(2.2)));
    expect(gotten(crestFromDepth(form, mm(nearest)))).toBeCloseTo(0, 9);
  });

  test('a depth at which crests cross', () => {
    const nearest = nearestOf(tenonFromDepth(form, wanted, mm(2)));
    expect(gotten(tenonFromDepth(form, wanted, mm(nearest))).crestGap).toBeCloseTo(0, 9);
  });

  test('a depth so small that the threads do not touch', () => {
    const nearest = nearestOf(tenonFromDepth(form, wanted, mm(0.5)));
    expect(gotten(tenonFromDepth(form, wanted, mm(nearest + 0.001))).engagedHeight).toBeGreaterThan(0);
  });

  test('an engagement beyond what the tip allows', () => {
    const nearest = nearestOf(tenonFromEngagement(form, wanted, 130, '0.75H'));
    const sizes = gotten(tenonFromEngagement(form, wanted, nearest, '0.75H'));
    expect(sizes.crestGap).toBeCloseTo(0, 9);
    // The greatest engaged height with crests just clear.
    expect(sizes.engagedHeight).toBeCloseTo((2.54 - 0.4) / (2 * Math.tan(Math.PI / 6)) + 0.025, 9);
  });

  test('a crest and a tip wider than the pitch, a tip as wide as the pitch, no number at all', () => {
    expect(refusalOf(depthFromCrest(form, mm(2.4)))).toMatchObject({ field: 'crestFlat', other: 'tipFlat' });
    expect(refusalOf(depthFromCrest({ pitch: mm(1), tipFlat: mm(1) }, mm(0)))).toMatchObject({
      other: 'pitch',
    });
    expect(refusalOf(depthFromCrest({ ...form, pitch: mm(Number.NaN) }, mm(0)))).toMatchObject({
      problem: 'not-a-number',
      field: 'pitch',
    });
  });

  test('a scrap pair whose readings no tip explains', () => {
    const scrap = {
      pitch: mm(2.54),
      recess: mm(40),
      tenon: mm(42.4747),
      recessDepth: mm(1.6),
      tenonDepth: mm(1.6),
    };
    expect(refusalOf(learnTipFlat({ ...scrap, endPlay: mm(3) }))).toMatchObject({ field: 'endPlay' });
    const nearest = nearestOf(learnTipFlat({ ...scrap, tenon: mm(41), endPlay: mm(0) }));
    expect(gotten(learnTipFlat({ ...scrap, tenon: mm(41), endPlay: mm(nearest) })).tipFlat).toBeCloseTo(0, 9);
  });
});
