import normalQuantile from '@stdlib/stats-base-dists-normal-quantile';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rockingFreedom } from '../../../src/domain/alignment/rocking.ts';
import { priorsOf } from '../../../src/domain/diagnosis/causes.ts';
import { drawJoint, samplingFor } from '../../../src/domain/diagnosis/draw-joint.ts';
import { Draws } from '../../../src/domain/diagnosis/draws.ts';
import { jointNumbers } from '../../../src/domain/diagnosis/joint-numbers.ts';
import { emptyLatent, type Latent } from '../../../src/domain/diagnosis/latent.ts';
import { applyMove } from '../../../src/domain/diagnosis/moves.ts';
import { emptyStanding, standingOf } from '../../../src/domain/diagnosis/standing.ts';
import type { DiagnosisView, MoveMade } from '../../../src/domain/diagnosis/view.ts';
import { filmLoss } from '../../../src/domain/joint/film.ts';
import { type Fit, fitOf } from '../../../src/domain/joint/fit.ts';
import { crestFromDepth, HALF_ANGLE, SLOPE } from '../../../src/domain/joint/profile.ts';
import { type Millimetres, mm } from '../../../src/domain/units/brands.ts';
import { randomView } from './random-view.ts';

/** A joint drawn for a random view, with the numbers it was drawn around. */
const drawn = (number: number) => {
  const view: DiagnosisView = { ...randomView(number), trials: randomView(number).trials.slice(0, 1) };
  const box = jointNumbers(view);
  const sampling = samplingFor(
    priorsOf(box, () => 1),
    200,
  );
  const joint = emptyLatent();
  drawJoint(number % sampling.count, sampling, box, new Draws(number), joint);
  return { view, box, joint };
};

const fitBy = (view: DiagnosisView, joint: Latent): Fit => {
  const fit = fitOf({
    pitch: view.joint.pitch,
    recess: {
      diameter: mm(joint.bore),
      depth: mm(joint.depthRecess),
      tipFlat: mm(joint.tip),
      flankShift: view.joint.flankShift.recess,
    },
    tenon: {
      diameter: mm(joint.tenon),
      depth: mm(joint.depthTenon),
      tipFlat: mm(joint.tip),
      flankShift: view.joint.flankShift.tenon,
    },
  });
  if (!fit.ok) throw new Error(JSON.stringify(fit.error));
  return fit.value;
};

const made = (kind: MoveMade['kind'], part: MoveMade['part'], by: number | null): MoveMade => ({
  kind,
  part,
  by: by as Millimetres | null,
  size: null,
  depth: null,
});

const anyJoint = fc.integer({ min: 1, max: 100000 });

describe('the hot loop says what the formulas of the joint say', () => {
  test('of clearance, crest gaps and engagement', () => {
    fc.assert(
      fc.property(anyJoint, (number) => {
        const { view, box, joint } = drawn(number);
        const at = emptyStanding();
        // Crest gaps and clearance by the sizes alone: everything that takes room besides is left out.
        Object.assign(joint, { raisedRecess: 0, raisedTenon: 0, springRecess: 0, springTenon: 0 });
        Object.assign(joint, { film: 0, fuzz: 0, eccentric: 0 });
        standingOf(joint, box, at);
        const fit = fitBy(view, joint);
        expect(at.clearance).toBeCloseTo(fit.clearance, 9);
        expect(at.tenonGap).toBeCloseTo(fit.tenonCrestGap, 9);
        expect(at.recessGap).toBeCloseTo(fit.recessCrestGap, 9);
        expect(100 * at.engaged).toBeCloseTo(Math.max(0, fit.percentOf75), 9);
      }),
    );
  });

  test('of film, rocking and crest flats', () => {
    fc.assert(
      fc.property(anyJoint, (number) => {
        const { view, box, joint } = drawn(number);
        const at = emptyStanding();
        Object.assign(joint, { slipRecess: 0, slipTenon: 0 });
        standingOf(joint, box, at);
        const film = filmLoss(mm(joint.film));
        if (film.ok) expect(at.filmLoss).toBeCloseTo(film.value.clearance, 9);
        const rocking = rockingFreedom({
          play: mm(at.play),
          pitchDiameter: mm(joint.bore),
          engaged: mm(box.threads * box.pitch),
        });
        if (rocking.ok) expect(at.rocking).toBeCloseTo(rocking.value, 9);
        const crest = crestFromDepth(
          { pitch: view.joint.pitch, tipFlat: mm(joint.tip) },
          mm(joint.depthTenon),
        );
        if (crest.ok) expect(at.flatTenon).toBeCloseTo(crest.value - 2 * box.shiftTenon, 9);
      }),
    );
  });

  test('a finish of one film on every flank eats eight of them at 60 degrees (joint-model, item 11)', () => {
    expect(4 / Math.sin(HALF_ANGLE)).toBeCloseTo(8, 9);
  });
});

