import './style.css';
import { type Signal, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { record } from '../../../app/set-up-run.ts';
import type { Verdict } from '../../../domain/setup/events.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { stretchFromNow } from '../../../domain/setup/stretch.ts';
import { StepDrawing } from '../../drawings/step-drawing.tsx';
import { Lazy } from '../../shell/lazy.tsx';
import { feel } from '../feel.ts';
import { SetUpHeader } from '../set-up-header.tsx';
import { Strip } from '../strip.tsx';
import { useSpoken } from '../use-at-the-lathe.ts';
import { setUpWords as words } from '../words.ts';
import { StepActs } from './acts.tsx';
import { StepSays } from './says.tsx';
import { useLetterKeys } from './use-letter-keys.ts';

/** A second tap on a verdict within this time is the same tap of a trembling hand. */
const DEAF_MS = 350;

type Beside = 'reading' | 'verdict' | 'why' | null;

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
  const acts = useRef<HTMLDivElement>(null);
  const deafUntil = useRef(0);
  /** What stands in place of a step's drawing; it goes with the step. */
  const aside = useSignal<{ readonly of: string; readonly what: Beside } | null>(null);
  /** The step that a trial leaves out of this set-up. */
  const leftOut = useSignal<string | null>(null);
  const beside = aside.value?.of === stepKey ? aside.value.what : null;
  const state = run.steps.find((s) => s.step.key === stepKey);
  const isHold = state?.step.hold ?? true;

  // Space, enter and a pedal work on the step that has just come up. A hold point takes one Tab more, which a pedal has not.
  useEffect(() => {
    (isHold ? acts : pass).current?.focus({ preventScroll: true });
  }, [stepKey]);

  const stretch = chosen.value === null ? stretchFromNow(run, leftOut.value) : [];
  const settle = async (steps: readonly string[], verdict: Verdict) => {
    if (performance.now() < deafUntil.current) return;
    deafUntil.current = performance.now() + DEAF_MS;
    if (!(await record({ kind: 'ticked', steps, verdict }))) return;
    feel(verdict);
    // A failed step stays in hand, to be put right; anything else hands on to the next.
    chosen.value = verdict === 'fail' ? stepKey : null;
  };
  useLetterKeys((verdict) => settle([stepKey], verdict), onMoved);
  useSpoken(state?.step.sentence ?? null);

  if (!state) return null;
  const { step, status } = state;
  const show = (what: Beside) => () => {
    aside.value = { of: stepKey, what };
  };

  if (beside === 'reading' && step.reading)
    return (
      <main class="set-up" data-step={stepKey}>
        <SetUpHeader run={run} />
        <Lazy
          load={() => import('./reading-form.tsx')}
          props={{
            run,
            kind: step.reading,
            stepKey,
            onClose: (kept) => {
              show(kept && step.reading !== 'turns' ? 'verdict' : null)();
            },
          }}
        />
      </main>
    );
  return (
    <main class="set-up" data-step={stepKey}>
      <div class="step" data-beside={beside}>
        <SetUpHeader run={run} />
        <Strip run={run} now={stepKey} onOpen={onAllSteps} />
        {beside === 'why' ? (
          <Lazy key="why" load={() => import('./why.tsx')} props={{ run, step, onClose: show(null) }} />
        ) : beside === 'verdict' ? (
          <Lazy
            key="verdict"
            load={() => import('./setting-verdict.tsx')}
            props={{ run, stepKey, onAgain: show('reading'), onClose: show(null) }}
          />
        ) : (
          <>
            <button type="button" class="drawing-slot" onClick={show('why')}>
              <span class="hidden-words">{words.why}</span>
              <StepDrawing of={step.drawing} />
            </button>
            <div class="words">
              {!isHold && (
                <Lazy
                  key={stepKey}
                  load={() => import('./lot-note.tsx')}
                  props={{
                    run,
                    stepKey,
                    onLeftOut: (step) => {
                      leftOut.value = step;
                    },
                  }}
                />
              )}
              <h1 aria-live="polite">
                <button type="button" class="sentence" onClick={show('why')}>
                  {step.sentence}
                </button>
              </h1>
              <StepSays
                run={run}
                state={state}
                stretch={stretch.length}
                onRead={show('reading')}
                onVerdict={show('verdict')}
                onAllDone={() => settle(stretch, 'pass')}
                onAllSteps={onAllSteps}
              />
            </div>
          </>
        )}
        <StepActs
          isFailed={status === 'failed'}
          passRef={pass}
          actsRef={acts}
          onVerdict={(verdict) => settle([stepKey], verdict)}
          onLeave={() => {
            chosen.value = null;
          }}
          onMoved={onMoved}
        />
      </div>
    </main>
  );
};
