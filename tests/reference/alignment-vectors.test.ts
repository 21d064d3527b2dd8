import { describe, expect, test } from 'vitest';
import vectors from '../../shared/joint-vectors.json' with { type: 'json' };
import { askewFlankShift } from '../../src/domain/alignment/askew-flank-shift.ts';
import { angleFromGap } from '../../src/domain/alignment/gauge.ts';
import { axialGap, axialPlay } from '../../src/domain/alignment/play.ts';
import { rockingFreedom, shoulderGap } from '../../src/domain/alignment/rocking.ts';
import { slipAbsorbed } from '../../src/domain/alignment/slip.ts';
import type { Result } from '../../src/domain/result.ts';
import { degrees, degreesFromRad, mm, rad, radFromDegrees } from '../../src/domain/units/brands.ts';

/* Source of the numbers: shared/joint-vectors.json, calculated for this project by two independent programs before this one. */

type Given = Readonly<Record<string, number | boolean>>;
type Answers = Readonly<Record<string, number>>;
interface Vector {
  readonly id: string;
  readonly item: string;
  readonly fn: string;
  readonly inputs: Given;
  readonly outputs: Answers;
}

const ITEMS = ['3', '4', '5', '7'];
const ours = (vectors.vectors as unknown as readonly Vector[]).filter(({ item }) => ITEMS.includes(item));

const value = <T>(answer: Result<T>): T => {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
};
const inRad = (angle: number) => radFromDegrees(degrees(angle));
const inDeg = (angle: number) => degreesFromRad(rad(angle));

const answer: Readonly<Record<string, (n: (key: string) => number, given: Given) => Answers>> = {
  axialGap: (n) => {
    const gap = value(axialGap(mm(n('he')), inRad(n('mismatchDeg'))));
    return { gap };
  },
  yawBacklashExact: (n) => {
    const [tenonLean, recessLean] = [inRad(n('leanMaleDeg')), inRad(n('leanFemaleDeg'))];
    const [Dt, Dr, f] = [n('Dt'), n('Dr'), n('f')];
    const pair = {
      pitch: mm(n('P')),
      tenon: { diameter: mm(Dt), depth: mm(n('dm')), tipFlat: mm(f), lean: tenonLean },
      recess: { diameter: mm(Dr), depth: mm(n('df')), tipFlat: mm(f), lean: recessLean },
    };
    return { play: value(axialPlay(pair)) };
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
  slipWidening: (n) => ({ absorbed: value(slipAbsorbed(mm(n('dN')), mm(n('dPrev')))) }),
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
