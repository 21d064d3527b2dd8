import './later-check.css';
import { useSignal } from '@preact/signals';
import { recordLater, takeBackLater } from '../../app/after-fit.ts';
import type { BoxOnHand } from '../../app/boxes.ts';
import type { LaterVerdict } from '../../domain/box/records.ts';
import { useAct } from '../parts/use-act.ts';
import { dayWords } from '../words/day.ts';
import { laterWord, laterWords as words } from './close/words.ts';

const VERDICTS: readonly LaterVerdict[] = ['free', 'stiff', 'stuck', 'loose'];

/** How a lid turns weeks on: one tap, with its day; and what was said before. */
export const LaterCheck = ({ onHand, question = words.ask }: { onHand: BoxOnHand; question?: string }) => {
  const { id, box } = onHand;
  /** Only what was said just now is taken back with a tap. */
  const saidNow = useSignal(false);

  const { busy, act } = useAct(async (fresh, verdict: LaterVerdict) => {
    saidNow.value = await recordLater(id, fresh, verdict);
    return saidNow.value;
  });
  const last = box.later.at(-1);

  return (
    <section class="later" aria-label={words.ask}>
      {saidNow.value && last ? (
        <p role="status" class="row">
          <b>{words.noted(last.verdict, dayWords(last.on))}</b>
          <button
            type="button"
            class="plain"
            onClick={async () => {
              saidNow.value = !(await takeBackLater(id, last.id));
            }}
          >
            {words.undo}
          </button>
        </p>
      ) : (
        <>
          <p>{question}</p>
          <div class="verdicts">
            {VERDICTS.map((verdict) => (
              <button key={verdict} type="button" disabled={busy} onClick={() => act(verdict)}>
                {laterWord[verdict]}
              </button>
            ))}
          </div>
        </>
      )}
      {box.later.length > (saidNow.value ? 1 : 0) && (
        <ul aria-label={words.list}>
          {box.later.slice(0, saidNow.value ? -1 : undefined).map((later) => (
            <li key={later.id}>{words.noted(later.verdict, dayWords(later.on))}</li>
          ))}
        </ul>
      )}
    </section>
  );
};
