import { describe, expect, test } from 'vitest';
import vectors from '../../shared/joint-vectors.json' with { type: 'json' };
import { askewFlankShift } from '../../src/domain/alignment/askew-flank-shift.ts';
import { postTurned } from '../../src/domain/alignment/creep.ts';
import { skewFeed } from '../../src/domain/alignment/cross-slide.ts';
import { crestFlatRound } from '../../src/domain/alignment/eccentricity.ts';
import { angleFromGap } from '../../src/domain/alignment/gauge.ts';
import { depthAtHeight, rootRadius } from '../../src/domain/alignment/height.ts';
import { mismatch, skewOf } from '../../src/domain/alignment/lean.ts';
import { axialGap, axialPlay, axialPlayLinear, contactShare } from '../../src/domain/alignment/play.ts';
import { drunkenTilt, rockingFreedom, shoulderGap } from '../../src/domain/alignment/rocking.ts';
import { slipAllowed, slipEffect, slipPhase } from '../../src/domain/alignment/slip.ts';
import type { Result } from '../../src/domain/result.ts';
import { degrees, degreesFromRad, mm, rad, radFromDegrees } from '../../src/domain/units/brands.ts';

/* Source of the numbers: shared/joint-vectors.json, reckoned for this project by two independent programs before this one. */

type Given = Readonly<Record<string, number | boolean>>;
type Answers = Readonly<Record<string, number>>;
interface Vector {
  readonly id: string;
  readonly item: string;
  readonly fn: string;
  readonly inputs: Given;
  readonly outputs: Answers;
}

const ITEMS = ['3', '4', '5', '6', '7'];
const ours = (vectors.vectors as unknown as readonly Vector[]).filter(({ item }) => ITEMS.includes(item));

const value = <T>(answer: Result<T>): T => {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
};
const inRad = (angle: number) => radFromDegrees(degrees(angle));
const inDeg = (angle: number) => degreesFromRad(rad(angle));

