import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { exactPower } from '../../src/domain/findings/statistics/exact-power.ts';
import { drift, shift } from '../../src/domain/findings/statistics/rank-statistics.ts';
import { expectDigits } from '../domain/findings/expect-digits.ts';

describe('exact power of Fisher’s test', () => {
  // scipy 1.10.1: sum over all pairs of counts of binom.pmf where fisher_exact(...) <= 0.05. The first is the worked example of
  // R's statmod::power.fisher.test, which prints 70 % from a simulation of its own.
  it.each([
    [20, 20, 0.5, 0.9, 0.7423887839114698],
    [20, 20, 0.35, 0.15, 0.20852429404433306],
    [15, 45, 0.45, 0.15, 0.5772894540387109],
    [10, 30, 0.8, 0.2, 0.9108023559203129],
    [8, 50, 0.5, 0.1, 0.7186958251094382],
  ])('%d missed, %d done, %d against %d', (missed, done, missedRate, doneRate, reference) => {
    expectDigits([exactPower({ missed, done, missedRate, doneRate }, 0.05, false)], [reference], 10);
  });

  it('with mid-p, against a plain sum over jstat’s own probabilities', () => {
    const [missed, done, p, q] = [9, 14, 0.7, 0.2];
    let power = 0;
    for (let x = 0; x <= missed; x++)
      for (let y = 0; y <= done; y++) {
        const own = jstat.hypgeom.pdf(x, missed + done, x + y, missed);
        let [less, equal] = [0, 0];
        for (let k = Math.max(0, x + y - done); k <= Math.min(missed, x + y); k++) {
          const here = jstat.hypgeom.pdf(k, missed + done, x + y, missed);
          if (here < own * (1 - 1e-7)) less += here;
          else if (here <= own * (1 + 1e-7)) equal += here;
        }
        if (less + equal / 2 <= 0.05)
          power += jstat.binomial.pdf(x, missed, p) * jstat.binomial.pdf(y, done, q);
      }
    expect(exactPower({ missed, done, missedRate: p, doneRate: q })).toBeCloseTo(power, 6);
  });
});

describe('ranks', () => {
  it('Theil-Sen slope: scipy 1.10.1, theilslopes', () => {
    const y = [3.1, 2.9, 2.9, 2.7, 2.8, 2.5, 2.6, 2.4, 2.4, 2.1];
    expect(drift(y.map((value, i) => ({ x: i + 1, y: value })))?.slope).toBeCloseTo(-0.1, 12);
  });

  it('Hodges-Lehmann shift with the rank-sum p: scipy 1.10.1, mannwhitneyu(method="asymptotic")', () => {
    const one = [1.83, 0.5, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.3];
    const other = [0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29];
    expectDigits([shift(one, other)?.p ?? 0], [0.13291945818531892], 10);
  });
});
