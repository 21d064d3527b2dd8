import type { Ref } from 'preact';
import { pressed } from '../../app/set-up-run.ts';
import type { Verdict } from '../../domain/setup/events.ts';
import { ToothMark } from '../drawings/tooth-marks.tsx';
import { setUpWords as words } from '../text/set-up-words.ts';

interface Props {
  readonly isFailed: boolean;
  readonly passRef: Ref<HTMLButtonElement>;
  readonly actsRef: Ref<HTMLDivElement>;
  readonly onVerdict: (verdict: Verdict) => void;
  readonly onLeave: () => void;
  readonly onMoved: () => void;
}

/** What can be said of a step, within a thumb's reach; a key held down says it once. */
export const StepActs = ({ isFailed, passRef, actsRef, onVerdict, onLeave, onMoved }: Props) => {
  const verdict = (kind: Verdict, mark: number, ref?: Ref<HTMLButtonElement>) => (
    <button
      {...(ref ? { ref } : {})}
      type="button"
      class={kind}
      data-pressed={pressed.value?.kind === 'ticked' && pressed.value.verdict === kind ? true : undefined}
      onClick={() => onVerdict(kind)}
    >
      <ToothMark kind={kind} size={mark} />
      {words[kind]}
    </button>
  );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only holds back the repeats of keys meant for its buttons
    <div
      ref={actsRef}
      class="acts"
      tabIndex={-1}
      onKeyDown={(event) => {
        if (event.repeat && (event.key === 'Enter' || event.key === ' ')) event.preventDefault();
      }}
    >
      {verdict('pass', 34, passRef)}
      {isFailed ? (
        <button type="button" class="wide" onClick={onLeave}>
          {words.leaveIt}
        </button>
      ) : (
        <>
          {verdict('fail', 26)}
          {verdict('skip', 26)}
        </>
      )}
      <button type="button" class="moved" aria-label={words.somethingMoved} onClick={onMoved}>
        <span class="long">{words.somethingMoved}</span>
        <span class="short">{words.moved}</span>
      </button>
    </div>
  );
};
