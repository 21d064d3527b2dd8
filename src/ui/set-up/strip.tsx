import type { RunState, StepStatus } from '../../domain/setup/fold.ts';
import { ToothStrip } from '../drawings/tooth-strip.tsx';
import { stripWords, setUpWords as words } from './words.ts';

/** The whole set-up at a glance; a tap anywhere on it opens the list of steps. */
export const Strip = ({
  run,
  now,
  onOpen,
}: {
  run: RunState;
  now: string | null;
  onOpen?: (() => void) | undefined;
}) => {
  const counts = new Map<StepStatus, number>();
  for (const { status } of run.steps) counts.set(status, (counts.get(status) ?? 0) + 1);
  const sentence = run.steps.find((s) => s.step.key === now)?.step.sentence ?? null;
  const strip = (
    <ToothStrip
      label={stripWords(counts, sentence)}
      teeth={run.steps
        .filter(({ status }) => status !== 'not-needed')
        .map(({ step, status }) => ({
          key: step.key,
          hold: step.hold,
          state: step.key === now && status !== 'failed' ? 'now' : status,
        }))}
    />
  );
  return onOpen ? (
    <button
      type="button"
      class="strip"
      aria-label={`${words.allSteps}. ${stripWords(counts, sentence)}`}
      onClick={onOpen}
    >
      {strip}
    </button>
  ) : (
    <div class="strip">{strip}</div>
  );
};
