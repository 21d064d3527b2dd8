import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import checks from '../../shared/stats-checks.json' with { type: 'json' };
import type { TwoByTwo } from '../../src/domain/findings/statistics/counts.ts';
import { chiSquareTail, normalQuantile, tTails } from '../../src/domain/findings/statistics/distributions.ts';
import { exactOverStrata } from '../../src/domain/findings/statistics/exact.ts';
import {
  newcombeDifference,
  relativeRiskInterval,
  wilson,
} from '../../src/domain/findings/statistics/intervals.ts';
import { homogeneity, pooledOdds } from '../../src/domain/findings/statistics/mantel-haenszel.ts';
import { holm } from '../../src/domain/findings/statistics/several-tests.ts';
import { expectDigits } from '../domain/findings/expect-digits.ts';

// Source of every figure taken from `checks`: shared/stats-checks.json, which names the paper or manual of each and the
// R call that computed it.

const table = (cells: readonly number[]): TwoByTwo => {
  const [a = 0, b = 0, c = 0, d = 0] = cells;
  return { a, b, c, d };
};

describe('a single proportion (Newcombe 1998, Table I, and R)', () => {
  for (const row of checks.proportion_intervals.rows) {
    it(`${row.x} of ${row.n}`, () => {
      const w = wilson({ events: row.x, total: row.n });
      expectDigits([w.low, w.high], row.computed.wilson);
      const printed = row.published as { method3_wilson?: number[] } | undefined;
      if (printed?.method3_wilson)
        expect([w.low, w.high].map((v) => Number(v.toFixed(4)))).toEqual(printed.method3_wilson);
    });
  }
});

describe('Fisher’s exact test', () => {
  for (const example of checks.fisher_exact.examples) {
    const cells = example.table_rowwise;
    if (!cells.every((cell) => typeof cell === 'number')) continue;
    const computed = example.computed as unknown as { p?: number; two_sided?: { p: number } };
    it(`${example.name} ${cells.join(' ')}`, () => {
      expectDigits(
        [exactOverStrata([table(cells as number[])]).p],
        [computed.two_sided?.p ?? computed.p ?? 1],
      );
    });
  }

  it('the tea: 34 of 70, mid-p half of the two likeliest-as-seen outcomes less', () => {
    const tea = exactOverStrata([table([3, 1, 1, 3])]);
    expect(tea.p).toBeCloseTo(34 / 70, 12);
    // 1 + 16 of 70 at each end; half of the 2 x 16 stays out.
    expect(tea.midP).toBeCloseTo(18 / 70, 12);
  });
});

describe('strata pooled', () => {
  const [admissions] = checks.mantel_haenszel.examples;
  const strata = (admissions?.strata ?? []).map((s) =>
    table([s.admitted_male, s.rejected_male, s.admitted_female, s.rejected_female]),
  );

  it('admissions: odds ratio and interval', () => {
    const { rbg } = admissions?.computed ?? {};
    const pooled = pooledOdds(strata);
    expectDigits(
      [pooled?.odds ?? 0, pooled?.logError ?? 0, pooled?.low ?? 0, pooled?.high ?? 0],
      [rbg?.or ?? 1, rbg?.se_log ?? 1, ...(rbg?.ci ?? [])],
    );
  });

  it('admissions: the odds ratio is not the same everywhere', () => {
    const { bd } = admissions?.computed ?? {};
    const test = homogeneity(strata);
    expectDigits([test?.chiSquare ?? 0], [bd?.tarone ?? 1]);
    expectDigits([test?.p ?? 0], [bd?.p ?? 1], 4);
    expect(test?.df).toBe(bd?.df);
  });
});

describe('relative risk', () => {
  // statsmodels 0.13.5 (Debian), confint_proportions_2indep(a, n1, c, n0, method='score', compare='ratio', correction=True),
  // which names Miettinen and Nurminen 1985.
  it.each([
    [
      [6, 14, 2, 20],
      [0.8565835844246075, 13.532465106827917],
    ],
    [
      [189, 10845, 104, 10933],
      [1.433896147240532, 2.304725191287145],
    ],
    [
      [36, 4, 16, 64],
      [2.934646459487796, 7.166298299460339],
    ],
    [
      [12, 3, 5, 10],
      [1.210867011727035, 5.501936416154933],
    ],
    [
      [1, 9, 3, 37],
      [0.19359086927451172, 8.102356655079557],
    ],
    [
      [9, 1, 3, 7],
      [1.3279565734835286, 8.691914949017299],
    ],
    [
      [2, 28, 1, 27],
      [0.2533800653241563, 14.048406639626393],
    ],
  ])('%j', (cells, reference) => {
    const interval = relativeRiskInterval(table(cells));
    expectDigits([interval?.low ?? 0, interval?.high ?? 0], reference, 6);
  });

  it('no event on one side leaves one end open', () => {
    expect(relativeRiskInterval(table([0, 10, 4, 6]))?.low).toBe(0);
    expect(relativeRiskInterval(table([4, 6, 0, 10]))?.high).toBe(Number.POSITIVE_INFINITY);
    expect(relativeRiskInterval(table([0, 10, 0, 10]))).toBeNull();
  });
});

describe('difference of two proportions', () => {
  // Newcombe 1998, Statistics in Medicine 17: 873-890, Table II, method 10 (from memory).
  it.each([
    [
      [56, 14, 48, 32],
      [0.0524, 0.3339],
    ],
    [
      [9, 1, 3, 7],
      [0.1705, 0.809],
    ],
    [
      [5, 51, 0, 29],
      [-0.0381, 0.1926],
    ],
    [
      [10, 0, 0, 10],
      [0.6075, 1],
    ],
  ])('%j', (cells, printed) => {
    const interval = newcombeDifference(table(cells));
    expect([interval.low, interval.high].map((v) => Number(v.toFixed(4)))).toEqual(printed);
  });
});

describe('several tests at once', () => {
  it('Holm on the fifteen of Benjamini and Hochberg 1995', () => {
    expectDigits(holm(checks.multiple_testing.p), checks.multiple_testing.computed.holm);
  });
  it('unsorted, and with ties', () => {
    for (const set of [checks.multiple_testing.small_unsorted, checks.multiple_testing.ties_and_missing])
      expectDigits(holm(set.p), set.holm);
  });
});

describe('probability functions', () => {
  it('normal quantiles', () => {
    expectDigits(
      [normalQuantile(0.975), normalQuantile(0.995)],
      [checks.constants.z975, checks.constants.z995],
    );
    expectDigits([chiSquareTail(checks.constants.chisq95_1, 1)], [0.05]);
  });
  it('agree with a second library, jstat 1.9.6, to its own 1e-7', () => {
    for (let i = 1; i < 40; i++) {
      const x = (i % 19) / 20 + 0.02;
      expect(tTails(x * 6, i)).toBeCloseTo(2 * (1 - jstat.studentt.cdf(x * 6, i)), 7);
      expect(chiSquareTail(x * 30, i)).toBeCloseTo(1 - jstat.chisquare.cdf(x * 30, i), 7);
      expect(normalQuantile(x)).toBeCloseTo(jstat.normal.inv(x, 0, 1), 7);
    }
  });
});
