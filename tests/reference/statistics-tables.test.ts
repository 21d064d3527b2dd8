import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import checks from '../../shared/stats-checks.json' with { type: 'json' };
import { proportion, type TwoByTwo, twoByTwo } from '../../src/domain/findings/statistics/counts.ts';
import {
  betaCdf,
  betaQuantile,
  chiSquareTail,
  normalQuantile,
  tTails,
} from '../../src/domain/findings/statistics/distributions.ts';
import { exactOverStrata, fisherExact } from '../../src/domain/findings/statistics/exact.ts';
import {
  clopperPearson,
  newcombeDifference,
  relativeRiskInterval,
  wilson,
} from '../../src/domain/findings/statistics/intervals.ts';
import { homogeneity, pooledOdds } from '../../src/domain/findings/statistics/mantel-haenszel.ts';
import { conditionalOdds } from '../../src/domain/findings/statistics/odds-interval.ts';
import { benjaminiHochberg, holm } from '../../src/domain/findings/statistics/several-tests.ts';
import { trend } from '../../src/domain/findings/statistics/trend.ts';
import { expectDigits, must } from '../domain/findings/expect-digits.ts';

// Source of every figure taken from `checks`: shared/stats-checks.json, which names the paper or manual of each and the
// R call that computed it.

const table = (cells: readonly number[]): TwoByTwo => {
  const [a = 0, b = 0, c = 0, d = 0] = cells;
  return must(twoByTwo(a, b, c, d));
};

describe('a single proportion (Newcombe 1998, Table I, and R)', () => {
  for (const row of checks.proportion_intervals.rows) {
    it(`${row.x} of ${row.n}`, () => {
      const p = must(proportion(row.x, row.n));
      const [w, c] = [wilson(p), clopperPearson(p)];
      expectDigits([w.low, w.high], row.computed.wilson);
      expectDigits([c.low, c.high], row.computed.clopper_pearson);
      const printed = row.published as
        | { method3_wilson?: number[]; method5_clopper_pearson?: number[] }
        | undefined;
      if (printed?.method3_wilson)
        expect([w.low, w.high].map((v) => Number(v.toFixed(4)))).toEqual(printed.method3_wilson);
      if (printed?.method5_clopper_pearson)
        expect([c.low, c.high].map((v) => Number(v.toFixed(4)))).toEqual(printed.method5_clopper_pearson);
    });
  }
});

