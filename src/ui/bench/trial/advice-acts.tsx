import { settings } from '../../../app/session.ts';
import { leaveAsItIs, recordMoves } from '../../../app/trials.ts';
import type { Trial } from '../../../domain/box/records.ts';
import type { AdvisedMove } from '../../../domain/diagnosis/diagnosis.ts';
import type { Field, MoveMade } from '../../../domain/diagnosis/view.ts';
import { useAct } from '../../parts/use-act.ts';
import { goInstead, hrefTo } from '../../shell/route.ts';
import { adviceWords as words } from './advice-words.ts';
import { actWords, doneLine } from './move-words.ts';
import { questionWords } from './question-words.ts';

interface Props {
  readonly boxId: string;
  readonly trial: Trial;
  readonly move: AdvisedMove | 'measure' | null;
  /** It was worked out before the last answer: nothing to act on until the next is there. */
  readonly isStale: boolean;
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
export const AdviceActs = ({
  boxId,
  trial,
  move,
  isStale,
  asks,
  onAsk,
  onNext,
  onCauses,
  onTriedAgain,
}: Props) => {
  const { unit } = settings.value;
  const made = trial.moves ?? [];
  const note = useAct((_, moves: readonly MoveMade[]) => recordMoves(boxId, trial.id, moves));
  const byHand = move !== null && move !== 'measure' && screenOf(move) === null ? move : null;

  // Advised a moment ago and then tried: it was done. One that was not is taken back with one tap.
  const tryAgain = useAct(async () => {
    const isNew = made.length === 0 && byHand !== null && byHand.kind !== 'leave-it';
    if (isNew && !(await recordMoves(boxId, trial.id, [madeOf(byHand)]))) return false;
    onTriedAgain();
    return true;
  });
  return (
    <div class="dock">
      {made.length > 0 && (
        <div class="row">
          <p>{words.doneSince(doneLine(made, unit))}</p>
          <button type="button" onClick={() => note.act(made.slice(0, -1))}>
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
        isStale={isStale}
        asks={asks}
        onAsk={onAsk}
        look={made.length > 0 ? '' : 'main'}
      />
      <div class="row">
        {made.length === 0 && (
          <button type="button" disabled={tryAgain.busy || isStale} onClick={() => tryAgain.act()}>
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

interface MainProps extends Pick<Props, 'boxId' | 'trial' | 'move' | 'isStale' | 'asks' | 'onAsk'> {
  readonly look: string;
}

const MainAct = ({ boxId, trial, move, isStale, asks, onAsk, look }: MainProps) => {
  const { unit } = settings.value;
  const make = useAct(async (fresh, advised: AdvisedMove) => {
    const made = madeOf(advised);
    if (made.kind === 'leave-it') {
      const saved = await leaveAsItIs(boxId, fresh, trial, made);
      if (saved) goInstead('bench');
      return saved;
    }
    const saved = await recordMoves(boxId, trial.id, [...(trial.moves ?? []), made]);
    const screen = screenOf(advised);
    if (saved && screen) location.hash = screen;
    return saved;
  });
  if (isStale)
    return (
      <button type="button" class={look} disabled>
        {words.working}
      </button>
    );
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
  const act = move.reset ? words.setUpFirst : actWords(move, unit);
  const screen = screenOf(move);
  // The cutter's passes are in the record already; that the thread was hardened before them is not.
  return screen === null || move.kind === 'harden-and-recut' ? (
    <button type="button" class={look} disabled={make.busy} onClick={() => make.act(move)}>
      {act}
    </button>
  ) : (
    <a class={`act ${look}`} href={screen}>
      {act}
    </a>
  );
};
