import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  doneOf,
  missedOf,
  rateDifference,
  type TwoByTwo,
} from '../../../src/domain/findings/statistics/counts.ts';
import { exactOverStrata } from '../../../src/domain/findings/statistics/exact.ts';
import { designFrom, firth } from '../../../src/domain/findings/statistics/firth.ts';
import { profileTest } from '../../../src/domain/findings/statistics/firth-profile.ts';
import {
  newcombeDifference,
  relativeRiskInterval,
  wilson,
} from '../../../src/domain/findings/statistics/intervals.ts';
import { homogeneity, pooledOdds } from '../../../src/domain/findings/statistics/mantel-haenszel.ts';
import { holm } from '../../../src/domain/findings/statistics/several-tests.ts';
import { profileEnds } from './profile-ends.ts';

const count = fc.integer({ min: 0, max: 40 });
const table: fc.Arbitrary<TwoByTwo> = fc.record({ a: count, b: count, c: count, d: count });
const strata = fc.array(table, { minLength: 0, maxLength: 5 });
const isP = (p: number) => p >= 0 && p <= 1;
const NOTHING: TwoByTwo = { a: 0, b: 0, c: 0, d: 0 };

describe('laws of the tests on tables', () => {
  it('every p lies in [0, 1], whatever the counts', () => {
    fc.assert(
      fc.property(strata, (list) => {
        const test = exactOverStrata(list);
        const same = homogeneity(list, 0);
        expect(isP(test.p) && isP(test.midP) && test.midP <= test.p).toBe(true);
        expect(same === null || isP(same.p)).toBe(true);
      }),
    );
  });

  it('swapping missed with done, or failed with right, changes no p', () => {
    fc.assert(
      fc.property(strata, (list) => {
        const { p, midP } = exactOverStrata(list);
        const sides = exactOverStrata(list.map(({ a, b, c, d }) => ({ a: c, b: d, c: a, d: b })));
        const labels = exactOverStrata(list.map(({ a, b, c, d }) => ({ a: b, b: a, c: d, d: c })));
        for (const other of [sides, labels]) {
          expect(other.p).toBeCloseTo(p, 9);
          expect(other.midP).toBeCloseTo(midP, 9);
        }
      }),
    );
  });

  it('order of strata, empty strata and strata of one outcome change nothing', () => {
    fc.assert(
      fc.property(strata, count, (list, n) => {
        const plain = exactOverStrata(list);
        const more = exactOverStrata([NOTHING, ...[...list].reverse(), { ...NOTHING, b: n, d: 3 }]);
        expect(more.p).toBeCloseTo(plain.p, 9);
        expect(more.midP).toBeCloseTo(plain.midP, 9);
        const [odds, again] = [pooledOdds(list), pooledOdds([NOTHING, ...[...list].reverse()])];
        expect(again?.odds ?? null).toBe(odds === null ? null : again?.odds);
        if (odds && again) expect(again.odds / odds.odds).toBeCloseTo(1, 9);
      }),
    );
  });

  it('a stratum beside a copy of itself has the same odds ratio, and is the same everywhere', () => {
    fc.assert(
      fc.property(table, (t) => {
        const [one, two] = [pooledOdds([t]), pooledOdds([t, t])];
        expect(two === null).toBe(one === null);
        if (!one || !two) return;
        expect(two.odds / one.odds).toBeCloseTo(1, 9);
        expect(two.logError).toBeCloseTo(one.logError / Math.SQRT2, 9);
        const same = homogeneity([t, t], 0);
        if (same) expect(same.p).toBeCloseTo(1, 5);
      }),
    );
  });
});

describe('laws of the intervals', () => {
  it('an interval contains its estimate, and a higher level contains a lower', () => {
    fc.assert(
      fc.property(table, (t) => {
        for (const side of [missedOf(t), doneOf(t)]) {
          const [narrow, wide] = [wilson(side, 0.9), wilson(side, 0.95)];
          if (side.total > 0) {
            expect(narrow.low).toBeLessThanOrEqual(side.events / side.total + 1e-12);
            expect(narrow.high).toBeGreaterThanOrEqual(side.events / side.total - 1e-12);
          }
          expect(wide.low).toBeLessThanOrEqual(narrow.low + 1e-12);
          expect(wide.high).toBeGreaterThanOrEqual(narrow.high - 1e-12);
        }
        const value = rateDifference(t);
        const { low, high } = newcombeDifference(t);
        expect(low >= -1 && high <= 1 && low <= high).toBe(true);
        if (value !== null) expect(low <= value + 1e-12 && value - 1e-12 <= high).toBe(true);
      }),
    );
  });

  it('swapping the sides turns a difference round and a relative risk over', () => {
    fc.assert(
      fc.property(table, (t) => {
        const turned = { a: t.c, b: t.d, c: t.a, d: t.b };
        const [one, other] = [newcombeDifference(t), newcombeDifference(turned)];
        expect(other.low).toBeCloseTo(-one.high, 9);
        expect(other.high).toBeCloseTo(-one.low, 9);
        const [risk, over] = [relativeRiskInterval(t), relativeRiskInterval(turned)];
        expect(over === null).toBe(risk === null);
        if (!risk || !over) return;
        expect(risk.low).toBeLessThanOrEqual(risk.high);
        if (risk.high === Number.POSITIVE_INFINITY) expect(over.low).toBe(0);
        else expect(over.low * risk.high).toBeCloseTo(1, 6);
      }),
    );
  });

  it('the relative risk seen lies in its interval', () => {
    fc.assert(
      fc.property(table, (t) => {
        const interval = relativeRiskInterval(t);
        fc.pre(interval !== null && t.c > 0);
        const seen = t.a / (t.a + t.b) / (t.c / (t.c + t.d));
        expect((interval?.low ?? 2) <= seen * (1 + 1e-9) && seen <= (interval?.high ?? 0) * (1 + 1e-9)).toBe(
          true,
        );
      }),
    );
  });
});