describe('Fisher’s exact test', () => {
  for (const example of checks.fisher_exact.examples) {
    const cells = example.table_rowwise;
    if (!cells.every((cell) => typeof cell === 'number')) continue;
    const computed = example.computed as unknown as { p?: number; two_sided?: { p: number } };
    it(`${example.name} ${cells.join(' ')}`, () => {
      expectDigits([fisherExact(table(cells as number[])).p], [computed.two_sided?.p ?? computed.p ?? 1]);
    });
  }

  // scipy 1.10.1 (Debian), scipy.stats.contingency.odds_ratio(table).confidence_interval(0.95). R 4.2.2 prints other late
  // digits (621.9337505 for the tea's upper limit) because its root finder stops at 1.2e-4 of the inverted ratio.
  it.each([
    [
      [3, 1, 1, 3],
      [6.408319658199662, 0.21173559544657966, 626.2435305888141],
    ],
    [
      [2, 15, 10, 3],
      [0.04693663904968004, 0.003317163950657366, 0.36318960235667996],
    ],
    [
      [8, 2, 1, 5],
      [15.465819716921013, 1.0088492079476723, 1059.6394950862782],
    ],
    [
      [10, 0, 4, 6],
      [Number.POSITIVE_INFINITY, 1.7665927092434506, Number.POSITIVE_INFINITY],
    ],
    [
      [0, 5, 5, 0],
      [0, 0, 0.43534120574505614],
    ],
    [
      [12, 3, 5, 10],
      [7.375269132334283, 1.2196296274076244, 60.95175417604934],
    ],
  ])('conditional odds ratio of %j', (cells, reference) => {
    const { odds, low, high } = conditionalOdds(table(cells));
    expectDigits([odds ?? Number.NaN, low, high], reference, 10);
  });

  it('the odds limit of an empty cell solves its polynomial: five and five, none shared', () => {
    // P(0) = 1 / sum C(5, i)^2 x^i = 0.025 exactly; R prints 0.43532264, which gives 0.0250010.
    const x = conditionalOdds(table([0, 5, 5, 0])).high;
    expect([1, 25, 100, 100, 25, 1].reduce((sum, weight, i) => sum + weight * x ** i, 0)).toBeCloseTo(40, 9);
  });

  it('the tea: 34 of 70, mid-p half of the two likeliest-as-seen outcomes less', () => {
    const tea = fisherExact(table([3, 1, 1, 3]));
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

  it('one stratum gives Fisher’s test', () => {
    const t = table([12, 3, 5, 10]);
    expect(exactOverStrata([t])).toEqual(fisherExact(t));
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
  it('Benjamini and Hochberg 1995, their fifteen', () => {
    expectDigits(benjaminiHochberg(checks.multiple_testing.p), checks.multiple_testing.computed.BH);
    expectDigits(holm(checks.multiple_testing.p), checks.multiple_testing.computed.holm);
  });
  it('unsorted, and with ties', () => {
    for (const set of [checks.multiple_testing.small_unsorted, checks.multiple_testing.ties_and_missing]) {
      expectDigits(holm(set.p), set.holm);
      expectDigits(benjaminiHochberg(set.p), set.BH);
    }
  });
});

describe('trend', () => {
  it.each(checks.trend.examples.map((example) => [example.name, example] as const))('%s', (_, example) => {
    const found = trend(
      example.events.map((events, i) => ({
        events,
        total: example.totals[i] ?? 0,
        score: example.scores[i] ?? 0,
      })),
    );
    const computed = example.computed as { smokers?: { chi2: number; p: number }; chi2?: number; p?: number };
    expectDigits(
      [found?.chiSquare ?? 0, found?.p ?? 0],
      [computed.smokers?.chi2 ?? computed.chi2 ?? 1, computed.smokers?.p ?? computed.p ?? 1],
    );
  });
});

describe('probability functions', () => {
  it('beta quantiles and distribution function', () => {
    const { quantiles, quantile_probabilities, pbeta } = checks.beta_binomial;
    for (const { a, b, q } of quantiles)
      expectDigits(
        quantile_probabilities.map((p) => betaQuantile(p, a, b)),
        q,
      );
    for (const { x, a, b, p } of pbeta) expectDigits([betaCdf(x, a, b)], [p]);
  });
  it('normal quantiles', () => {
    expectDigits(
      [normalQuantile(0.975), normalQuantile(0.995)],
      [checks.constants.z975, checks.constants.z995],
    );
    expectDigits([chiSquareTail(checks.constants.chisq95_1, 1)], [0.05]);
  });
  it('agree with a second library, jstat 1.9.6, to its own 1e-7', () => {
    for (let i = 1; i < 40; i++) {
      const [a, b, x] = [0.3 + i * 1.7, 0.4 + ((i * 7) % 40), (i % 19) / 20 + 0.02];
      expect(betaCdf(x, a, b)).toBeCloseTo(jstat.beta.cdf(x, a, b), 7);
      expect(tTails(x * 6, i)).toBeCloseTo(2 * (1 - jstat.studentt.cdf(x * 6, i)), 7);
      expect(chiSquareTail(x * 30, i)).toBeCloseTo(1 - jstat.chisquare.cdf(x * 30, i), 7);
      expect(normalQuantile(x)).toBeCloseTo(jstat.normal.inv(x, 0, 1), 7);
    }
  });
});
