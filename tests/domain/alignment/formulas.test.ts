import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { askewFlankShift, bestTilt } from '../../../src/domain/alignment/askew-flank-shift.ts';
import { creepTaper, postTurned } from '../../../src/domain/alignment/creep.ts';
import { skewFeed } from '../../../src/domain/alignment/cross-slide.ts';
import { crestFlatRound, eccentricPair } from '../../../src/domain/alignment/eccentricity.ts';
import {
  againstReference,
  angleFromGap,
  angleFromSweep,
  leanFromSection,
  squareError,
  turnedMean,
} from '../../../src/domain/alignment/gauge.ts';
import { depthAtHeight, heightForShortfall, rootRadius } from '../../../src/domain/alignment/height.ts';
import { asGap } from '../../../src/domain/alignment/in-hand.ts';
import { flankAngles, mismatch, skewOf } from '../../../src/domain/alignment/lean.ts';
import { measuredAngle } from '../../../src/domain/alignment/measure.ts';
import {
  axialGap,
  axialPlay,
  axialPlayLinear,
  bindingMismatch,
  clearanceEaten,
  contactShare,
} from '../../../src/domain/alignment/play.ts';
import {
  drunkenTilt,
  reachToShoulder,
  rockingFreedom,
  shoulderGap,
} from '../../../src/domain/alignment/rocking.ts';
import { slipAllowed, slipEffect, slipPhase } from '../../../src/domain/alignment/slip.ts';
import type { Result } from '../../../src/domain/result.ts';
import { degrees, mm, type Radians, rad, radFromDegrees } from '../../../src/domain/units/brands.ts';

const value = <T>(answer: Result<T>): T => {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
};
const inRad = (angle: number): Radians => radFromDegrees(degrees(angle));
const small = fc.double({ min: -0.06, max: 0.06, noNaN: true });
const problemOf = (answer: Result<unknown>) => (answer.ok ? 'accepted' : answer.error.problem);

describe('lean', () => {
  test('with the axes level it is the yaw, signed by the side touched, and the tilt does not lean', () => {
    fc.assert(
      fc.property(small, small, fc.constantFrom(30, -30), (yaw, tilt, x) => {
        const skew = value(skewOf({ x: mm(x), y: mm(0), yaw: rad(yaw), tilt: rad(tilt) }));
        expect(skew.lean).toBeCloseTo(-Math.sign(x) * yaw, 12);
        expect(skew.helixTilt).toBeCloseTo(-Math.sign(x) * tilt, 12);
      }),
    );
  });
  test('is only turned, never made, by height: lean and helix tilt keep their root sum of squares', () => {
    fc.assert(
      fc.property(small, small, fc.double({ min: -20, max: 20, noNaN: true }), (yaw, tilt, y) => {
        const skew = value(skewOf({ x: mm(-30), y: mm(y), yaw: rad(yaw), tilt: rad(tilt) }));
        expect(Math.hypot(skew.lean, skew.helixTilt)).toBeCloseTo(Math.hypot(yaw, tilt), 12);
      }),
    );
  });
  test('opens one wall by what it closes the other, the other way round in a recess', () => {
    const tenon = value(flankAngles('tenon', inRad(2)));
    expect(tenon.inner).toBeCloseTo(inRad(32), 12);
    expect(tenon.mouth).toBeCloseTo(inRad(28), 12);
    expect(value(flankAngles('recess', inRad(2)))).toEqual({ inner: tenon.mouth, mouth: tenon.inner });
  });
  test('no side, no answer', () =>
    expect(problemOf(skewOf({ x: mm(0), y: mm(0), yaw: rad(0.01), tilt: rad(0) }))).toBe('out-of-range'));
});

