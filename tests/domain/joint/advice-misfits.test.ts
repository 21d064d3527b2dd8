import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adviceFor } from '../../../src/domain/joint/advice.ts';
import { done, isInside, knownOf, misfits, type OneCause, toldOf, truth } from './misfit.ts';
import { gotten } from './results.ts';

describe('done once, it brings a simulated misfit of one cause inside the target, at least 95 in 100', () => {
  const RUNS = 1000;
  const every: readonly OneCause[] = [
    'flanks-tight',
    'flanks-loose',
    'crests-rub',
    'tapered-bore',
    'tapered-tenon',
    'finish-film',
    'bottoming',
  ];
  test.each(every)(
    '%s',
    (cause) => {
      const failures = fc.sample(misfits(cause), { seed: 20260101, numRuns: RUNS }).flatMap((misfit) => {
        const advice = gotten(adviceFor(toldOf(misfit), knownOf(misfit)));
        expect(isInside(misfit.world, advice.target)).toBe(false);
        const after = done(misfit.world, advice.remedies);
        return isInside(after, advice.target)
          ? []
          : [{ before: truth(misfit.world), after: truth(after), advice }];
      });
      expect(failures.length / RUNS, JSON.stringify(failures[0], null, 1)).toBeLessThanOrEqual(0.05);
    },
    60_000,
  );
});
