import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clearanceBudget, leastWall, usualClearance } from '../../../src/domain/joint/clearance.ts';
import { dialTarget } from '../../../src/domain/joint/dial.ts';
import * as engagement from '../../../src/domain/joint/engagement.ts';
import { filmLoss } from '../../../src/domain/joint/film.ts';
import { fitOf, tenonForClearance } from '../../../src/domain/joint/fit.ts';
import * as helix from '../../../src/domain/joint/helix.ts';
import * as largest from '../../../src/domain/joint/largest-cutter.ts';
import { passDepths } from '../../../src/domain/joint/passes.ts';
import * as profile from '../../../src/domain/joint/profile.ts';
import * as seat from '../../../src/domain/joint/seat.ts';
import * as sizes from '../../../src/domain/joint/sizes.ts';
import { checkTenon } from '../../../src/domain/joint/tenon-check.ts';
import { learnTipFlat } from '../../../src/domain/joint/tip-flat.ts';
import { mm, rad } from '../../../src/domain/units/brands.ts';
import { numbersOf } from './numbers.ts';

/** Any number at all: nothing, huge, infinite, no number, and the sizes that threads have. */
const any = fc.oneof(
  fc.constantFrom(
    0,
    -0,
    -1,
    1e308,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.MIN_VALUE,
  ),
  fc.double(),
  fc.double({ min: 0, max: 3, noNaN: true }),
  fc.double({ min: 0, max: 60, noNaN: true }),
);
const part = fc.constantFrom('recess' as const, 'tenon' as const);

/** Every answer that the closed forms give to eight numbers in every place where they can stand. */
const answers = (side: 'recess' | 'tenon', numbers: readonly number[]): readonly unknown[] => {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = numbers;
  const form = { pitch: mm(a), tipFlat: mm(b) };
  const wanted = { recess: mm(c), clearance: mm(d) };
  const piece = { diameter: mm(c), depth: mm(d), tipFlat: mm(b), flankShift: mm(e) };
  const pair = { pitch: mm(a), recess: piece, tenon: { ...piece, diameter: mm(f), depth: mm(g) } };
  const disc = { part: side, pitch: mm(a), workRadius: mm(b), cutterRadius: mm(c) };
  const groove = { form, depth: mm(c) };
  const room = { bottomGap: mm(c), freeThread: mm(d) };
  return [
    profile.depthFromCrest(form, mm(e)),
    profile.crestFromDepth(form, mm(e)),
    sizes.tenonFromDepth(form, wanted, mm(e)),
    sizes.tenonFromEngagement(form, wanted, e, '0.75H'),
    sizes.tenonFromEngagement(form, wanted, e, '0.625H'),
    engagement.engagementPercent(mm(a), '0.625H', mm(b)),
    engagement.usualEngagement(mm(a)),
    fitOf(pair),
    tenonForClearance(pair, mm(h)),
    checkTenon({ mean: mm(h), taper: mm(g) }, pair, mm(b)),
    helix.flankShift(disc),
    largest.recessForShift(mm(a), mm(b), mm(c)),
    largest.neckFor(mm(a), mm(b)),
    passDepths(groove, { by: 'two-thirds' }),
    passDepths(groove, { by: 'equal-area', passes: Math.round(d) }),
    dialTarget(mm(a), { travelPerTurn: mm(b), marksPerTurn: c }),
    learnTipFlat({
      pitch: mm(a),
      recess: mm(c),
      tenon: mm(f),
      recessDepth: mm(d),
      tenonDepth: mm(g),
      endPlay: mm(e),
    }),
    seat.toGo({ toGo: rad(a) }, 'oval'),
    seat.toGo({ past: rad(a) }, 'figure'),
    seat.shoulderRemoval(mm(a), rad(b)),
    seat.mostRemoval(room),
    seat.planSeat(mm(a), { toGo: rad(b) }, 'figure', room, mm(e)),
    filmLoss(mm(a)),
    usualClearance(mm(a)),
    leastWall(mm(a)),
    clearanceBudget({
      runningClearance: mm(a),
      ovalMovement: mm(b),
      engagedHeight: mm(c),
      mismatch: rad(d),
      film: mm(e),
      recessFlankShift: mm(f),
      tenonFlankShift: mm(g),
    }),
  ];
};

test('every closed form answers any numbers with finite ones or a refusal, and never throws', () => {
  let refused = 0;
  let answered = 0;
  fc.assert(
    fc.property(part, fc.array(any, { minLength: 8, maxLength: 8 }), (side, numbers) => {
      const given = answers(side, numbers);
      const bad = given.filter((answer) => !numbersOf(answer).every(Number.isFinite));
      expect(bad).toEqual([]);
      for (const answer of given)
        if (typeof answer === 'object' && answer !== null && 'ok' in answer)
          answer.ok ? answered++ : refused++;
    }),
    { numRuns: 2000 },
  );
  expect(refused).toBeGreaterThan(1000);
  expect(answered).toBeGreaterThan(1000);
}, 60_000);
