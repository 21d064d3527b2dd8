import { useSignal } from '@preact/signals';
import { settings } from '../../../app/session.ts';
import { leaveAsItIs, recordMove, takeBackMove } from '../../../app/trials.ts';
import type { Trial } from '../../../domain/box/records.ts';
import type { AdvisedMove } from '../../../domain/diagnosis/diagnosis.ts';
import type { Field, MoveMade } from '../../../domain/diagnosis/view.ts';
import { goInstead, hrefTo } from '../../shell/route.ts';
import { adviceWords as words } from './advice-words.ts';
import { actWords, doneLine } from './move-words.ts';
import { questionWords } from './question-words.ts';

interface Props {
  readonly boxId: string;
  readonly trial: Trial;
  readonly move: AdvisedMove | 'measure' | null;
  /** What is asked, the act where there is no move. */
  readonly asks: Field | null;
  readonly onAsk: () => void;
  readonly onNext: (() => void) | null;
  readonly onCauses: () => void;
  readonly onTriedAgain: () => void;
}

const madeOf = ({ kind, part, by, size, depth }: AdvisedMove): MoveMade => ({ kind, part, by, size, depth });

/** The screen on which a move is made; null for one that is made by hand. A cut without a setting goes through its set-up. */
const screenOf = ({ kind, part, by, reset }: AdvisedMove): string | null => {
  const piece = part ?? 'tenon';
  if (kind === 'new-tenon') return hrefTo('bench', 'tenon');
  if (kind !== 'deepen' && kind !== 'same-setting-again' && kind !== 'harden-and-recut') return null;
  return reset
    ? hrefTo('bench', `set-up-${piece}`)
    : hrefTo('bench', `cut-${piece}`, 'again', String(by ?? 0));
};

/** What was done, the move itself as the one blue act, and what else there is. */
export const AdviceActs = ({ boxId, trial, move, asks, onAsk, onNext, onCauses, onTriedAgain }: Props) => {
  const { unit } = settings.value;
  const busy = useSignal(false);
  const made = trial.moves ?? [];
  const once = async (write: () => Promise<boolean>): Promise<boolean> => {
    if (busy.value) return false;
    busy.value = true;
    const saved = await write();
    busy.value = false;
    return saved;
  };
  const byHand = move !== null && move !== 'measure' && screenOf(move) === null ? move : null;

  const tryAgain = async () => {
    // Advised a moment ago and then tried: it was done. One that was not is taken back with one tap.
    const isDone = made.length > 0 || !byHand || byHand.kind === 'leave-it';
    if (isDone || (await once(() => recordMove(boxId, trial.id, madeOf(byHand))))) onTriedAgain();
  };
  return (
    <div class="dock">
      {made.length > 0 && (
        <div class="row">
          <p>{words.doneSince(doneLine(made, unit))}</p>
          <button type="button" onClick={() => once(() => takeBackMove(boxId, trial.id))}>
            {words.undo}
          </button>
        </div>
      )}
      {made.length > 0 && (
        <button type="button" class="main" onClick={onTriedAgain}>
          {words.tryNow}
        </button>
      )}
      <MainAct
        boxId={boxId}
        trial={trial}
        move={move}
        asks={asks}
        onAsk={onAsk}
        once={once}
        look={made.length > 0 ? '' : 'main'}
      />
      <div class="row">
        {made.length === 0 && (
          <button type="button" onClick={tryAgain}>
            {words.triedAgain}
          </button>
        )}
        {onNext && (
          <button type="button" onClick={onNext}>
            {words.next}
          </button>
        )}
        <button type="button" onClick={onCauses}>
          {words.causes}
        </button>
      </div>
    </div>
  );
};

interface MainProps extends Pick<Props, 'boxId' | 'trial' | 'move' | 'asks' | 'onAsk'> {
  readonly once: (write: () => Promise<boolean>) => Promise<boolean>;
  readonly look: string;
}

const MainAct = ({ boxId, trial, move, asks, onAsk, once, look }: MainProps) => {
  const { unit } = settings.value;
  if (move === null)
    return asks ? (
      <button type="button" class={look} onClick={onAsk}>
        {questionWords.check(asks)}
      </button>
    ) : null;
  if (move === 'measure')
    return (
      <a class={`act ${look}`} href={hrefTo('bench', 'bore')}>
        {words.measure}
      </a>
    );
  const act = actWords(move, unit);
  const screen = screenOf(move);
  if (screen === null)
    return (
      <button
        type="button"
        class={look}
        onClick={async () => {
          if (move.kind !== 'leave-it') await once(() => recordMove(boxId, trial.id, madeOf(move)));
          else if (await once(() => leaveAsItIs(boxId, trial.id, madeOf(move)))) goInstead('bench');
        }}
      >
        {act}
      </button>
    );
  // The cutter's passes are in the record already; that the thread was hardened before them is not.
  if (move.kind === 'harden-and-recut')
    return (
      <button
        type="button"
        class={look}
        onClick={async () => {
          if (await once(() => recordMove(boxId, trial.id, madeOf(move)))) location.hash = screen;
        }}
      >
        {move.reset ? words.setUpFirst : act}
      </button>
    );
  return (
    <a class={`act ${look}`} href={screen}>
      {move.reset ? words.setUpFirst : act}
    </a>
  );
};