const answer: Readonly<Record<string, (n: (key: string) => number, given: Given) => Answers>> = {
  leanAndTilt: (n) => {
    const skew = value(
      skewOf({ x: mm(n('ax')), y: mm(n('v')), yaw: inRad(n('yawDeg')), tilt: inRad(n('tiltDeg')) }),
    );
    return { leanDeg: inDeg(skew.lean), tauDeg: inDeg(skew.helixTilt) };
  },
  pairMismatch: (n) => {
    const lean = (side: string, yaw: string) =>
      value(skewOf({ x: mm(-20 * n(side)), y: mm(0), yaw: inRad(n(yaw)), tilt: rad(0) })).lean;
    const off = mismatch(lean('contactSideMale', 'yawMaleDeg'), lean('contactSideFemale', 'yawFemaleDeg'));
    return { mismatchDeg: inDeg(value(off)) };
  },
  axialGap: (n) => {
    const gap = value(axialGap(mm(n('he')), inRad(n('mismatchDeg'))));
    return { gap, contactFraction_tc20um: value(contactShare(gap, mm(0.02))) };
  },
  yawBacklashExact: (n) => {
    const [tenonLean, recessLean] = [inRad(n('leanMaleDeg')), inRad(n('leanFemaleDeg'))];
    const [Dt, Dr, f] = [n('Dt'), n('Dr'), n('f')];
    const pair = {
      pitch: mm(n('P')),
      tenon: { diameter: mm(Dt), depth: mm(n('dm')), tipFlat: mm(f), lean: tenonLean },
      recess: { diameter: mm(Dr), depth: mm(n('df')), tipFlat: mm(f), lean: recessLean },
    };
    const clearance = Dr - Dt + 2 * (n('df') + n('dm')) - (n('P') - 2 * f) / Math.tan(Math.PI / 6);
    return {
      play: value(axialPlay(pair)),
      playLinear: value(axialPlayLinear(mm(clearance), mm((Dt - Dr) / 2), mm(f), tenonLean, recessLean)),
    };
  },
  rockFreedom: (n) => ({
    deg: inDeg(value(rockingFreedom({ play: mm(n('B')), pitchDiameter: mm(n('Dp')), engaged: mm(n('L')) }))),
  }),
  shoulderGap: (n) => ({
    gap: value(
      shoulderGap(mm(n('Ds')), inRad(n('tauDeg')), {
        play: mm(n('B')),
        pitchDiameter: mm(n('Dp')),
        engaged: mm(n('L')),
      }),
    ),
  }),
  crestFlatEcc: (n) => ({ k: value(crestFlatRound(mm(n('k')), mm(n('e')), inRad(n('psiDeg')))) }),
  drunkenTilt: (n) => ({ tiltDeg: inDeg(value(drunkenTilt(mm(n('b')), mm(n('Dp'))))) }),
  flankShift: (n, given) => ({
    shift: value(
      askewFlankShift({
        part: given.external ? 'tenon' : 'recess',
        wall: n('side') === 1 ? 'inner' : 'mouth',
        pitch: mm(n('P')),
        hand: 'right',
        radius: mm(n('r')),
        cutterRadius: mm(n('rho')),
        lean: inRad(n('leanDeg')),
        helixTilt: inRad(n('tauDeg')),
      }),
    ),
  }),
  offsetDepth: (n) => ({ depth: value(depthAtHeight(mm(n('a0')), mm(n('a1')), mm(n('v')))) }),
  rootReach: (n, given) => ({
    root: value(rootRadius(given.external ? 'tenon' : 'recess', mm(n('a')), mm(n('v')), mm(n('Rc')))),
  }),
  slipWidening: (n) => {
    const effect = value(slipEffect(mm(2.54), mm(n('dN')), [{ depth: mm(n('dPrev')), slip: mm(n('e')) }]));
    return {
      absorbed: effect.absorbed,
      widening: effect.widening,
      lossPctOfHalfPitch_P254: 100 * effect.lostShare,
    };
  },
  slipTolerance: (n) => ({
    e: value(slipAllowed(mm(n('P')), mm(n('dN')), mm(n('dPrev')), n('lossPct') / 100)),
  }),
  slipPhase: (n) => ({ deg: inDeg(value(slipPhase(mm(n('e')), mm(n('P'))))) }),
  postRotation: (n) => ({ ...value(postTurned(mm(n('dx')), mm(n('dz')), inRad(n('dthetaDeg')))) }),
  crossslide: (n) => {
    const { radial, axial } = value(skewFeed(mm(n('dial')), inRad(n('epsDeg'))));
    return { radial, axial };
  },
  gaugeAngle: (n) => {
    const measured = value(
      angleFromGap(
        { value: mm(n('g')), uncertainty: mm(n('ug')) },
        { value: mm(n('b')), uncertainty: mm(n('ub')) },
      ),
    );
    return { deg: inDeg(measured.angle), uDeg: inDeg(measured.uncertainty) };
  },
};

describe('the alignment formulas against the reference vectors', () => {
  test('every item has vectors, and none is left out', () => {
    for (const item of ITEMS) expect(ours.filter((vector) => vector.item === item).length).toBeGreaterThan(0);
    expect(ours.filter(({ fn }) => !(fn in answer)).map(({ id }) => id)).toEqual([]);
  });

  test.each(ours.map((vector) => [vector.id, vector.fn, vector] as const))('%s %s', (_id, fn, vector) => {
    const number = (key: string): number => {
      const found = vector.inputs[key];
      if (typeof found !== 'number') throw new Error(`${vector.id} has no ${key}`);
      return found;
    };
    const got = answer[fn]?.(number, vector.inputs) ?? {};
    expect(Object.keys(got).sort()).toEqual(Object.keys(vector.outputs).sort());
    for (const [key, expected] of Object.entries(vector.outputs)) {
      const error = Math.abs((got[key] ?? Number.NaN) - expected);
      expect(error, `${key}: ${got[key]} for ${expected}`).toBeLessThanOrEqual(
        1e-5 * Math.abs(expected) + 1e-12,
      );
    }
  });
});
