import { useComputed } from '@preact/signals';
import type { Ref } from 'preact';
import { pressed } from '../../../app/set-up-run.ts';
import type { Verdict } from '../../../domain/setup/events.ts';
import { ToothMark } from '../../drawings/tooth-marks.tsx';
import { setUpWords as words } from '../words.ts';
import { underFinger } from './under-finger.ts';

/** For a button of a set-up: a key held down says it once. */
export const onceWhileHeld = (event: KeyboardEvent): void => {
  if (event.repeat && (event.key === 'Enter' || event.key === ' ')) event.preventDefault();
};

interface Props {
  readonly verdict: Verdict;
  readonly mark: number;
  readonly buttonRef?: Ref<HTMLButtonElement>;
  readonly onVerdict: (verdict: Verdict) => void;
}

/** Pass, fail or skip; it looks pressed from the touch until its tick is on disk, and nothing else is drawn for that. */
export const VerdictButton = ({ verdict, mark, buttonRef, onVerdict }: Props) => {
  const isPressed = useComputed(() =>
    pressed.value?.kind === 'ticked' && pressed.value.verdict === verdict ? true : undefined,
  );
  return (
    <button
      {...(buttonRef ? { ref: buttonRef } : {})}
      type="button"
      class={verdict}
      data-pressed={isPressed}
      {...underFinger}
      onKeyDown={onceWhileHeld}
      onClick={() => onVerdict(verdict)}
    >
      <ToothMark kind={verdict} size={mark} />
      {words[verdict]}
    </button>
  );
};
