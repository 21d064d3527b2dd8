import type { RunState, StepState } from '../setup/fold.ts';
import type { Step } from '../setup/procedure.ts';

type StepMeant = Pick<Step, 'key' | 'sentence' | 'guards' | 'hold'>;

/** What the rows need of a folded set-up: a small part, so that ten thousand of them fit into a phone. */
export interface CutRun
  extends Pick<RunState, 'runId' | 'part' | 'closed' | 'fromRun' | 'contested' | 'readOnly'> {
  readonly steps: readonly CutStep[];
}

export interface CutStep extends Pick<StepState, 'status' | 'spent' | 'timeUnknown'> {
  readonly step: StepMeant;
}

/** Keeps that part of each set-up, and equal steps once: every set-up brings its own copy of its procedure. */
export const cutRuns = (): ((run: RunState) => CutRun) => {
  const known = new Map<string, StepMeant>();
  const shared = ({ key, sentence, guards, hold }: Step): StepMeant => {
    const name = JSON.stringify([key, sentence, guards, hold]);
    const step = known.get(name) ?? { key, sentence, guards, hold };
    known.set(name, step);
    return step;
  };
  return ({ runId, part, closed, fromRun, contested, readOnly, steps }) => ({
    ...{ runId, part, closed, fromRun, contested, readOnly },
    steps: steps.map(({ step, status, spent, timeUnknown }) => ({
      step: shared(step),
      status,
      spent,
      timeUnknown,
    })),
  });
};
