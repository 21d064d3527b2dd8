import type { Diagnosis } from '../../../domain/diagnosis/diagnosis.ts';
import { adviceWords as words } from './advice-words.ts';
import { moveWord } from './move-words.ts';

/** Most named: more reasons are no comfort. */
const MOST = 3;

/** No move would help without spoiling something: which ones are barred and why, and what can still be saved. */
export const NothingLeft = ({ barred }: Pick<Diagnosis, 'barred'>) => (
  <section>
    <h2>{words.nothing}</h2>
    <p>{words.nothingKindly}</p>
    {barred.length > 0 && (
      <ul>
        {barred.slice(0, MOST).map(({ kind, why }) => (
          <li key={`${kind}${why}`}>{words.barred(moveWord[kind].what('thread'), why)}</li>
        ))}
      </ul>
    )}
    <p>{words.savesRecess}</p>
    <p>{words.savesWood}</p>
  </section>
);
