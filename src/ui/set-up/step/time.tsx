import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { settings } from '../../../app/session.ts';
import { usualTimes } from '../../../app/usual-times.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { between } from '../../../domain/setup/time.ts';
import { stamp } from '../../../platform/clock.ts';
import { clockWords } from '../../words/clock.ts';

/** Ms since the last live event of the run, ticking once a second. */
const useRunning = (run: RunState): number => {
  const now = useSignal(stamp());
  useEffect(() => {
    now.value = stamp();
    const timer = setInterval(() => {
      now.value = stamp();
    }, 1000);
    return () => clearInterval(timer);
  }, [run]);
  const last = run.timeline.findLast((entry) => !entry.undone && entry.event.kind !== 'undone');
  return last ? between(last.event, now.value).max : 0;
};

/** The running time of a step beside the user's usual. Never on a hold point: a clock there hurries. */
export const StepTime = ({ run, stepKey }: { run: RunState; stepKey: string }) => {
  const running = useRunning(run);
  if (!settings.value.clock) return <span class="time" />;
  const spent = run.steps.find((s) => s.step.key === stepKey)?.spent.max ?? 0;
  const usual = usualTimes.value?.get(stepKey);
  return (
    <span class="time">
      <b>{clockWords(spent + running)}</b>
      {usual && <span class="usual">{` / ${clockWords(usual.median)}`}</span>}
    </span>
  );
};

/** Time in all beside the mark that a touch pauses it; stopped while the step in hand is a hold point. */
export const TotalTime = ({ run }: { run: RunState }) => {
  const running = useRunning(run);
  const isHold = run.steps.find((s) => s.step.key === run.now)?.step.hold ?? true;
  if (!settings.value.clock || isHold) return <PauseMark />;
  return (
    <>
      <PauseMark />
      <span>{clockWords(run.total.max + running - run.pausedFor.max)}</span>
    </>
  );
};

const PauseMark = () => (
  <svg class="pause-mark" viewBox="0 0 20 20" fill="currentColor" aria-hidden="true">
    <path d="M3 2h5v16H3zM12 2h5v16h-5z" />
  </svg>
);