describe('a move', () => {
  const parts = fc.constantFrom('recess', 'tenon');

  test('deepen x opens the fit by exactly 2 x', () => {
    fc.assert(
      fc.property(anyJoint, parts, fc.integer({ min: 1, max: 6 }), (number, part, count) => {
        const { view, box, joint } = drawn(number);
        const before = fitBy(view, joint);
        const by = 0.05 * count;
        applyMove(made('deepen', part, by), joint, box);
        const after = fitBy(view, joint);
        expect(after.clearance - before.clearance).toBeCloseTo(2 * by, 9);
        const gap = part === 'recess' ? 'tenonCrestGap' : 'recessCrestGap';
        expect(after[gap] - before[gap]).toBeCloseTo(by, 9);
      }),
    );
  });

  test('eased crests open their own gap and leave the flanks alone', () => {
    fc.assert(
      fc.property(anyJoint, parts, (number, part) => {
        const { view, box, joint } = drawn(number);
        joint.depthRecess += 0.5;
        joint.depthTenon += 0.5;
        const before = fitBy(view, joint);
        const raised = joint.raisedRecess + joint.raisedTenon;
        applyMove(made('ease-crests', part, 0.1), joint, box);
        const after = fitBy(view, joint);
        const eased = 0.1 - (raised - joint.raisedRecess - joint.raisedTenon);
        expect(after.clearance).toBeCloseTo(before.clearance, 9);
        const gap = part === 'recess' ? 'recessCrestGap' : 'tenonCrestGap';
        expect(after[gap] - before[gap]).toBeCloseTo(eased, 9);
      }),
    );
  });

  test('rubbed bare flanks open the fit by four times what was rubbed off one piece (joint-model, item 11)', () => {
    const { view, box, joint } = drawn(7);
    joint.film = 0;
    const before = fitBy(view, joint);
    applyMove(made('rub-flanks', 'tenon', 0.02), joint, box);
    expect(fitBy(view, joint).clearance - before.clearance).toBeCloseTo(0.08, 9);
  });

  test('a new tenon has the size it was given, but for the errors of making it', () => {
    const { box, joint } = drawn(11);
    applyMove({ kind: 'new-tenon', part: 'tenon', by: null, size: mm(40), depth: mm(1) }, joint, box);
    expect(joint.tenon).toBeCloseTo(40 + joint.nextSize, 9);
    expect(joint.depthTenon).toBeCloseTo(1 + joint.nextDepth, 9);
    expect(joint.slipTenon).toBe(0);
  });
});

describe('chance', () => {
  test('normal numbers come from quantiles that agree with an exact one', () => {
    const draws = new Draws(3);
    draws.restart(0);
    const count = 40000;
    const values = Array.from({ length: count }, () => draws.normal(0, 1)).sort((a, b) => a - b);
    for (const p of [0.01, 0.1, 0.3, 0.5, 0.8, 0.975])
      expect(Math.abs((values[Math.floor(p * count)] as number) - normalQuantile(p, 0, 1))).toBeLessThan(
        0.05,
      );
    const distinct = [...new Set(values)];
    // The table itself: 1,024 values at the middles of as many equal parts.
    expect(distinct.length).toBe(1024);
    distinct.forEach((value, i) => {
      const exact = normalQuantile((i + 0.5) / 1024, 0, 1);
      expect(Math.abs(value - exact)).toBeLessThan(i === 0 || i === 1023 ? 3e-3 : 2e-4);
    });
  });

  test('a joint drawn again by its number is the same, and its neighbour is another', () => {
    const { box } = drawn(5);
    const sampling = samplingFor(
      priorsOf(box, () => 1),
      300,
    );
    const [a, b, c] = [emptyLatent(), emptyLatent(), emptyLatent()];
    const draws = new Draws(9);
    drawJoint(100, sampling, box, draws, a);
    drawJoint(101, sampling, box, draws, c);
    drawJoint(100, sampling, box, draws, b);
    expect(b).toEqual(a);
    expect(c).not.toEqual(a);
  });

  test('weights give every cause its prior', () => {
    const { box } = drawn(5);
    const priors = priorsOf(box, () => 1);
    const { causeOf, weightOf } = samplingFor(priors, 2600);
    const sums = priors.map(() => 0);
    weightOf.forEach((weight, i) => {
      sums[causeOf[i] as number] = (sums[causeOf[i] as number] as number) + weight;
    });
    for (const [i, prior] of priors.entries()) expect(sums[i]).toBeCloseTo(prior, 9);
  });
});

test('half of 60 degrees has the slope of the flanks', () =>
  expect(Math.tan(HALF_ANGLE)).toBeCloseTo(SLOPE, 12));