describe('laws of the adjustments', () => {
  const ps = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 12 });
  it('never smaller than the p itself, never above 1, in the same order', () => {
    fc.assert(
      fc.property(ps, (list) => {
        const adjusted = holm(list);
        expect(adjusted.length).toBe(list.length);
        adjusted.forEach((q, i) => {
          expect(q >= (list[i] as number) - 1e-15 && q <= 1).toBe(true);
          list.forEach((p, j) => {
            if (p < (list[i] as number)) expect(adjusted[j] as number).toBeLessThanOrEqual(q);
          });
        });
      }),
    );
  });
});

describe('laws of the model', () => {
  const data = fc.array(fc.record({ x: fc.boolean(), z: fc.integer({ min: -5, max: 5 }), y: fc.boolean() }), {
    minLength: 4,
    maxLength: 60,
  });
  const designOf = (rows: readonly { x: boolean; z: number; y: boolean }[], scale: number, moved: number) =>
    designFrom(
      [
        new Float64Array(rows.length).fill(1),
        Float64Array.from(rows, ({ x }) => Number(x)),
        Float64Array.from(rows, ({ z }) => z * scale + moved),
      ],
      Float64Array.from(rows, ({ y }) => Number(y)),
    );

  it('a covariate’s unit and the order of rows change neither coefficient nor p of the step', () => {
    fc.assert(
      fc.property(data, (rows) => {
        const design = designOf(rows, 1, 0);
        const fit = firth(design);
        fc.pre(fit !== null);
        if (!fit) return;
        const [before, low] = [profileTest(design, fit, 1), profileEnds(design, fit, 1).low];
        const other = designOf([...rows].reverse(), 25.4, 3);
        const again = firth(other);
        if (!again) throw new Error('no fit in another unit');
        expect(again.beta[1]).toBeCloseTo(fit.beta[1] ?? 0, 5);
        // Where a handful of rows leave the likelihood flat, the test may be without an answer in one unit only.
        const after = profileTest(other, again, 1);
        if (before && after) expect(after.p).toBeCloseTo(before.p, 5);
        // An end out where the likelihood is flat may be reached in one unit only; it is then "no limit".
        const end = profileEnds(other, again, 1).low;
        if (low && end && Math.abs(low.value) < 8) expect(end.value).toBeCloseTo(low.value, 3);
      }),
      { numRuns: 300 },
    );
  });

  it('five boxes that swing a Newton step to and fro are fitted in every unit', () => {
    const rows = [-1, 3, -4, 2, 1].map((z, i) => ({ x: i > 0, z, y: i > 0 }));
    for (const [scale, moved] of [
      [1, 0],
      [25.4, 3],
      [1, 3],
      [0.3, 0],
    ] as const) {
      const fit = firth(designOf(rows, scale, moved));
      expect(fit?.beta[1]).toBeCloseTo(2.6222213, 6);
      expect(fit?.iterations).toBeLessThan(30);
    }
  });

  it('the interval contains the coefficient; swapping failed with right turns its sign', () => {
    fc.assert(
      fc.property(data, (rows) => {
        const design = designOf(rows, 1, 0);
        const fit = firth(design);
        fc.pre(fit !== null);
        if (!fit) return;
        const { low, high } = profileEnds(design, fit, 1);
        const value = fit.beta[1] as number;
        if (low) expect(low.value).toBeLessThanOrEqual(value);
        if (high) expect(high.value).toBeGreaterThanOrEqual(value);
        const turned = firth({ ...design, y: design.y.map((y) => 1 - y) });
        expect(turned?.beta[1]).toBeCloseTo(-value, 5);
      }),
      { numRuns: 60 },
    );
  });

  it('perfect separation, a constant outcome and a repeated column have stated answers', () => {
    const x = Float64Array.of(0, 0, 0, 0, 1, 1, 1, 1);
    const ones = new Float64Array(8).fill(1);
    const separated = firth(designFrom([ones, x], x));
    // Saturated table with a half added to every cell: log(4.5 * 4.5 / 0.25).
    expect(separated?.beta[1]).toBeCloseTo(Math.log(81), 6);
    expect(firth(designFrom([ones, x], ones))?.beta[1]).toBeCloseTo(0, 6);
    expect(firth(designFrom([ones, x, x], x))).toBeNull();
  });
});
