import type { ExperimentMeasure } from '../box/records.ts';
import type { Procedure } from '../setup/procedure.ts';
import { mayVary, restsOn } from './experiment-step.ts';

/** A step that an experiment can vary, and what it can measure, the best measure first. */
export interface ExperimentQuestion {
  readonly step: string;
  readonly sentence: string;
  readonly measures: readonly ExperimentMeasure[];
}

/**
 * The experiments that a procedure allows. A reading is offered where it is taken after the step, does not rest on it, and is not
 * a hold point's. It comes first where both guard against the same thing, because then the step can affect it.
 */
export const experimentQuestions = (procedure: Procedure): readonly ExperimentQuestion[] =>
  procedure.steps.flatMap((step, i): ExperimentQuestion[] => {
    if (!mayVary(procedure, step.key)) return [];
    const acts: ExperimentMeasure[] = [];
    const others: ExperimentMeasure[] = [];
    for (const later of procedure.steps.slice(i + 1)) {
      if (!later.reading || later.hold || later.onlyWithGroove || restsOn(procedure, later, step.key))
        continue;
      const sameGuard = later.guards.some((guard) => step.guards.includes(guard));
      (sameGuard ? acts : others).push({
        kind: 'reading',
        step: later.key,
        sentence: later.sentence,
        of: later.reading === 'turns' ? 'turns' : 'angle',
      });
    }
    return [
      {
        step: step.key,
        sentence: step.sentence,
        measures: [...acts, { kind: 'fit' }, { kind: 'time' }, ...others],
      },
    ];
  });
