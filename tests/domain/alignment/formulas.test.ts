import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { askewFlankShift } from '../../../src/domain/alignment/askew-flank-shift.ts';
import { angleFromGap, angleFromSweep } from '../../../src/domain/alignment/gauge.ts';
import { asGap } from '../../../src/domain/alignment/in-hand.ts';
import { measuredAngle } from '../../../src/domain/alignment/measure.ts';
import { axialGap, axialPlay, bindingMismatch } from '../../../src/domain/alignment/play.ts';
import { rockingFreedom, shoulderGap } from '../../../src/domain/alignment/rocking.ts';
import { slipAbsorbed } from '../../../src/domain/alignment/slip.ts';
import { SLOPE } from '../../../src/domain/joint/profile.ts';
import type { Result } from '../../../src/domain/result.ts';
import { degrees, mm, type Radians, rad, radFromDegrees } from '../../../src/domain/units/brands.ts';

const value = <T>(answer: Result<T>): T => {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
};
const inRad = (angle: number): Radians => radFromDegrees(degrees(angle));
const small = fc.double({ min: -0.06, max: 0.06, noNaN: true });
const problemOf = (answer: Result<unknown>) => (answer.ok ? 'accepted' : answer.error.problem);

describe('play', () => {
  const pair = (tenonLean: number, recessLean: number) => ({
    pitch: mm(2.54),
    tenon: { diameter: mm(42.474668), depth: mm(1.595314), tipFlat: mm(0.2), lean: rad(tenonLean) },
    recess: { diameter: mm(40), depth: mm(1.595314), tipFlat: mm(0.2), lean: rad(recessLean) },
  });
  test('lean never adds any, and its sense does not matter to a pair', () => {
    fc.assert(
      fc.property(small, small, (m, f) => {
        const play = value(axialPlay(pair(m, f)));
        expect(play).toBeLessThanOrEqual(value(axialPlay(pair(0, 0))) + 1e-9);
        expect(value(axialPlay(pair(-m, -f)))).toBeCloseTo(play, 9);
      }),
    );
  });
  test('helix widening comes back in full', () => {
    const { tenon, recess, pitch } = pair(0.01, 0.01);
    const wider = axialPlay({
      pitch,
      tenon: { ...tenon, flankShift: mm(0.002) },
      recess: { ...recess, flankShift: mm(0.008) },
    });
    expect(value(wider) - value(axialPlay({ pitch, tenon, recess }))).toBeCloseTo(0.02, 9);
  });
  test('the mismatch that binds is the one that eats the whole clearance', () => {
    const binds = value(bindingMismatch(mm(0.2), mm(1.2373)));
    expect(value(axialGap(mm(1.2373), binds)) / SLOPE).toBeCloseTo(0.2, 9);
    expect(value(bindingMismatch(mm(-0.1), mm(1.2)))).toBe(0);
  });
  test('a tenon that does not overlap has none to speak of', () => {
    const { tenon, recess, pitch } = pair(0, 0);
    expect(problemOf(axialPlay({ pitch, tenon: { ...tenon, diameter: mm(39) }, recess }))).toBe('conflict');
  });
});

describe('tilt', () => {
  test('a left-hand thread is the mirror of a right-hand one', () => {
    fc.assert(
      fc.property(small, (tilt) => {
        const point = {
          part: 'recess',
          wall: 'inner',
          pitch: mm(2.54),
          radius: mm(25),
          cutterRadius: mm(13),
          lean: rad(0),
        } as const;
        const right = askewFlankShift({ ...point, hand: 'right', helixTilt: rad(tilt) });
        const left = askewFlankShift({ ...point, hand: 'left', helixTilt: rad(-tilt) });
        expect(value(left)).toBeCloseTo(value(right), 12);
      }),
    );
  });
});

describe('shoulders', () => {
  test('within its freedom a lid sits flush', () => {
    const thread = { play: mm(0.11547), pitchDiameter: mm(41.237), engaged: mm(6.35) };
    const freedom = value(rockingFreedom(thread));
    expect(value(shoulderGap(mm(50), freedom, thread))).toBe(0);
    expect(value(shoulderGap(mm(50), rad(-2 * freedom), thread))).toBeCloseTo(50 * freedom, 12);
    expect(value(rockingFreedom({ ...thread, play: mm(-0.1) }))).toBe(0);
  });
});

