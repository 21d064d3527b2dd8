import type { RunState } from '../../domain/setup/fold.ts';
import { timeOfDay } from '../words/clock.ts';
import { heldWord, setUpWords as words } from './words.ts';

/** What this set-up takes over from the one before, and since when: the post before all, then hold points. */
export const StillSet = ({ run, onAllSteps }: { run: RunState; onAllSteps: () => void }) => {
  const held = run.steps.filter(({ status, since }) => status === 'carried' && since !== null);
  const first =
    held.find(({ step }) => step.key === 'lock-post') ?? held.find(({ step }) => step.hold) ?? held[0];
  if (!first || first.since === null) return <span>{words.nothingStillSet}</span>;
  return (
    <button type="button" class="still-set" onClick={onAllSteps}>
      {words.stillSet(timeOfDay(first.since), heldWord(first.step), held.length - 1)}
    </button>
  );
};
