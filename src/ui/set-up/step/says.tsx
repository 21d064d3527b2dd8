import type { RunState, StepState } from '../../../domain/setup/fold.ts';
import { readingsInForce } from '../../../domain/setup/readings-in-force.ts';
import { turns } from '../../../domain/units/brands.ts';
import { writeTurns } from '../../../domain/units/write-quantity.ts';
import { StillSet } from '../still-set.tsx';
import { movementShort, setUpWords as words } from '../words.ts';
import { readingWords } from './reading-words.ts';
import { StepTime } from './time.tsx';
import { TurnKeys } from './turn-keys.tsx';

interface Props {
  readonly run: RunState;
  readonly state: StepState;
  /** How many steps "all done" would tick. */
  readonly stretch: number;
  readonly onRead: () => void;
  readonly onVerdict: () => void;
  readonly onAllDone: () => void;
  readonly onAllSteps: () => void;
}

/** The line under the sentence: why it is asked again, or the time it takes; and what can be done beside a verdict. */
export const StepSays = ({ run, state, stretch, onRead, onVerdict, onAllDone, onAllSteps }: Props) => {
  const { step, status, reopenedBy } = state;
  const isFirst = run.timeline.length === 1;
  const readings = readingsInForce(run, step.key);
  const last = readings.at(-1);
  return (
    <div class={`says ${step.reading && step.reading !== 'turns' && last ? 'crowded' : ''}`}>
      {status === 'failed' ? (
        <span>
          {words.failed} <span class={step.reading ? 'put-right' : ''}>{words.putRight}</span>
        </span>
      ) : status === 'reopened' && reopenedBy ? (
        <span>{words.lostIts(movementShort[reopenedBy])}</span>
      ) : isFirst && run.fromRun ? (
        <StillSet run={run} onAllSteps={onAllSteps} />
      ) : (
        !step.hold && <StepTime run={run} stepKey={step.key} />
      )}
      {step.reading === 'turns' ? (
        <>
          {last?.kind !== 'turns' && status !== 'failed' && <TurnKeys run={run} stepKey={step.key} />}
          <button type="button" class={last ? 'noted' : ''} onClick={onRead}>
            {last?.kind === 'turns'
              ? readingWords.turnsOf(writeTurns(turns(last.turns)))
              : status === 'failed'
                ? words.reading
                : readingWords.other}
          </button>
        </>
      ) : (
        step.reading && (
          <>
            {last && (
              <button type="button" onClick={onVerdict}>
                {words.verdict}
              </button>
            )}
            <button type="button" onClick={onRead}>
              {words.reading}
            </button>
          </>
        )
      )}
      {stretch > 1 && !step.reading && (
        <button type="button" onClick={onAllDone}>
          {words.allDone(stretch)}
        </button>
      )}
    </div>
  );
};
