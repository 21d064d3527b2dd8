import { ok, type Result, refuse } from '../result.ts';
import { LONGEST_SENTENCE, type Procedure, type Step } from './procedure.ts';

/** A step's sentence: not empty, at most 56 characters, or it cannot be read at arm's length. */
export const readSentence = (field: string, typed: string): Result<string> => {
  const sentence = typed.trim().replace(/\s+/g, ' ');
  if (sentence === '') return refuse({ problem: 'empty', field });
  if (sentence.length > LONGEST_SENTENCE)
    return refuse({
      problem: 'out-of-range',
      field,
      given: sentence.length,
      min: 1,
      max: LONGEST_SENTENCE,
      quantity: 'count',
    });
  return ok(sentence);
};

/** Moves a step by one place. Unchanged at either end, and where a step would come before one it rests on. */
export const moveStep = (procedure: Procedure, key: string, by: -1 | 1): Procedure => {
  const at = procedure.steps.findIndex((step) => step.key === key);
  const other = procedure.steps[at + by];
  const step = procedure.steps[at];
  if (!step || !other) return procedure;
  const [first, second] = by === 1 ? [other, step] : [step, other];
  if (first.restsOn.includes(second.key)) return procedure;
  const steps = [...procedure.steps];
  steps[at] = other;
  steps[at + by] = step;
  return { ...procedure, steps };
};

/** Changes what a step says, re-opens and guards against. Its key and its being a hold point stay. */
export const changeStep = (
  procedure: Procedure,
  key: string,
  change: Partial<Pick<Step, 'sentence' | 'why' | 'guards' | 'reopenedBy'>>,
): Procedure => ({
  ...procedure,
  steps: procedure.steps.map((step) => (step.key === key ? { ...step, ...change } : step)),
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
