import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastWall, usualClearance } from '../../../src/domain/joint/clearance.ts';
import { cuttingSense } from '../../../src/domain/joint/cutting-sense.ts';
import { dialTarget } from '../../../src/domain/joint/dial.ts';
import { filmLoss } from '../../../src/domain/joint/film.ts';
import { flankShift } from '../../../src/domain/joint/helix.ts';
import { neckFor, recessForShift } from '../../../src/domain/joint/largest-cutter.ts';
import { passDepths } from '../../../src/domain/joint/passes.ts';
import { mostRemoval, planSeat, toGo } from '../../../src/domain/joint/seat.ts';
import {
  degrees,
  degreesFromRad,
  mm,
  pitchFromTpi,
  rad,
  radFromDegrees,
} from '../../../src/domain/units/brands.ts';
import { gotten, refusalOf } from './results.ts';

const STEP = mm(0.05);
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('climb or conventional', () => {
  const usual = { hand: 'right', direction: 'in', lathe: 'forward' } as const;

  test('cranking in, right-hand thread, lathe forward: a recess cuts conventionally, a tenon climbs (common practice, no source)', () => {
    expect(cuttingSense({ ...usual, part: 'recess' })).toBe('conventional');
    expect(cuttingSense({ ...usual, part: 'tenon' })).toBe('climb');
  });

  test('from the velocities of tooth and wood where they meet, for every case', () => {
    for (const part of ['recess', 'tenon'] as const)
      for (const hand of ['right', 'left'] as const)
        for (const direction of ['in', 'out'] as const)
          for (const lathe of ['forward', 'reverse'] as const) {
            const [cutterRadius, workRadius] = [10, 25];
            // Cutter at the origin, work axis on x; z toward the tailstock; the contact where the two circles touch.
            const axis = part === 'tenon' ? cutterRadius + workRadius : -(workRadius - cutterRadius);
            const contact = cutterRadius;
            const spin = lathe === 'forward' ? 1000 : -1000;
            const advance = direction === 'in' ? -1 : 1;
            const turn = hand === 'right' ? advance : -advance;
            const tooth = spin * contact;
            const wood = turn * (contact - axis);
            expect(
              cuttingSense({ part, hand, direction, lathe }),
              `${part} ${hand} ${direction} ${lathe}`,
            ).toBe(tooth * wood > 0 ? 'climb' : 'conventional');
          }
  });

  test('a left-hand thread, cranking out, or a lathe in reverse each turn it round', () => {
    expect(cuttingSense({ ...usual, part: 'tenon', hand: 'left' })).toBe('conventional');
    expect(cuttingSense({ ...usual, part: 'tenon', direction: 'out' })).toBe('conventional');
    expect(cuttingSense({ ...usual, part: 'tenon', lathe: 'reverse' })).toBe('conventional');
    expect(cuttingSense({ ...usual, part: 'tenon', hand: 'left', lathe: 'reverse' })).toBe('climb');
  });
});

describe('the dial', () => {
  test('one and a half turns of a 20-per-inch cross-screw are 0.075 in (common practice, no source)', () => {
    const dial = { travelPerTurn: pitchFromTpi(20) };
    expect(gotten(dialTarget(mm(0.075 * 25.4), dial)).turns).toBeCloseTo(1.5, 12);
  });

  test('whole turns and marks to a half mark, carried over at a full turn', () => {
    const dial = { travelPerTurn: mm(1.27), marksPerTurn: 50 };
    expect(gotten(dialTarget(mm(1.6), dial))).toMatchObject({ wholeTurns: 1, marks: 13 });
    expect(gotten(dialTarget(mm(1.2699), dial))).toMatchObject({ wholeTurns: 1, marks: 0 });
    expect(gotten(dialTarget(mm(1.6), { travelPerTurn: mm(1.27) })).marks).toBeNull();
  });
});

