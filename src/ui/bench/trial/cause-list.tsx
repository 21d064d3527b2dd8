import type { Diagnosed } from '../../../app/diagnosis.ts';
import { type Evidence, inTenths } from '../../../domain/diagnosis/diagnosis.ts';
import { causeWord, evidenceWord, tenthsWord, adviceWords as words } from './advice-words.ts';

/** How many are worth naming; the rest is noise. */
const MOST_CAUSES = 4;
const LEAST_SHARE = 0.05;
const MOST_EVIDENCE = 3;

/** What may be behind it, likeliest first, with what speaks for and against each. */
export const CauseList = ({ found: { diagnosis, sentenceOf } }: { found: Diagnosed }) => (
  <ol class="causes">
    {diagnosis.causes
      .filter(({ share }, at) => at === 0 || (at < MOST_CAUSES && share >= LEAST_SHARE))
      .map((ranked) => (
        <li key={ranked.cause}>
          <b>{causeWord[ranked.cause]}</b>, {tenthsWord(inTenths(ranked.share))}
          <Said word={words.speaksFor} evidence={ranked.for} sentenceOf={sentenceOf} />
          <Said word={words.speaksAgainst} evidence={ranked.against} sentenceOf={sentenceOf} />
        </li>
      ))}
  </ol>
);

interface SaidProps {
  readonly word: string;
  readonly evidence: readonly Evidence[];
  readonly sentenceOf: (step: string) => string;
}

const Said = ({ word, evidence, sentenceOf }: SaidProps) =>
  evidence.length > 0 ? (
    <p class="soft">
      {word}:{' '}
      {evidence
        .slice(0, MOST_EVIDENCE)
        .map((each) => evidenceWord(each, sentenceOf))
        .join('; ')}
    </p>
  ) : null;
