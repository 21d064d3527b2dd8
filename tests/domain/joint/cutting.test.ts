import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastWall, usualClearance } from '../../../src/domain/joint/clearance.ts';
import {
  deepenForClearance,
  deepenForFading,
  deepenForPlay,
  deepenFromTwoTries,
} from '../../../src/domain/joint/correction.ts';
import { cuttingSense } from '../../../src/domain/joint/cutting-sense.ts';
import { depthOfTurns, dialTarget, toBenchStep } from '../../../src/domain/joint/dial.ts';
import { filmLoss, sandedGain } from '../../../src/domain/joint/film.ts';
import { flankShift } from '../../../src/domain/joint/helix.ts';
import {
  cutterForLean,
  cutterForShift,
  largestCutter,
  neckFor,
  recessForShift,
} from '../../../src/domain/joint/largest-cutter.ts';
import { passDepths, passLoads } from '../../../src/domain/joint/passes.ts';
import { feedPerTooth, scallopHeight } from '../../../src/domain/joint/scallops.ts';
import {
  angleOfFacing,
  mostRemoval,
  planSeat,
  shoulderRemoval,
  toGo,
} from '../../../src/domain/joint/seat.ts';
import {
  degrees,
  degreesFromRad,
  mm,
  pitchFromTpi,
  rad,
  radFromDegrees,
  turns,
} from '../../../src/domain/units/brands.ts';
import { gotten, refusalOf } from './results.ts';

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
    expect(gotten(depthOfTurns(turns(1.5), dial)) / 25.4).toBeCloseTo(0.075, 12);
    expect(gotten(dialTarget(mm(0.075 * 25.4), dial)).turns).toBeCloseTo(1.5, 12);
  });

  test('whole turns and marks to a half mark, carried over at a full turn', () => {
    const dial = { travelPerTurn: mm(1.27), marksPerTurn: 50 };
    expect(gotten(dialTarget(mm(1.6), dial))).toMatchObject({ wholeTurns: 1, marks: 13 });
    expect(gotten(dialTarget(mm(1.2699), dial))).toMatchObject({ wholeTurns: 1, marks: 0 });
    expect(gotten(dialTarget(mm(1.6), { travelPerTurn: mm(1.27) })).marks).toBeNull();
  });

  test('lengths to a bench step: 0.05 mm or 2 thou, never nothing for something', () => {
    expect(toBenchStep(mm(0.13), 'metric')).toBe(0.15);
    expect(toBenchStep(mm(0.001), 'metric')).toBe(0.05);
    expect(toBenchStep(mm(0), 'metric')).toBe(0);
    expect(toBenchStep(mm(0.1), 'inch')).toBeCloseTo(0.1016, 9);
    expect(toBenchStep(mm(Number.NaN), 'inch')).toBe(0);
  });
});

describe('passes', () => {
  const groove = { form: { pitch: mm(2.54), tipFlat: mm(0.2) }, depth: mm(1.6) };

  test('two thirds and one third; 60, 30 and 10 per cent', () => {
    expect(gotten(passDepths(groove, { by: 'two-thirds' })).map((d) => d / 1.6)).toEqual([2 / 3, 1]);
    expect(gotten(passDepths(groove, { by: 'crumbly' })).map((d) => d / 1.6)).toEqual([0.6, 0.9, 1]);
  });

  test('equal area and equal force load every pass alike, and end at full depth', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }),
        within(0.3, 1.9),
        within(0, 0.4),
        within(0, 0.3),
        (passes, d, tip, edge) => {
          const given = { form: { pitch: mm(2.7), tipFlat: mm(tip) }, depth: mm(d) };
          const area = gotten(passDepths(given, { by: 'equal-area', passes }));
          const loads = gotten(passLoads(given, area));
          for (const load of loads) expect(load).toBeCloseTo(loads[0] ?? 0, 7);
          const force = gotten(passDepths(given, { by: 'equal-force', passes, edgeLoad: mm(edge) }));
          const forces = gotten(passLoads(given, force, mm(edge)));
          expect(area.at(-1)).toBe(d);
          expect(force.at(-1)).toBe(d);
          // When the edge alone outweighs a share of the chip no equal sharing exists: the first pass then takes all it can.
          if (force.every((depth, i) => depth > (force[i - 1] ?? 0) + 1e-9))
            for (const load of forces) expect(load).toBeCloseTo(forces[0] ?? 0, 6);
          const whole = gotten(passLoads(given, [given.depth]));
          expect(loads.reduce((sum, load) => sum + load, 0)).toBeCloseTo(whole[0] ?? 0, 9);
        },
      ),
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

  test('weighing the edge moves depth into the first pass', () => {
    const first = (edge: number) =>
      gotten(passDepths(groove, { by: 'equal-force', passes: 2, edgeLoad: mm(edge) }))[0] ?? 0;
    expect(first(0)).toBeCloseTo(gotten(passDepths(groove, { by: 'equal-area', passes: 2 }))[0] ?? 0, 9);
    expect(first(0.15)).toBeGreaterThan(first(0));
  });

  test('with no edge to weigh, equal force is equal area, however many passes', () => {
    for (const passes of [1, 2, 3, 5, 8]) {
      const area = gotten(passDepths(groove, { by: 'equal-area', passes }));
      const force = gotten(passDepths(groove, { by: 'equal-force', passes, edgeLoad: mm(0) }));
      expect(force).toEqual(area.map((depth) => expect.closeTo(depth, 9)));
    }
  });

  test('a spring pass at the same depth cuts nothing', () => {
    expect(gotten(passLoads(groove, [mm(1.6), mm(1.6)]))[1]).toBe(0);
  });

  test('a depth beyond the V, half a pass, or depths that shrink are refused', () => {
    expect(refusalOf(passDepths({ ...groove, depth: mm(2.1) }, { by: 'two-thirds' }))).toMatchObject({
      field: 'depth',
    });
    expect(refusalOf(passDepths(groove, { by: 'equal-area', passes: 1.5 }))).toMatchObject({
      problem: 'not-a-number',
      field: 'passes',
    });
    expect(refusalOf(passLoads(groove, [mm(1), mm(0.5)]))).toMatchObject({ problem: 'conflict' });
  });
});

