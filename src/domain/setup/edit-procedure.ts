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

/** Movements that ask a hold point again whatever its owner makes of it: those of the procedures that every log starts with. */
export const fixedMovements = (step: Pick<Step, 'key' | 'hold'>): readonly Movement[] =>
  step.hold
    ? (Object.values(DEFAULT_PROCEDURES)
        .flatMap(({ steps }) => steps)
        .find(({ key }) => key === step.key)?.reopenedBy ?? [])
    : [];

/**
 * Changes what a step says, guards against, and which movements ask it again. Its key and its being a hold point stay; so do a
 * hold point's words and the movements that always ask it again.
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

/** Takes a step out; a hold point stays whatever is asked. What rested on it rests on it no more. */
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
