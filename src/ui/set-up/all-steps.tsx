import type { RunState, StepState } from '../../domain/setup/fold.ts';
import type { Waking } from '../../platform/wake-lock.ts';
import { timeOfDay } from '../text/clock-words.ts';
import { movementWord, statusWord, wakingWord, setUpWords as words } from '../text/set-up-words.ts';
import { StatusTooth } from './status-tooth.tsx';
import { Strip } from './strip.tsx';

/** Every step with how it stands; a tap goes back to one. */
export const AllSteps = ({
  run,
  waking,
  onChoose,
  onClose,
}: {
  run: RunState;
  waking: Waking;
  onChoose: (key: string | null) => void;
  onClose: () => void;
}) => (
  <main class="set-up">
    <Strip run={run} now={run.now} />
    <ul class="list" aria-label={words.allSteps}>
      {run.steps.map((state) => (
        <li key={state.step.key}>
          <button
            type="button"
            disabled={state.status === 'closed' || state.status === 'not-needed'}
            onClick={() => onChoose(state.step.key === run.now ? null : state.step.key)}
          >
            <StatusTooth status={state.step.key === run.now ? 'now' : state.status} />
            <span>
              {state.step.sentence} <span class="soft">{standing(state)}</span>
            </span>
          </button>
        </li>
      ))}
    </ul>
    <p>{wakingWord[waking]}</p>
    <button type="button" onClick={onClose}>
      {words.back}
    </button>
  </main>
);

const standing = ({ status, since, reopenedBy }: StepState): string => {
  if (since !== null) return words.setSince(timeOfDay(since));
  if (reopenedBy) return words.lostIts(movementWord[reopenedBy]);
  return statusWord[status];
};