describe('what a cutter can get into', () => {
  test('an 8 mm cutter needs a recess of 17 mm', () => {
    expect(gotten(largestCutter(mm(17), pitchFromTpi(10), rad(0), mm(2))).radius).toBeCloseTo(8, 9);
    expect(gotten(largestCutter(mm(17), pitchFromTpi(10), rad(0))).limitedBy).toBe('widening');
    expect(gotten(largestCutter(mm(17), mm(0.5), rad(0))).limitedBy).toBe('entry');
    expect(gotten(largestCutter(mm(100), mm(0.5), radFromDegrees(degrees(5)))).limitedBy).toBe('lean');
  });

  test('cutter for a recess and recess for a cutter are each other turned round', () => {
    fc.assert(
      fc.property(within(1, 6), within(5, 100), within(0.001, 0.1), (pitch, radius, shift) => {
        const cutter = gotten(cutterForShift(mm(pitch), mm(radius), mm(shift)));
        fc.pre(cutter >= 0.5);
        expect(gotten(recessForShift(mm(pitch), cutter, mm(shift)))).toBeCloseTo(radius, 6);
        const found = gotten(
          flankShift({ part: 'recess', pitch: mm(pitch), workRadius: mm(radius), cutterRadius: cutter }),
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

  test('a cutter as big as the recess is a conflict; no lean, no limit but the recess; no neck left is none', () => {
    const cut = { part: 'recess', pitch: mm(2.54), workRadius: mm(20), cutterRadius: mm(20) } as const;
    expect(refusalOf(flankShift(cut))).toMatchObject({ field: 'cutterRadius', other: 'workRadius' });
    expect(gotten(cutterForLean(mm(25), rad(0)))).toBeCloseTo(25, 12);
    expect(gotten(cutterForLean(mm(25), radFromDegrees(degrees(-2))))).toBeCloseTo(
      gotten(cutterForLean(mm(25), radFromDegrees(degrees(2)))),
      12,
    );
    expect(gotten(neckFor(mm(2), mm(1.8)))).toBe(0);
  });
});

test('scallops grow with the square of the crank speed, and vanish when cutter and recess are one', () => {
  const feed = (crankSpeed: number) =>
    gotten(feedPerTooth({ workRadius: mm(25), crankSpeed, cutterSpeed: 2500, teeth: 1 }));
  const at = (speed: number) => gotten(scallopHeight('tenon', feed(speed), mm(15), mm(25)));
  expect(at(20) / at(10)).toBeCloseTo(4, 9);
  expect(gotten(scallopHeight('recess', feed(10), mm(25), mm(25)))).toBe(0);
  const twoTeeth = feedPerTooth({ workRadius: mm(25), crankSpeed: 10, cutterSpeed: 2500, teeth: 2 });
  expect(gotten(twoTeeth)).toBeCloseTo(feed(10) / 2, 12);
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

  test('0.05 mm of facing is 7 degrees at 10 to the inch, 11 at 16 (common practice, no source)', () => {
    expect(degreesFromRad(gotten(angleOfFacing(pitch, mm(0.05))))).toBeCloseTo(7.087, 3);
    expect(degreesFromRad(gotten(angleOfFacing(pitchFromTpi(16), mm(0.05))))).toBeCloseTo(11.339, 3);
  });

  test('facing and removal are each other turned round', () => {
    fc.assert(
      fc.property(within(0, 6.28), (angle) => {
        const removal = gotten(shoulderRemoval(pitch, rad(angle)));
        expect(gotten(angleOfFacing(pitch, removal))).toBeCloseTo(angle, 9);
      }),
    );
  });

  test('gone past: on to the next match, a full turn for a figure, half for an oval', () => {
    const past = { past: radFromDegrees(degrees(30)) };
    expect(degreesFromRad(gotten(toGo(past, 'figure')))).toBeCloseTo(330, 9);
    expect(degreesFromRad(gotten(toGo(past, 'oval')))).toBeCloseTo(150, 9);
    expect(gotten(toGo({ past: rad(0) }, 'figure'))).toBe(0);
    expect(gotten(toGo({ toGo: rad(2 * Math.PI) }, 'figure'))).toBe(0);
  });

  test('a plan stops short by what a shoulder burnishes, and takes half first', () => {
    const room = { bottomGap: mm(2.5), freeThread: mm(2) };
    const plan = gotten(planSeat(pitch, { toGo: radFromDegrees(degrees(47.5)) }, 'figure', room));
    expect(plan.removal).toBeCloseTo((2.54 * 40) / 360, 9);
    expect(plan.firstStep).toBeCloseTo(plan.removal / 2, 12);
    expect(plan).toMatchObject({ limitedBy: 'thread', most: 2 });
    expect(gotten(planSeat(pitch, { toGo: rad(0) }, 'figure', room)).removal).toBe(0);
  });

  test('no room to go that far is a conflict that says how far it can go', () => {
    const room = { bottomGap: mm(0.8), freeThread: mm(2) };
    expect(gotten(mostRemoval(room))).toMatchObject({ limitedBy: 'floor' });
    const refusal = refusalOf(planSeat(pitch, { toGo: radFromDegrees(degrees(200)) }, 'figure', room));
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

describe('corrections', () => {
  test('by clearance and by the play that it makes, the same', () => {
    fc.assert(
      fc.property(within(0, 1), within(0, 1), (now, wanted) => {
        const slope = Math.tan(Math.PI / 6);
        expect(gotten(deepenForPlay(mm(now * slope), mm(wanted * slope)))).toBeCloseTo(
          gotten(deepenForClearance(mm(now), mm(wanted))),
          9,
        );
      }),
    );
  });

  test('two tries find an even interference whose turns grow as one over it', () => {
    fc.assert(
      fc.property(within(0.05, 0.5), within(0.1, 0.8), within(0, 0.4), (interference, share, wanted) => {
        const deepened = (share * interference) / 2;
        const tries = {
          deepened: mm(deepened),
          turnsBefore: turns(0.3 / interference),
          turnsAfter: turns(0.3 / (interference - 2 * deepened)),
        };
        const more = gotten(deepenFromTwoTries(tries, mm(wanted)));
        expect(-interference + 2 * deepened + 2 * more).toBeCloseTo(wanted, 6);
      }),
    );
  });

  test('nothing gained, or play that never fades, is a conflict', () => {
    const tries = { deepened: mm(0.1), turnsBefore: turns(2), turnsAfter: turns(2) };
    expect(refusalOf(deepenFromTwoTries(tries, mm(0.3)))).toMatchObject({ field: 'turnsAfter' });
    const hardly = { ...tries, turnsAfter: turns(2 + Number.EPSILON * 4) };
    expect(refusalOf(deepenFromTwoTries(hardly, mm(0.3)))).toMatchObject({ field: 'turnsAfter' });
    const fading = { endPlay: mm(0.1), turnsBefore: turns(2), turnsFree: turns(2) };
    expect(refusalOf(deepenForFading(fading, turns(3), mm(0.05)))).toMatchObject({ field: 'turnsFree' });
  });

  test('sanding one piece gives back half of what a film as thick eats on both', () => {
    const loss = gotten(filmLoss(mm(0.02)));
    expect(loss.clearance).toBeCloseTo(0.16, 12);
    expect(loss.endPlay).toBeCloseTo(0.0924, 4);
    expect(gotten(sandedGain(mm(0.02)))).toBeCloseTo(0.08, 12);
  });
});
