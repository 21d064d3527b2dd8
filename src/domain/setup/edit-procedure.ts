import type { Result } from '../result.ts';
import { readName } from '../units/read-text.ts';
import { DEFAULT_PROCEDURES } from './default-procedures.ts';
import { isAlwaysReopened, LONGEST_SENTENCE, type Movement, type Procedure, type Step } from './procedure.ts';

/** A step's sentence: not empty, at most 56 characters, or it cannot be read at arm's length. */
export const readSentence = (field: string, typed: string): Result<string> =>
  readName(field, typed.replace(/\s+/g, ' '), LONGEST_SENTENCE);

/**
 * Moves a step by one place. Unchanged at either end, where a step would come before one it rests on, and for the first and last
 * hold point (isolate, clear), which nothing comes before or after.
 */
export const moveStep = (procedure: Procedure, key: string, by: -1 | 1): Procedure => {
  const at = procedure.steps.findIndex((step) => step.key === key);
  const other = procedure.steps[at + by];
  const step = procedure.steps[at];
  if (!step || !other) return procedure;
  const [first, second] = by === 1 ? [other, step] : [step, other];
  if (first.restsOn.includes(second.key) || isAlwaysReopened(step) || isAlwaysReopened(other))
    return procedure;
  const steps = [...procedure.steps];
  steps[at] = other;
  steps[at + by] = step;
  return { ...procedure, steps };
};

/** Movements that always re-open a hold point, even in an edited copy: those of the built-in procedures. */
export const fixedMovements = (step: Pick<Step, 'key' | 'hold'>): readonly Movement[] =>
  step.hold
    ? (Object.values(DEFAULT_PROCEDURES)
        .flatMap(({ steps }) => steps)
        .find(({ key }) => key === step.key)?.reopenedBy ?? [])
    : [];

/**
 * Changes a step's sentence, reason, guards, and the movements that re-open it. Its key stays, and a hold point stays one, with
 * its sentence and the movements that always re-open it.
 */
export const changeStep = (
  procedure: Procedure,
  key: string,
  change: Partial<Pick<Step, 'sentence' | 'why' | 'guards' | 'reopenedBy'>>,
): Procedure => ({
  ...procedure,
  steps: procedure.steps.map((step) => {
    if (step.key !== key) return step;
    if (!step.hold) return { ...step, ...change };
    const reopenedBy = [...new Set([...(change.reopenedBy ?? step.reopenedBy), ...fixedMovements(step)])];
    return { ...step, ...change, sentence: step.sentence, reopenedBy };
  }),
});

/** Removes a step, and the references of other steps to it. A hold point is never removed. */
export const retireStep = (procedure: Procedure, key: string): Procedure =>
  procedure.steps.some((step) => step.key === key && !step.hold)
    ? {
        ...procedure,
        steps: procedure.steps
          .filter((step) => step.key !== key)
          .map((step) => ({ ...step, restsOn: step.restsOn.filter((other) => other !== key) })),
      }
    : procedure;

/** Adds a step of the user's own before the last one, which is a hold point in every procedure. */
export const addStep = (procedure: Procedure, key: string, sentence: string): Procedure => ({
  ...procedure,
  steps: [
    ...procedure.steps.slice(0, -1),
    {
      key,
      sentence,
      why: '',
      hold: false,
      guards: [],
      reopenedBy: ['headstock-swung', 'it-grabbed', 'dont-know'],
      restsOn: [],
      everyTime: false,
      onlyWithGroove: false,
      reading: null,
      drawing: null,
    },
    ...procedure.steps.slice(-1),
  ],
});
