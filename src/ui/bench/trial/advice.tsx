import { useSignal } from '@preact/signals';
import type { Diagnosed } from '../../../app/diagnosis.ts';
import { settings } from '../../../app/session.ts';
import type { Trial } from '../../../domain/box/records.ts';
import type { Question } from '../../../domain/diagnosis/diagnosis.ts';
import { hrefTo } from '../../shell/route.ts';
import { refusalWords } from '../../words/refusal.ts';
import { AdviceActs } from './advice-acts.tsx';
import { causeWord, adviceWords as words } from './advice-words.ts';
import { AskBlock } from './ask-block.tsx';
import { AskForm } from './ask-form.tsx';
import { CauseDrawing } from './cause-drawing.tsx';
import { CauseList } from './cause-list.tsx';
import { Likelihood } from './likelihood.tsx';
import { MoveBlock } from './move-block.tsx';
import { moveLine } from './move-words.ts';
import { NothingLeft } from './nothing-left.tsx';
import { useDiagnosis } from './use-diagnosis.ts';
import { trialLine } from './words.ts';

interface Props {
  readonly boxId: string;
  readonly trial: Trial;
  readonly onChange: () => void;
  readonly onTriedAgain: () => void;
}

/** What is likely wrong with the lid as it was tried, one move, and what would settle it. */
const Advice = ({ boxId, trial, onChange, onTriedAgain }: Props) => {
  const { unit } = settings.value;
  const answer = useDiagnosis(boxId, trial.id);
  return (
    <>
      <header>
        <h1>{words.title}</h1>
        <button type="button" onClick={onChange}>
          {words.change}
        </button>
      </header>
      <p>{trialLine(trial)}.</p>
      {answer === null ? (
        <p role="alert">{words.failed}</p>
      ) : !answer ? (
        <p role="status" aria-busy="true">
          {words.working}
        </p>
      ) : !answer.ok ? (
        <>
          <p role="alert">{refusalWords(answer.error, words.joint, unit)}</p>
          <a class="act main" href={hrefTo('bench', 'plan')}>
            {words.toPlan}
          </a>
        </>
      ) : (
        <Found boxId={boxId} trial={trial} found={answer.value} onTriedAgain={onTriedAgain} />
      )}
    </>
  );
};

export default Advice;

/** What the advice asks, else what would tell its first two causes apart; nothing that was asked already. */
const questionOf = ({ diagnosis, trial }: Diagnosed): Question | null => {
  const { ask, tellsApart } = diagnosis;
  if (ask) return ask;
  if (!tellsApart || trial.asked?.includes(tellsApart)) return null;
  return { field: tellsApart, part: null, answers: [] };
};

interface FoundProps extends Pick<Props, 'boxId' | 'trial' | 'onTriedAgain'> {
  readonly found: Diagnosed;
}

const Found = ({ boxId, trial, found, onTriedAgain }: FoundProps) => {
  const over = useSignal<'causes' | 'ask' | null>(null);
  const at = useSignal(0);
  const { diagnosis, view } = found;
  // Answers or moves were added since: what is on screen may no longer be advised, and is not to be acted on.
  const isStale = JSON.stringify(trial) !== JSON.stringify(found.trial);
  const { unit } = settings.value;
  const [first] = diagnosis.causes;
  const ask = questionOf(found);
  // Where sizes and feel disagree, measuring comes before any move.
  const moves = [
    ...(diagnosis.contradiction ? (['measure'] as const) : []),
    ...[diagnosis.move, diagnosis.next].filter((move) => move !== null),
  ];
  const shown = Math.min(at.value, Math.max(0, moves.length - 1));
  const move = moves[shown] ?? null;
  const then = moves[shown + 1];

  if (over.value === 'ask' && ask)
    return (
      <div class="over">
        <AskForm
          boxId={boxId}
          trial={trial}
          field={ask.field}
          part={ask.part ?? 'tenon'}
          onDone={() => (over.value = null)}
        />
      </div>
    );
  if (over.value === 'causes')
    return (
      <div class="over">
        <header>
          <h1>{words.causesTitle}</h1>
          <button type="button" onClick={() => (over.value = null)}>
            {words.back}
          </button>
        </header>
        <CauseList found={found} />
      </div>
    );
  return (
    <>
      {diagnosis.contradiction && (
        <section role="note" class="disagrees">
          <h2>{words.disagree}</h2>
          <p>{words.disagreeWhy}</p>
        </section>
      )}
      {first && (
        <section aria-label={causeWord[first.cause]}>
          <CauseDrawing cause={first.cause} joint={view.joint} />
          <Likelihood of={diagnosis.confidence} />
          <h2 class="cause-name">{causeWord[first.cause]}</h2>
          {diagnosis.beyondRepair.map((cause) => {
            const sentence = words.beyond[cause];
            return sentence && <p key={cause}>{sentence}</p>;
          })}
        </section>
      )}
      {move !== null && (
        <section class="move" aria-label={words.nextMove}>
          <p class="of">
            <b>{words.nextMove}</b> {moves.length > 1 && words.moveOf(shown + 1, moves.length)}
          </p>
          {move === 'measure' ? <h2>{words.measure}</h2> : <MoveBlock move={move} found={found} />}
          {then && then !== 'measure' && <p class="soft">{words.thenWords(moveLine(then, unit))}</p>}
        </section>
      )}
      {move === null && !ask && <NothingLeft barred={diagnosis.barred} />}
      {ask && <AskBlock ask={ask} onAsk={move === null || isStale ? null : () => (over.value = 'ask')} />}
      <AdviceActs
        boxId={boxId}
        trial={trial}
        move={move}
        isStale={isStale}
        asks={ask?.field ?? null}
        onAsk={() => (over.value = 'ask')}
        onNext={moves.length > 1 ? () => (at.value = (shown + 1) % moves.length) : null}
        onCauses={() => (over.value = 'causes')}
        onTriedAgain={onTriedAgain}
      />
    </>
  );
};
