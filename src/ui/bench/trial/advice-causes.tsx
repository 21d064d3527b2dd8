import type { Advice, RankedCause } from '../../../domain/joint/advice.ts';
import type { Evidence } from '../../../domain/joint/trial-evidence.ts';
import {
  causeWord,
  confidenceWord,
  disagreementWord,
  evidenceWord,
  fieldWord,
  adviceWords as words,
} from './advice-words.ts';

/** As many as help; the rest is noise at the bench. */
const MOST_CAUSES = 3;
const MOST_TELLINGS = 3;

/** The grounds of the advice: where told and measured disagree, what speaks for and against each cause, what would tell. */
export const AdviceCauses = ({ advice }: { advice: Advice }) => {
  const { causes, tellApart, disagreements, ask } = advice;
  const field = ask[0];
  const tellings = tellApart.filter((telling) => telling.field === field).slice(0, MOST_TELLINGS);
  return (
    <>
      {disagreements.map((each) => (
        <p key={each} role="note" class="disagrees">
          {disagreementWord[each]}
        </p>
      ))}
      {field && (
        <section>
          <h3>{words.tellApart}</h3>
          <p>{fieldWord[field]}</p>
          <ul>
            {tellings.map(({ evidence, favours }) => (
              <li key={evidence}>{words.favours(evidenceWord(evidence), causeWord[favours])}</li>
            ))}
          </ul>
        </section>
      )}
      {causes.length > 0 && (
        <details class="grounds">
          <summary>{words.why}</summary>
          <ol class="causes">
            {causes.slice(0, MOST_CAUSES).map((cause) => (
              <li key={cause.cause}>
                <Grounds cause={cause} />
              </li>
            ))}
          </ol>
        </details>
      )}
    </>
  );
};

const Grounds = ({ cause }: { cause: RankedCause }) => (
  <>
    <b>{causeWord[cause.cause]}</b> <span class="soft">({confidenceWord[cause.confidence]})</span>
    <Said word={words.speaksFor} evidence={cause.for} />
    <Said word={words.speaksAgainst} evidence={cause.against} />
  </>
);

const Said = ({ word, evidence }: { word: string; evidence: readonly Evidence[] }) =>
  evidence.length > 0 ? (
    <p>
      {word}: {evidence.map(evidenceWord).join('; ')}
    </p>
  ) : null;
