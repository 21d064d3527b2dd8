import './acts.css';
import type { Ref } from 'preact';
import type { Verdict } from '../../../domain/setup/events.ts';
import { setUpWords as words } from '../words.ts';
import { onceWhileHeld, VerdictButton } from './verdict-button.tsx';

interface Props {
  readonly isFailed: boolean;
  readonly passRef: Ref<HTMLButtonElement>;
  readonly actsRef: Ref<HTMLDivElement>;
  readonly onVerdict: (verdict: Verdict) => void;
  readonly onLeave: () => void;
  readonly onMoved: () => void;
}

/** What can be said of a step, within a thumb's reach; a key held down says it once. */
export const StepActs = ({ isFailed, passRef, actsRef, onVerdict, onLeave, onMoved }: Props) => (
  <div ref={actsRef} class="acts" tabIndex={-1}>
    <VerdictButton verdict="pass" mark={34} buttonRef={passRef} onVerdict={onVerdict} />
    {isFailed ? (
      <button type="button" class="wide" onKeyDown={onceWhileHeld} onClick={onLeave}>
        {words.leaveIt}
      </button>
    ) : (
      <>
        <VerdictButton verdict="fail" mark={26} onVerdict={onVerdict} />
        <VerdictButton verdict="skip" mark={26} onVerdict={onVerdict} />
      </>
    )}
    <button
      type="button"
      class="moved"
      aria-label={words.somethingMoved}
      onKeyDown={onceWhileHeld}
      onClick={onMoved}
    >
      <span class="long">{words.somethingMoved}</span>
      <span class="short">{words.moved}</span>
    </button>
  </div>
);
