import { settings } from '../../../app/session.ts';
import type { RankedCause } from '../../../domain/joint/advice.ts';
import type { FitState } from '../../../domain/joint/fit-target.ts';
import type { Remedy } from '../../../domain/joint/remedies.ts';
import type { KnownJoint } from '../../../domain/joint/trial-evidence.ts';
import { hrefTo } from '../../shell/route.ts';
import { AdviceChange } from './advice-change.tsx';
import { adviceWords, basisWord, causeWord, firstCauseWord, remedyWhy, remedyWords } from './advice-words.ts';

const words = adviceWords;

interface Props {
  readonly remedy: Remedy | undefined;
  readonly at: number;
  readonly of: number;
  readonly before: FitState;
  readonly known: KnownJoint;
  readonly cause: RankedCause;
  readonly felt: boolean;
  readonly onMove: (to: number) => void;
}

/** The cause in a line, then one move as large as a step of the set-up, with what it will change. */
export const AdviceMove = ({ remedy, at, of, before, known, cause, felt, onMove }: Props) => {
  const { unit } = settings.value;
  const [amount] = remedy?.amounts ?? [];
  const cut = remedy && cutFor(remedy, known);
  return (
    <section class="move" aria-label={words.move(at + 1, of)}>
      <p>
        {firstCauseWord[cause.confidence]}: <b>{causeWord[cause.cause]}</b>
      </p>
      {remedy ? (
        <>
          <p class="soft">{words.move(at + 1, of)}</p>
          {remedy.amounts.length > 1 ? (
            remedy.amounts.map((each) => <h3 key={each.part}>{remedyWords(remedy.remedy, each, unit)}</h3>)
          ) : (
            <h3 aria-live="polite">{remedyWords(remedy.remedy, amount, unit)}</h3>
          )}
          {remedyWhy[remedy.remedy] && <p>{remedyWhy[remedy.remedy]}</p>}
          {amount && <p class="soft">{basisWord[amount.basis]}</p>}
          {cut && (
            <a class="act main" href={hrefTo('bench', `cut-${cut.part}`, 'again', String(cut.by))}>
              {words.cut}
            </a>
          )}
          {amount && <AdviceChange remedy={remedy} before={before} known={known} felt={felt} />}
        </>
      ) : (
        <p>{words.noMore}</p>
      )}
      <div class="row">
        {at > 0 && (
          <button type="button" onClick={() => onMove(at - 1)}>
            {words.previous}
          </button>
        )}
        {at + 1 < of && (
          <button type="button" onClick={() => onMove(at + 1)}>
            {words.next}
          </button>
        )}
      </div>
    </section>
  );
};

/** A move that is made with the cutter: on which part, and how much deeper, mm. */
const cutFor = ({ remedy, amounts }: Remedy, known: KnownJoint) => {
  const [amount] = amounts;
  if (remedy === 'deepen' && amount) return { part: amount.part, by: amount.by };
  if (remedy === 'same-setting-again') return { part: known.onJig ?? 'tenon', by: 0 };
  return null;
};
