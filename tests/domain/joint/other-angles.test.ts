import { describe, expect, test } from 'vitest';
import { deepenForFading, deepenForPlay, impliedTaper } from '../../../src/domain/joint/correction.ts';
import { fitOf, pitchDiameter } from '../../../src/domain/joint/fit.ts';
import { flankShift, rootFillet } from '../../../src/domain/joint/helix.ts';
import { passLoads } from '../../../src/domain/joint/passes.ts';
import { planJoint } from '../../../src/domain/joint/plan.ts';
import { crestFromDepth, depthFromCrest, truncation } from '../../../src/domain/joint/profile.ts';
import { tenonFromDepth, tenonFromEngagement } from '../../../src/domain/joint/sizes.ts';
import { mm, moisture, rad, turns } from '../../../src/domain/units/brands.ts';
import { gotten } from './results.ts';

const P = mm(2);
const tipFlat = mm(0.2);

/** Half angles, with the width of a flank for each unit of its height. */
const angles = [
  ['55 degrees', rad((55 * Math.PI) / 180), Math.tan((27.5 * Math.PI) / 180)],
  ['45 degrees', rad(Math.PI / 4), Math.SQRT2 - 1],
  ['90 degrees', rad(Math.PI / 2), 1],
] as const;

describe.each(angles)('a cutter of %s', (_name, includedAngle, t) => {
  const form = { pitch: P, tipFlat, includedAngle };
  const depth = gotten(depthFromCrest(form, mm(0.4)));

  test('profile: depth, crest and truncation', () => {
    expect(depth).toBeCloseTo((2 - 0.2 - 0.4) / (2 * t), 12);
    expect(gotten(crestFromDepth(form, depth))).toBeCloseTo(0.4, 12);
    expect(gotten(truncation(tipFlat, includedAngle))).toBeCloseTo(0.1 / t, 12);
  });

  test('fit: clearance by the widths at half height, play and the gap square to a flank', () => {
    const recess = { diameter: mm(40), depth, tipFlat, flankShift: mm(0.01) };
    const tenon = { diameter: mm(40 + depth), depth, tipFlat, flankShift: mm(0.02) };
    const fit = gotten(fitOf({ pitch: P, recess, tenon, includedAngle }));
    // At the recess's crest: what is missing of the pitch once both grooves have taken their width there.
    const tenonGroove = 0.2 + 0.04 + 2 * t * (40 / 2 - (40 + depth) / 2 + depth);
    const recessGroove = 0.2 + 0.02 + 2 * t * depth;
    expect(fit.endPlay).toBeCloseTo(tenonGroove + recessGroove - 2, 9);
    expect(fit.clearance).toBeCloseTo(fit.endPlay / t, 9);
    expect(fit.flankGap).toBeCloseTo((fit.endPlay / 2) * Math.cos(Math.atan(t)), 9);
    const [outer, inner] = [
      gotten(pitchDiameter('recess', recess, P, includedAngle)),
      gotten(pitchDiameter('tenon', tenon, P, includedAngle)),
    ];
    expect(outer - inner).toBeCloseTo(fit.clearance, 9);
    // On the recess's pitch diameter its groove is half the pitch wide.
    expect(0.2 + 0.02 + 2 * t * (20 + depth - outer / 2)).toBeCloseTo(1, 9);
  });

  test('sizes: from a depth and from an engagement', () => {
    const byDepth = gotten(tenonFromDepth(form, { recess: mm(40), clearance: mm(0.2) }, depth));
    expect(byDepth.tenon).toBeCloseTo(40 + (2 - 0.8) / t - 0.2, 9);
    expect(byDepth.endPlay).toBeCloseTo(0.2 * t, 9);
    expect(byDepth.flankLength).toBeCloseTo(byDepth.engagedHeight * Math.hypot(1, t), 9);
    expect(byDepth.percentOf75).toBeCloseTo((100 * byDepth.engagedHeight) / (0.75 / t), 9);
    const again = gotten(
      tenonFromEngagement(form, { recess: mm(40), clearance: mm(0.2) }, byDepth.percentOf75, '0.75H'),
    );
    expect(again.depth).toBeCloseTo(depth, 9);
  });

  test('helix, passes and corrections', () => {
    const cut = { part: 'tenon', pitch: P, workRadius: mm(20), cutterRadius: mm(10), includedAngle } as const;
    const climb = 2 / (2 * Math.PI * 20);
    expect(gotten(flankShift(cut))).toBeCloseTo(climb ** 2 / (2 * t * (1 / 10 + 1 / 20)), 12);
    const fillet = gotten(rootFillet(mm(0.01), includedAngle));
    expect(fillet.radial).toBeCloseTo(0.01 / t, 12);
    expect(fillet.axial).toBeCloseTo(0.02, 12);
    const [chip, edge] = [
      gotten(passLoads({ form, depth }, [depth])),
      gotten(passLoads({ form, depth }, [depth], mm(1))),
    ];
    expect(chip[0]).toBeCloseTo(depth * (0.2 + t * depth), 9);
    expect((edge[0] ?? 0) - (chip[0] ?? 0)).toBeCloseTo(0.2 + 2 * depth * Math.hypot(1, t), 9);
    expect(gotten(deepenForPlay(mm(0.05), mm(0.25), includedAngle))).toBeCloseTo(0.1 / t, 9);
    const fading = { endPlay: mm(0.1), turnsBefore: turns(1), turnsFree: turns(2) };
    expect(gotten(deepenForFading(fading, turns(3), mm(0.1), includedAngle))).toBeCloseTo(0.1 / t, 9);
    expect(gotten(impliedTaper(fading, P, includedAngle))).toBeCloseTo(Math.atan(0.05 / t / 2), 12);
  });

  test('a plan by depth expects the fit that its sizes have', () => {
    const wood = { strain: { radial: 0, tangential: 0 }, grain: 'end' } as const;
    const plan = gotten(
      planJoint({
        recess: mm(40),
        pitch: P,
        includedAngle,
        woodOfRecess: wood,
        woodOfTenon: wood,
        moistureSwing: moisture(0),
        cutter: { radius: mm(10), tipFlat, aheadOfTooth: mm(1.5), neckRadius: null },
        aim: { by: 'depth', depth, clearance: mm(0.2) },
        recessIn: 'lid',
        threads: 3,
        kerf: mm(1),
        film: mm(0),
        outside: null,
        turnedDepth: null,
        passes: 'two-thirds',
        dial: null,
        slide: null,
      }),
    );
    expect(plan.sizes.crestFlat).toBeCloseTo(0.4, 9);
    expect(plan.fit.clearance).toBeCloseTo(0.2 + (2 * (plan.shifts.recess + plan.shifts.tenon)) / t, 9);
  });
});
