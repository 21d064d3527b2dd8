import { settings } from '../../../app/session.ts';
import type { Question } from '../../../domain/diagnosis/diagnosis.ts';
import { adviceWords } from './advice-words.ts';
import { askWords, meaningWords, questionWords as words } from './question-words.ts';

/** One question, what each answer would mean, and the way to its form. */
export const AskBlock = ({ ask, onAsk }: { ask: Question; onAsk: (() => void) | null }) => (
  <section class="ask-block" aria-label={adviceWords.settle}>
    <h2>{adviceWords.settle}</h2>
    <p>{askWords(ask.field, ask.part ?? 'tenon')}</p>
    {ask.answers.length > 0 && (
      <ul>
        {meaningWords(ask, settings.value.unit).map((meaning) => (
          <li key={meaning}>{meaning}</li>
        ))}
      </ul>
    )}
    {onAsk && (
      <button type="button" onClick={onAsk}>
        {words.check(ask.field)}
      </button>
    )}
  </section>
);
