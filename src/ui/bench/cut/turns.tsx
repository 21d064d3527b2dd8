import { useSignal } from '@preact/signals';
import { turnsStep } from '../../../domain/box/cuts.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { ReadingForm } from '../../set-up/step/reading-form.tsx';
import { cutWords as words } from './words.ts';

/** No count from the dry run: the stop in words, and a way to note the turns while the set-up is still open. */
export const CutTurns = ({ run }: { run: RunState }) => {
  const noting = useSignal(false);
  const step = run.closed === null ? turnsStep(run) : null;
  if (noting.value && step)
    return (
      <ReadingForm
        run={run}
        kind="turns"
        stepKey={step}
        onClose={() => {
          noting.value = false;
        }}
      />
    );
  return (
    <div class="stop-at uncounted">
      <p>
        <b>{words.stop}</b> {words.stopWhere}
      </p>
      {step && (
        <button
          type="button"
          onClick={() => {
            noting.value = true;
          }}
        >
          {words.noteTurns}
        </button>
      )}
    </div>
  );
};