describe('play', () => {
  const pair = (tenonLean: number, recessLean: number) => ({
    pitch: mm(2.54),
    tenon: { diameter: mm(42.474668), depth: mm(1.595314), tipFlat: mm(0.2), lean: rad(tenonLean) },
    recess: { diameter: mm(40), depth: mm(1.595314), tipFlat: mm(0.2), lean: rad(recessLean) },
  });
  test('the linear form keeps within 5 um of the walls to 4 degrees of mismatch', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.035, max: 0.035, noNaN: true }),
        fc.double({ min: -0.035, max: 0.035, noNaN: true }),
        (m, f) => {
          const linear = axialPlayLinear(mm(0.2), mm(1.237334), mm(0.2), rad(m), rad(f));
          expect(Math.abs(value(axialPlay(pair(m, f))) - value(linear))).toBeLessThan(0.005);
        },
      ),
    );
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
    expect(value(clearanceEaten(mm(1.2373), binds))).toBeCloseTo(0.2, 9);
    expect(value(bindingMismatch(mm(-0.1), mm(1.2)))).toBe(0);
  });
  test('a tenon that does not overlap has none to speak of', () => {
    const { tenon, recess, pitch } = pair(0, 0);
    expect(problemOf(axialPlay({ pitch, tenon: { ...tenon, diameter: mm(39) }, recess }))).toBe('conflict');
  });
  test('contact is whole without a gap', () => {
    expect(value(contactShare(mm(0)))).toBe(1);
    expect(value(contactShare(mm(0), mm(0)))).toBe(1);
  });
});

describe('tilt and height', () => {
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
    expect(value(bestTilt(1, mm(2.54), mm(25), 'left'))).toBeCloseTo(
      -value(bestTilt(1, mm(2.54), mm(25), 'right')),
      12,
    );
    expect(value(bestTilt(-1, mm(2.54), mm(25), 'right'))).toBeLessThan(0);
  });
  test('the height for a shortfall makes just that shortfall', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('tenon' as const, 'recess' as const),
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        (part, short) => {
          const [radius, cutter, depth] = [25, 15, 1.6];
          const height = value(
            heightForShortfall(
              { part, radius: mm(radius), cutterRadius: mm(cutter), depth: mm(depth) },
              mm(short),
            ),
          );
          const centre = part === 'tenon' ? radius + cutter : radius - cutter;
          const across = Math.sqrt(centre ** 2 - height ** 2);
          const cut = depthAtHeight(mm(across), mm(across + (part === 'tenon' ? -depth : depth)), height);
          expect(value(cut)).toBeCloseTo(depth - short, 9);
        },
      ),
    );
  });
  test('a cutter as large as its recess is refused', () => {
    const cut = { part: 'recess', radius: mm(8), cutterRadius: mm(8), depth: mm(1) } as const;
    expect(problemOf(heightForShortfall(cut, mm(0.02)))).toBe('conflict');
  });
});

