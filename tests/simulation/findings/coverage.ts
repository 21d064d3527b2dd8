import type { TwoByTwo } from '../../../src/domain/findings/statistics/counts.ts';
import { logChoose } from '../../../src/domain/findings/statistics/distributions.ts';
import { designFrom, firth } from '../../../src/domain/findings/statistics/firth.ts';
import { seededRandom } from '../../../src/domain/random.ts';
import { profileEnds } from '../../domain/findings/profile-ends.ts';

const binomial = (n: number, p: number): readonly number[] =>
  Array.from({ length: n + 1 }, (_, k) =>
    Math.exp(logChoose(n, k) + k * Math.log(p) + (n - k) * Math.log1p(-p)),
  );

/** Exact chance that an interval holds the truth: every pair of counts, weighed. */
export const exactCoverage = (
  missed: number,
  done: number,
  p: number,
  q: number,
  holds: (table: TwoByTwo) => boolean,
): number => {
  const [one, other] = [binomial(missed, p), binomial(done, q)];
  let covered = 0;
  one.forEach((inMissed, a) => {
    other.forEach((inDone, c) => {
      if (holds({ a, b: missed - a, c, d: done - c })) covered += inMissed * inDone;
    });
  });
  return covered;
};

/**
 * Share of logs whose profile interval for the step holds the truth. Logistic generator with the model's own terms: step
 * missed in 30 %, log odds ratio 1; other skips, log hardness, pitch, log box number with effects 0.3, -0.5, 0.3, -0.2.
 */
export const firthCoverage = (boxes: number, logs: number, seed: number): number => {
  let covered = 0;
  for (let log = 0; log < logs; log++) {
    const random = seededRandom(seed, log);
    const ones = new Float64Array(boxes).fill(1);
    const step = ones.map(() => Number(random.chance(0.3)));
    const skips = ones.map(() => [0, 1, 2, 3, 4].filter(() => random.chance(0.2)).length - 1);
    const hardness = ones.map(() => random.normal(0, 1));
    const pitch = ones.map(() => (random.chance(0.5) ? 0.5 : -0.5));
    const number = ones.map((_, i) => Math.log((i + 1) / boxes) + 1);
    const y = ones.map((_, i) => {
      const at = (column: Float64Array) => column[i] as number;
      const eta = -1 + at(step) + 0.3 * at(skips) - 0.5 * at(hardness) + 0.3 * at(pitch) - 0.2 * at(number);
      return Number(random.chance(1 / (1 + Math.exp(-eta))));
    });
    const design = designFrom([ones, step, skips, hardness, pitch, number], y);
    const fit = firth(design);
    if (!fit) continue;
    const { low, high } = profileEnds(design, fit, 1);
    if ((low?.value ?? Number.NEGATIVE_INFINITY) <= 1 && 1 <= (high?.value ?? Number.POSITIVE_INFINITY))
      covered++;
  }
  return covered / logs;
};
