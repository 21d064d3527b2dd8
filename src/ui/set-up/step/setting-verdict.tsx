import { settings } from '../../../app/session.ts';
import { judgeStep } from '../../../app/setting-verdict.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { useLive } from '../../parts/use-live.ts';
import { gradeWord, ifLeftWords, limitWords, readingWord, verdictWords as words } from './verdict-words.ts';

interface Props {
  readonly run: RunState;
  readonly stepKey: string;
  readonly onAgain: () => void;
  readonly onClose: () => void;
}

/** What the readings of a step mean for this joint: the tightest counts, and all are listed. */
export default ({ run, stepKey, onAgain, onClose }: Props) => {
  const judged = useLive(judgeStep, ['box', 'rig'], run, stepKey).value;
  if (!judged?.tightest) return <div class="panel" aria-busy={judged === undefined} />;
  const { readings, tightest, verdict } = judged;
  const { unit } = settings.value;
  return (
    <section class="panel" aria-label={words.title}>
      <div aria-live="polite">
        {verdict && <h2 class="grade">{gradeWord[verdict.grade]}</h2>}
        <p>{words.tightest(readings.length, readingWord(tightest))}</p>
        <p>{verdict ? ifLeftWords(verdict, unit) : words.none}</p>
        {verdict && <p class="soft">{limitWords(verdict, unit)}</p>}
        {readings.length > 1 && <p class="soft all">{words.all(readings.map(readingWord))}</p>}
      </div>
      <div class="ends">
        <button type="button" onClick={onAgain}>
          {words.another}
        </button>
        <button type="button" onClick={onClose}>
          {words.back}
        </button>
      </div>
    </section>
  );
};