describe('passes', () => {
  const groove = { form: { pitch: mm(2.54), tipFlat: mm(0.2) }, depth: mm(1.6) };

  test('two thirds and one third; 60, 30 and 10 per cent', () => {
    expect(gotten(passDepths(groove, { by: 'two-thirds' })).map((d) => d / 1.6)).toEqual([2 / 3, 1]);
    expect(gotten(passDepths(groove, { by: 'crumbly' })).map((d) => d / 1.6)).toEqual([0.6, 0.9, 1]);
  });

  test('equal area takes as much wood in every pass, and ends at full depth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), within(0.3, 1.9), within(0, 0.4), (passes, d, tip) => {
        const given = { form: { pitch: mm(2.7), tipFlat: mm(tip) }, depth: mm(d) };
        const depths = gotten(passDepths(given, { by: 'equal-area', passes }));
        // Section of a groove with a flat of `tip` at its root and flanks at 30 degrees.
        const section = (depth: number) => tip * depth + depth ** 2 / Math.sqrt(3);
        for (const [i, depth] of depths.entries())
          expect(section(depth) - section(depths[i - 1] ?? 0)).toBeCloseTo(section(d) / passes, 7);
        expect(depths.at(-1)).toBe(d);
      }),
    );
  });

  test('the habit is equal area when the tip is 0.192 of the depth', () => {
    const depth = 1.6;
    const habit = {
      form: { pitch: mm(2.54), tipFlat: mm((depth * Math.tan(Math.PI / 6)) / 3) },
      depth: mm(depth),
    };
    const [first] = gotten(passDepths(habit, { by: 'equal-area', passes: 2 }));
    expect((first ?? 0) / depth).toBeCloseTo(2 / 3, 12);
  });

  test('a depth beyond the V or half a pass is refused', () => {
    expect(refusalOf(passDepths({ ...groove, depth: mm(2.1) }, { by: 'two-thirds' }))).toMatchObject({
      field: 'depth',
    });
    expect(refusalOf(passDepths(groove, { by: 'equal-area', passes: 1.5 }))).toMatchObject({
      problem: 'not-a-number',
      field: 'passes',
    });
  });
});

describe('what a cutter can get into', () => {
  test('the least recess for a cutter is widened by just what was allowed', () => {
    fc.assert(
      fc.property(within(1, 6), within(2, 60), within(0.001, 0.1), (pitch, cutter, shift) => {
        const radius = gotten(recessForShift(mm(pitch), mm(cutter), mm(shift)));
        const found = gotten(
          flankShift({ part: 'recess', pitch: mm(pitch), workRadius: radius, cutterRadius: mm(cutter) }),
        );
        expect(found).toBeCloseTo(shift, 9);
      }),
    );
  });

  test('a recess widens more than a tenon; a bigger cutter more than a smaller', () => {
    fc.assert(
      fc.property(within(1, 6), within(10, 60), within(0.1, 0.9), (pitch, radius, share) => {
        const at = (part: 'recess' | 'tenon', cutter: number) =>
          gotten(flankShift({ part, pitch: mm(pitch), workRadius: mm(radius), cutterRadius: mm(cutter) }));
        expect(at('recess', share * radius)).toBeGreaterThan(at('tenon', share * radius));
        expect(at('recess', share * radius)).toBeGreaterThanOrEqual(at('recess', 0.9 * share * radius));
      }),
    );
  });

  test('a cutter as big as the recess is a conflict; no neck left is none', () => {
    const cut = { part: 'recess', pitch: mm(2.54), workRadius: mm(20), cutterRadius: mm(20) } as const;
    expect(refusalOf(flankShift(cut))).toMatchObject({ field: 'cutterRadius', other: 'workRadius' });
    expect(gotten(neckFor(mm(2), mm(1.8)))).toBe(0);
  });
});

