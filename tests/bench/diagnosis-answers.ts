import { diagnose } from '../../src/domain/diagnosis/diagnose.ts';
import { caseView, givenCases } from '../domain/diagnosis/given-cases.ts';

/** Milliseconds of each answer to the given cases, in rising order; the first round warms up and is not counted. */
export const answerTimes = (rounds: number): readonly number[] => {
  const views = givenCases.map(caseView);
  const times: number[] = [];
  for (let round = 0; round <= rounds; round++)
    for (const view of views) {
      const from = performance.now();
      diagnose(view);
      if (round > 0) times.push(performance.now() - from);
    }
  return times.sort((a, b) => a - b);
};
