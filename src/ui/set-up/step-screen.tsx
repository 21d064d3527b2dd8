import { type Signal, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { pressed, record } from '../../app/set-up-run.ts';
import type { Verdict } from '../../domain/setup/events.ts';
import type { RunState } from '../../domain/setup/fold.ts';
import { stretchFromNow } from '../../domain/setup/stretch.ts';
import { isDrawingKey } from '../drawings/drawing-key.ts';
import { StepDrawing } from '../drawings/step-drawing.tsx';
import { ToothMark } from '../drawings/tooth-marks.tsx';
import { movementWord, setUpWords as words } from '../text/set-up-words.ts';
import { feel } from './feel.ts';
import { ReadingForm } from './reading-form.tsx';
import { SetUpHeader } from './set-up-header.tsx';
import { StepTime } from './step-time.tsx';
import { Strip } from './strip.tsx';
import { useSpoken } from './use-at-the-lathe.ts';
import { useLetterKeys } from './use-letter-keys.ts';

/** A second tap on a verdict within this time is the same tap of a trembling hand. */
const DEAF_MS = 350;

interface Props {
  readonly run: RunState;
  readonly stepKey: string;
  readonly chosen: Signal<string | null>;
  readonly onMoved: () => void;
  readonly onAllSteps: () => void;
}

/** The step in hand: its drawing, its sentence, and the verdict within a thumb's reach. */
export const StepScreen = ({ run, stepKey, chosen, onMoved, onAllSteps }: Props) => {
  const pass = useRef<HTMLButtonElement>(null);
  const deafUntil = useRef(0);
  const reading = useSignal(false);

  // The keyboard and a pedal work on the step that has just come up.
  useEffect(() => {
    reading.value = false;
    pass.current?.focus({ preventScroll: true });
  }, [stepKey]);

  const state = run.steps.find((s) => s.step.key === stepKey);
  const stretch = chosen.value === null ? stretchFromNow(run) : [];

  const settle = async (steps: readonly string[], verdict: Verdict) => {
    if (performance.now() < deafUntil.current) return;
    deafUntil.current = performance.now() + DEAF_MS;
    if (!(await record({ kind: 'ticked', steps, verdict }))) return;
    feel(verdict);
    // A failed step stays in hand, to be put right; anything else hands on to the next.
    chosen.value = verdict === 'fail' ? stepKey : null;
  };
  const giveVerdict = (verdict: Verdict) => settle([stepKey], verdict);
  useLetterKeys(giveVerdict, onMoved);
  useSpoken(state?.step.sentence ?? null);

  if (!state) return null;
  const { step, status, reopenedBy } = state;
  const isPressed = (verdict: Verdict) =>
    pressed.value?.kind === 'ticked' && pressed.value.verdict === verdict ? true : undefined;

  return (
    <main class="set-up step" data-step={stepKey}>
      <SetUpHeader run={run} />
      <Strip run={run} now={stepKey} onOpen={onAllSteps} />
      <div class="drawing-slot">
        {step.drawing && isDrawingKey(step.drawing) && <StepDrawing of={step.drawing} />}
      </div>
      <div class="words">
        <h1 aria-live="polite">{step.sentence}</h1>
        {reading.value && step.reading ? (
          <ReadingForm
            kind={step.reading}
            stepKey={stepKey}
            onClose={() => {
              reading.value = false;
            }}
          />
        ) : (
          <div class="says">
            {status === 'failed' ? (
              <span>{words.failedPutRight}</span>
            ) : status === 'reopened' && reopenedBy ? (
              <span>{words.lostIts(movementWord[reopenedBy])}</span>
            ) : (
              !step.hold && <StepTime run={run} stepKey={stepKey} />
            )}
            {step.reading && (
              <button
                type="button"
                onClick={() => {
                  reading.value = true;
                }}
              >
                {words.reading}
              </button>
            )}
            {stretch.length > 1 && !step.reading && (
              <button type="button" onClick={() => settle(stretch, 'pass')}>
                {words.allDone(stretch.length)}
              </button>
            )}
          </div>
        )}
      </div>
      <div class="acts">
        <button
          ref={pass}
          type="button"
          class="pass"
          data-pressed={isPressed('pass')}
          onClick={() => giveVerdict('pass')}
        >
          <ToothMark kind="pass" />
          {words.pass}
        </button>
        {status === 'failed' ? (
          <button
            type="button"
            class="wide"
            onClick={() => {
              chosen.value = null;
            }}
          >
            {words.leaveIt}
          </button>
        ) : (
          <>
            <button
              type="button"
              class="fail"
              data-pressed={isPressed('fail')}
              onClick={() => giveVerdict('fail')}
            >
              <ToothMark kind="fail" size={26} />
              {words.fail}
            </button>
            <button
              type="button"
              class="skip"
              data-pressed={isPressed('skip')}
              onClick={() => giveVerdict('skip')}
            >
              <ToothMark kind="skip" size={26} />
              {words.skip}
            </button>
          </>
        )}
        <button type="button" class="moved" onClick={onMoved}>
          {words.somethingMoved}
        </button>
      </div>
    </main>
  );
};