describe('gauges', () => {
  const paper = { value: mm(0.1), uncertainty: mm(0.03) };
  test('propagated uncertainty agrees with drawing readings at random', () => {
    // Law of propagation, JCGM 100 (GUM) 5.1.2, against a seeded Monte Carlo in the manner of JCGM 101.
    let state = 12345;
    const uniform = () => {
      state = (state * 1103515245 + 12345) % 2147483648;
      return (state + 0.5) / 2147483648;
    };
    const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const [gap, over] = [
      { value: mm(2), uncertainty: mm(0.1) },
      { value: mm(200), uncertainty: mm(4) },
    ];
    const draws = Array.from({ length: 40000 }, () =>
      Math.atan((gap.value + gap.uncertainty * normal()) / (over.value + over.uncertainty * normal())),
    );
    const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length;
    const spread = Math.sqrt(draws.reduce((sum, draw) => sum + (draw - mean) ** 2, 0) / draws.length);
    expect(value(angleFromGap(gap, over)).uncertainty / spread).toBeCloseTo(1, 1);
    expect(Math.abs(value(angleFromGap(gap, over)).uncertainty / spread - 1)).toBeLessThan(0.02);
  });
  test('a sweep reads over twice its arm', () => {
    const swept = value(angleFromSweep(paper, { value: mm(75), uncertainty: mm(0) }));
    const gapped = value(angleFromGap(paper, { value: mm(150), uncertainty: mm(0) }));
    expect(swept).toEqual(gapped);
  });
  test('a bank card over 80 mm is told as it is', () => expect(value(asGap(inRad(0.5)))).toBeCloseTo(0.7, 9));
});

describe('slip', () => {
  test('a pass to the same depth absorbs none of it, a deeper one 0.577 mm for each mm', () => {
    expect(value(slipAbsorbed(mm(1.6), mm(1.6)))).toBe(0);
    expect(value(slipAbsorbed(mm(1.6), mm(0.6)))).toBeCloseTo(0.57735, 5);
  });
  test('an earlier pass deeper than the last is refused', () =>
    expect(problemOf(slipAbsorbed(mm(1), mm(1.2)))).toBe('out-of-range'));
});

test('no function answers NaN, an infinity or a throw, whatever it is given', () => {
  const any = fc.oneof(
    fc.double(),
    fc.double({ min: -1, max: 60, noNaN: true }),
    small,
    fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, -0, 1e-320, 1e308),
  );
  const clean = (thing: unknown): boolean =>
    typeof thing === 'number'
      ? Number.isFinite(thing)
      : typeof thing !== 'object' || thing === null || Object.values(thing).every(clean);
  const given = (at: number) => ({ mm: mm(at), text: `${at} mm` });
  fc.assert(
    fc.property(
      fc.array(any, { minLength: 8, maxLength: 8 }),
      fc.constantFrom('tenon' as const, 'recess' as const),
      (numbers, part) => {
        const l = (at: number) => mm(numbers[at] ?? 0);
        const a = (at: number) => rad(numbers[at] ?? 0);
        const measured = (at: number) => ({ value: l(at), uncertainty: l(at + 1) });
        const thread = { play: l(0), pitchDiameter: l(1), engaged: l(2) };
        const piece = (at: number) => ({
          diameter: l(at),
          depth: l(at + 1),
          tipFlat: l(at + 2),
          lean: a(at + 3),
        });
        const answers: readonly Result<unknown>[] = [
          askewFlankShift({
            part,
            wall: 'mouth',
            pitch: l(0),
            hand: 'left',
            radius: l(1),
            cutterRadius: l(2),
            lean: a(3),
            helixTilt: a(4),
          }),
          axialGap(l(0), a(1)),
          bindingMismatch(l(0), l(1)),
          axialPlay({ pitch: l(7), tenon: piece(0), recess: piece(3) }),
          rockingFreedom(thread),
          shoulderGap(l(3), a(4), thread),
          slipAbsorbed(l(0), l(1)),
          angleFromGap(measured(0), measured(2)),
          angleFromSweep(measured(0), measured(2)),
          asGap(a(0), l(1)),
          measuredAngle({
            kind: 'gap',
            gap: given(numbers[0] ?? 0),
            over: given(numbers[1] ?? 0),
            plane: 'lean',
          }),
        ];
        const bad = answers.findIndex((answer) =>
          answer.ok ? !clean(answer.value) : answer.error.field.length === 0,
        );
        expect(bad).toBe(-1);
      },
    ),
    { numRuns: 1500 },
  );
}, 30_000);
