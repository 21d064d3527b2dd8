import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { record } from '../../../app/set-up-run.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { turns } from '../../../domain/units/brands.ts';
import { writeTurns } from '../../../domain/units/write-quantity.ts';
import { readingWords as words } from './reading-words.ts';

/** What the crank's handle can be read to. */
const QUARTER = 0.25;

/** The count that the plan expects and its neighbours, so that the stop is noted with one tap; nothing without a plan. */
export const TurnKeys = ({ run, stepKey }: { run: RunState; stepKey: string }) => {
  const planned = useSignal<number | null>(null);
  useEffect(() => {
    import('../../../app/setting-verdict.ts')
      .then(({ plannedTurns }) => plannedTurns(run))
      .then(
        (count) => {
          planned.value = count;
        },
        () => {},
      );
  }, [run.runId]);

  if (planned.value === null) return null;
  const nearest = Math.round(planned.value / QUARTER) * QUARTER;
  return (
    <>
      {[nearest - QUARTER, nearest, nearest + QUARTER].map((count) => (
        <button
          key={count}
          type="button"
          class="key"
          aria-label={words.turnsOf(writeTurns(turns(count)))}
          onClick={() => record({ kind: 'read', step: stepKey, reading: { kind: 'turns', turns: count } })}
        >
          {writeTurns(turns(count))}
        </button>
      ))}
    </>
  );
};
