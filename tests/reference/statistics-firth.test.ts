import { describe, expect, it } from 'vitest';
import checks from '../../shared/stats-checks.json' with { type: 'json' };
import { type Design, designFrom, firth } from '../../src/domain/findings/statistics/firth.ts';
import { profileTest } from '../../src/domain/findings/statistics/firth-profile.ts';
import { expectDigits } from '../domain/findings/expect-digits.ts';
import { profileEnds } from '../domain/findings/profile-ends.ts';

// Heinze and Schemper 2002 and the R package logistf 1.26.1 (data sexagg); figures in shared/stats-checks.json.
const [infection, emptyCell] = checks.firth_logistic.examples;

const rowsOf = (data: string | number[][] | undefined): number[][] => {
  if (!Array.isArray(data)) throw new Error('the reference file has no rows');
  return data;
};

const designOf = (rows: readonly (readonly number[])[], byCount: boolean): Design => {
  const full = byCount ? rows : rows.flatMap((row) => Array.from({ length: row[7] ?? 0 }, () => row));
  const terms = [1, 2, 3, 4, 5, 6].map((column) => Float64Array.from(full, (row) => row[column] ?? 0));
  return designFrom(
    [new Float64Array(full.length).fill(1), ...terms],
    Float64Array.from(full, (row) => row[0] ?? 0),
    byCount ? Float64Array.from(full, (row) => row[7] ?? 0) : undefined,
  );
};

describe('Firth’s logistic regression', () => {
  const published = infection?.published;
  const computed = infection?.computed;

  for (const byCount of [false, true])
    it(`239 patients, ${byCount ? 'counted rows' : 'one row each'}: coefficients, intervals and tests to 6 digits`, () => {
      const design = designOf(rowsOf(infection?.data), byCount);
      const fit = firth(design);
      if (!fit || !published || !computed) throw new Error('no fit');
      expectDigits([...fit.beta], computed.coef, 6);
      expectDigits([...fit.beta], published.coef, 6);
      expectDigits([fit.logLikelihood], [published.penalized_loglik]);
      expectDigits(
        [...fit.beta].map((_, i) => Math.sqrt(fit.covariance[i * 8] ?? 0)),
        published.se_inverse_information,
      );
      const ends = [...fit.beta].map((_, i) => profileEnds(design, fit, i));
      expectDigits(
        ends.map((end) => end.low?.value ?? Number.NaN),
        published.pl_ci_lower,
        6,
      );
      expectDigits(
        ends.map((end) => end.high?.value ?? Number.NaN),
        published.pl_ci_upper,
        6,
      );
      const tests = [...fit.beta].map((_, i) => profileTest(design, fit, i));
      expectDigits(
        tests.map((test) => test?.chiSquare ?? Number.NaN),
        computed.plr_chisq,
        6,
      );
      expectDigits(
        tests.map((test) => test?.p ?? Number.NaN),
        computed.plr_p,
        6,
      );
    });

  it('a zero cell: the slope is the log odds ratio with a half added to every cell', () => {
    const design = designFrom(
      [Float64Array.of(1, 1, 1), Float64Array.of(0, 0, 1)],
      Float64Array.of(1, 0, 0),
      Float64Array.of(5, 5, 10),
    );
    // 5 of 10 here, in closed form; the published example has 6 of 10.
    expect(firth(design)?.beta[1]).toBeCloseTo(Math.log((0.5 * 5.5) / (10.5 * 5.5)), 8);
    const example: Design = { ...design, weight: Float64Array.of(6, 4, 10) };
    const fit = firth(example);
    if (!fit) throw new Error('no fit');
    expectDigits([...fit.beta], emptyCell?.computed.coef ?? [], 8);
    const ends = [0, 1].map((i) => profileEnds(example, fit, i));
    expectDigits(
      ends.map((end) => end.low?.value ?? Number.NaN),
      emptyCell?.computed.pl_ci_lower ?? [],
      7,
    );
    expectDigits(
      ends.map((end) => end.high?.value ?? Number.NaN),
      emptyCell?.computed.pl_ci_upper ?? [],
      7,
    );
    expectDigits([fit.logLikelihood], [emptyCell?.computed.penalized_loglik ?? 0], 8);
  });
});
