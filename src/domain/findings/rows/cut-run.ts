import type { RunState, StepState } from '../../setup/fold.ts';
import type { Step } from '../../setup/procedure.ts';

type StepMeant = Pick<Step, 'key' | 'sentence' | 'guards' | 'hold'>;

/** What the rows need of a folded set-up: a small part, so that ten thousand of them fit into a phone. */
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
 * Keeps that part of each set-up, and equal steps once: every set-up brings its own copy of its procedure. They share those of
 * the set-ups kept `before`.
 */
export const cutRuns = (before: Iterable<CutRun> = []): ((run: RunState) => CutRun) => {
  const stepsBefore = new Set<StepMeant>();
  for (const { steps } of before) for (const { step } of steps) stepsBefore.add(step);
  const known = new Map([...stepsBefore].map((step) => [nameOf(step), step]));
  const shared = (step: Step): StepMeant => {
    const { key, sentence, guards, hold } = step;
    const name = nameOf(step);
    const kept = known.get(name) ?? { key, sentence, guards, hold };
    known.set(name, kept);
    return kept;
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
