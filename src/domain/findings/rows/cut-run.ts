import type { RunState, StepState } from '../../setup/fold.ts';
import type { Step } from '../../setup/procedure.ts';

type StepMeant = Pick<Step, 'key' | 'sentence' | 'guards' | 'hold'>;

/** The part of a folded set-up that the rows need, small enough for ten thousand of them in a phone's memory. */
export interface CutRun
  extends Pick<RunState, 'runId' | 'part' | 'closed' | 'fromRun' | 'contested' | 'readOnly'> {
  readonly steps: readonly CutStep[];
}

export interface CutStep extends Pick<StepState, 'status'> {
  readonly step: StepMeant;
  /** Time it took in ms, only where the clocks allow an exact one. */
  readonly exactMs: number | null;
}

/**
 * Cuts set-ups down to that part. Equal steps become one object, shared with the set-ups in `before`, because every set-up
 * carries its own copy of its procedure.
 */
export const cutRuns = (before: Iterable<CutRun> = []): ((run: RunState) => CutRun) => {
  const stepsBefore = new Set<StepMeant>();
  for (const { steps } of before) for (const { step } of steps) stepsBefore.add(step);
  const known = new Map([...stepsBefore].map((step) => [nameOf(step), step]));
  const shared = (step: Step): StepMeant => {
    const { key, sentence, guards, hold } = step;
    const name = nameOf(step);
    const one = known.get(name) ?? { key, sentence, guards, hold };
    known.set(name, one);
    return one;
  };
  return ({ runId, part, closed, fromRun, contested, readOnly, steps }) => ({
    ...{ runId, part, closed, fromRun, contested, readOnly },
    steps: steps.map(({ step, status, spent, timeUnknown }) => ({
      step: shared(step),
      status,
      exactMs: spent.exact && !timeUnknown && spent.max > 0 ? spent.max : null,
    })),
  });
};

const nameOf = ({ key, sentence, guards, hold }: StepMeant): string =>
  JSON.stringify([key, sentence, guards, hold]);