describe('clearance by pitch (common practice, no source)', () => {
  test('0.30 to 0.40 mm at 10 to the inch, 0.20 to 0.25 at 16; in order at every pitch', () => {
    const ten = gotten(usualClearance(pitchFromTpi(10)));
    expect([ten.least, ten.usual, ten.most].map((c) => Number(c.toFixed(9)))).toEqual([0.3, 0.35, 0.4]);
    const sixteen = gotten(usualClearance(pitchFromTpi(16)));
    expect([sixteen.least, sixteen.most].map((c) => Number(c.toFixed(9)))).toEqual([0.2, 0.25]);
    fc.assert(
      fc.property(within(0.25, 12.7), (pitch) => {
        const { least, usual, most } = gotten(usualClearance(mm(pitch)));
        expect(least).toBeGreaterThan(0);
        expect(usual).toBeGreaterThanOrEqual(least);
        expect(most).toBeGreaterThanOrEqual(usual);
        expect(gotten(leastWall(mm(pitch)))).toBeGreaterThanOrEqual(1);
      }),
    );
    expect(gotten(leastWall(pitchFromTpi(10)))).toBeCloseTo(3, 9);
    expect(gotten(leastWall(pitchFromTpi(16)))).toBeCloseTo(2.5, 9);
  });
});

describe('seat and grain', () => {
  const pitch = pitchFromTpi(10);

  test('gone past: on to the next match, a full turn for a figure, half for an oval', () => {
    const past = { past: radFromDegrees(degrees(30)) };
    expect(degreesFromRad(gotten(toGo(past, 'figure')))).toBeCloseTo(330, 9);
    expect(degreesFromRad(gotten(toGo(past, 'oval')))).toBeCloseTo(150, 9);
    expect(gotten(toGo({ past: rad(0) }, 'figure'))).toBe(0);
    expect(gotten(toGo({ toGo: rad(2 * Math.PI) }, 'figure'))).toBe(0);
  });

  test('a plan stops short by what a shoulder burnishes, and takes half first', () => {
    const room = { bottomGap: mm(2.5), freeThread: mm(2) };
    const plan = gotten(planSeat(pitch, { toGo: radFromDegrees(degrees(47.5)) }, 'figure', room, STEP));
    expect(plan.removal).toBeCloseTo((2.54 * 40) / 360, 9);
    // Half of 0.282 mm in steps of 0.05.
    expect(plan.firstStep).toBeCloseTo(0.1, 12);
    expect(plan).toMatchObject({ limitedBy: 'thread', most: 2 });
    expect(gotten(planSeat(pitch, { toGo: rad(0) }, 'figure', room, STEP)).removal).toBe(0);
  });

  test('a step never turns the lid past the mark', () => {
    const room = { bottomGap: mm(20), freeThread: mm(20) };
    fc.assert(
      fc.property(within(0, 360), within(0.5, 5), (toGoNow, turn) => {
        const plan = gotten(
          planSeat(mm(turn), { toGo: radFromDegrees(degrees(toGoNow)) }, 'figure', room, STEP),
        );
        expect((360 * plan.firstStep) / turn).toBeLessThanOrEqual(toGoNow / 2 + 1e-9);
      }),
    );
  });

  test('no room to go that far is a conflict that says how far it can go', () => {
    const room = { bottomGap: mm(0.8), freeThread: mm(2) };
    expect(gotten(mostRemoval(room))).toMatchObject({ limitedBy: 'floor' });
    const refusal = refusalOf(planSeat(pitch, { toGo: radFromDegrees(degrees(200)) }, 'figure', room, STEP));
    expect(refusal).toMatchObject({
      problem: 'conflict',
      field: 'toGo',
      other: 'bottomGap',
      quantity: 'angle',
    });
    if (refusal.problem !== 'conflict') throw new Error('no conflict');
    expect(degreesFromRad(rad(refusal.nearest ?? Number.NaN))).toBeCloseTo((0.5 / 2.54) * 360, 6);
  });
});

describe('a film', () => {
  test('eats eight times its thickness of clearance', () => {
    const loss = gotten(filmLoss(mm(0.02)));
    expect(loss.clearance).toBeCloseTo(0.16, 12);
    expect(loss.endPlay).toBeCloseTo(0.0924, 4);
  });
});