describe('eccentricity, drunken threads and shoulders', () => {
  test('crests vary by 4 e tan A round a piece', () => {
    const [thin, thick] = [0, 180].map((at) => value(crestFlatRound(mm(0.5), mm(0.1), inRad(at))));
    const { tenonCrestVaries, crestGapLeft, outsideStep } = value(eccentricPair(mm(0.1), mm(0.05), mm(0.36)));
    expect((thick ?? 0) - (thin ?? 0)).toBeCloseTo(tenonCrestVaries, 12);
    expect(crestGapLeft).toBeCloseTo(0.21, 12);
    expect(outsideStep).toBeCloseTo(0.15, 12);
  });
  test('within its freedom a lid sits flush', () => {
    const thread = { play: mm(0.11547), pitchDiameter: mm(41.237), engaged: mm(6.35) };
    const freedom = value(rockingFreedom(thread));
    expect(value(shoulderGap(mm(50), freedom, thread))).toBe(0);
    expect(value(shoulderGap(mm(50), rad(-2 * freedom), thread))).toBeCloseTo(50 * freedom, 12);
    expect(value(rockingFreedom({ ...thread, play: mm(-0.1) }))).toBe(0);
  });
  test('a groove leaning to the shoulder brings the cutter nearer to it', () => {
    // 6.5 mm of tan 2 degrees, less half a body of 1 mm foreshortened: 0.227 mm more.
    expect(value(reachToShoulder(mm(1), mm(27.5), mm(21), inRad(2)))).toBeCloseTo(1 + 0.2264, 3);
    expect(value(reachToShoulder(mm(1), mm(27.5), mm(21), inRad(-2)))).toBeLessThan(1);
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
  test('a plate out of true cancels when it is turned half a turn', () => {
    const seen = (angle: number) => ({ angle: inRad(angle), uncertainty: inRad(0.01) });
    const mean = value(turnedMean(seen(0.3 + 0.05), seen(0.3 - 0.05)));
    expect(mean.angle).toBeCloseTo(inRad(0.3), 12);
    expect(mean.uncertainty).toBeCloseTo(inRad(0.01) / Math.SQRT2, 12);
  });
  test('a sweep reads over twice its arm; a reference adds its own doubt', () => {
    const swept = value(angleFromSweep(paper, { value: mm(75), uncertainty: mm(0) }));
    const gapped = value(angleFromGap(paper, { value: mm(150), uncertainty: mm(0) }));
    expect(swept).toEqual(gapped);
    const error = value(squareError(mm(0.2), mm(100)));
    expect(error).toBeCloseTo(0.001, 12);
    expect(value(againstReference(gapped, error)).uncertainty).toBeCloseTo(
      Math.hypot(gapped.uncertainty, error),
      12,
    );
  });
  test('a test groove of 32 and 28 degrees leans by 2', () =>
    expect(value(leanFromSection(inRad(32), inRad(28)))).toBeCloseTo(inRad(2), 12));
  test('a bank card over 80 mm is told as it is', () => expect(value(asGap(inRad(0.5)))).toBeCloseTo(0.7, 9));
});

describe('slip', () => {
  test('no slip, no loss; a spring pass absorbs nothing', () => {
    expect(value(slipEffect(mm(2.54), mm(1.6), []))).toMatchObject({ widening: 0, lostShare: 0 });
    const spring = value(slipEffect(mm(2.54), mm(1.6), [{ depth: mm(1.6), slip: mm(-0.01) }]));
    expect(spring.widening).toBeCloseTo(0.01, 12);
    expect(spring.absorbed).toBe(0);
  });
  test('what is allowed loses just the share it was allowed for', () => {
    const slip = value(slipAllowed(mm(2.54), mm(1.6), mm(1), 0.1));
    expect(value(slipEffect(mm(2.54), mm(1.6), [{ depth: mm(1), slip }])).lostShare).toBeCloseTo(0.1, 12);
  });
  test('an earlier pass deeper than the last is refused', () =>
    expect(problemOf(slipEffect(mm(2.54), mm(1), [{ depth: mm(1.2), slip: mm(0) }]))).toBe('out-of-range'));
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
        const angle = (at: number) => ({ angle: a(at), uncertainty: a(at + 1) });
        const thread = { play: l(0), pitchDiameter: l(1), engaged: l(2) };
        const piece = (at: number) => ({
          diameter: l(at),
          depth: l(at + 1),
          tipFlat: l(at + 2),
          lean: a(at + 3),
        });
        const answers: readonly Result<unknown>[] = [
          skewOf({ x: l(0), y: l(1), yaw: a(2), tilt: a(3) }),
          flankAngles(part, a(0)),
          mismatch(a(0), a(1)),
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
          bestTilt(-1, l(0), l(1), 'left'),
          axialGap(l(0), a(1)),
          contactShare(l(0), l(1)),
          clearanceEaten(l(0), a(1)),
          bindingMismatch(l(0), l(1)),
          axialPlay({ pitch: l(7), tenon: piece(0), recess: piece(3) }),
          axialPlayLinear(l(0), l(1), l(2), a(3), a(4)),
          rockingFreedom(thread),
          shoulderGap(l(3), a(4), thread),
          drunkenTilt(l(0), l(1)),
          reachToShoulder(l(0), l(1), l(2), a(3)),
          crestFlatRound(l(0), l(1), a(2)),
          eccentricPair(l(0), l(1), l(2)),
          postTurned(l(0), l(1), a(2)),
          creepTaper(l(0), a(1), l(2)),
          depthAtHeight(l(0), l(1), l(2)),
          rootRadius(part, l(0), l(1), l(2)),
          heightForShortfall({ part, radius: l(0), cutterRadius: l(1), depth: l(2) }, l(3)),
          slipEffect(l(0), l(1), [{ depth: l(2), slip: l(3) }]),
          slipAllowed(l(0), l(1), l(2), numbers[3] ?? 0),
          slipPhase(l(0), l(1)),
          skewFeed(l(0), a(1)),
          angleFromGap(measured(0), measured(2)),
          angleFromSweep(measured(0), measured(2)),
          turnedMean(angle(0), angle(2)),
          againstReference(angle(0), a(2)),
          squareError(l(0), l(1)),
          leanFromSection(a(0), a(1)),
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
