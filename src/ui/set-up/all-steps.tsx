import './lists.css';
import { record } from '../../app/set-up-run.ts';
import { usualTimes } from '../../app/usual-times.ts';
import type { RunState, StepState } from '../../domain/setup/fold.ts';
import type { Waking } from '../../platform/wake-lock.ts';
import { clockWords, timeOfDay } from '../words/clock.ts';
import { voiceWords } from '../words/voice.ts';
import { StatusTooth } from './status-tooth.tsx';
import { Strip } from './strip.tsx';
import { spoken } from './use-at-the-lathe.ts';
import { movementWord, statusWord, wakingWord, setUpWords as words } from './words.ts';

interface Props {
  readonly run: RunState;
  readonly waking: Waking;
  readonly onChoose: (key: string | null) => void;
  readonly onClose: () => void;
}

/** Every step with how it stands, since when, and how long it usually takes; a tap goes back to one. */
const AllSteps = ({ run, waking, onChoose, onClose }: Props) => (
  <main class="set-up">
    <Strip run={run} now={run.now} />
    <div class="list">
      <ul aria-label={words.allSteps}>
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
      <p>
        <svg viewBox="0 0 4 4" width="0.4em" height="0.4em" fill="currentColor" aria-hidden="true">
          <path d="M0 0h4v4H0z" />
        </svg>{' '}
        {words.holdDot}
      </p>
      <p>{wakingWord[waking]}</p>
      <VoiceState />
    </div>
    <div class="ends">
      <button type="button" onClick={onClose}>
        {words.back}
      </button>
      <button
        type="button"
        onClick={async () => {
          if (await record({ kind: 'paused' })) onClose();
        }}
      >
        {words.pause}
      </button>
    </div>
  </main>
);

/** Both halves of the line under a sentence: how the step stands, and the user's usual time with its middle half. */
const standing = ({ step, status, since, reopenedBy }: StepState): string => {
  const stands =
    since !== null
      ? words.setSince(timeOfDay(since))
      : reopenedBy
        ? words.lostIts(movementWord[reopenedBy])
        : statusWord[status];
  const usual = usualTimes.value?.get(step.key);
  if (!usual) return stands;
  return `${stands}; ${words.usual(clockWords(usual.median), clockWords(usual.low), clockWords(usual.high))}`;
};

/** When steps should be spoken and this phone cannot: says so, and why. */
const VoiceState = () =>
  spoken.value === null || spoken.value === 'ready' ? null : <p role="status">{voiceWords[spoken.value]}</p>;

export default AllSteps;
