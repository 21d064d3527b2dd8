import './later-check.css';
import { useSignal } from '@preact/signals';
import { recordLidCheck, undoLidCheck } from '../../app/after-fit.ts';
import type { BoxOnHand } from '../../app/boxes.ts';
import type { LidTurns } from '../../domain/box/records.ts';
import { useAct } from '../parts/use-act.ts';
import { dayWords } from '../words/day.ts';
import { laterWord, laterWords as words } from './close/words.ts';

const VERDICTS: readonly LidTurns[] = ['free', 'stiff', 'stuck', 'loose'];

/** How a lid turns weeks on: one tap, with its day; and what was said before. */
export const LaterCheck = ({ onHand, question = words.ask }: { onHand: BoxOnHand; question?: string }) => {
  const { id, box } = onHand;
  /** Only what was said just now is taken back with a tap. */
  const saidNow = useSignal(false);

  const { busy, act } = useAct(async (fresh, lid: LidTurns) => {
    saidNow.value = await recordLidCheck(id, fresh, lid);
    return saidNow.value;
  });
  const last = box.lidChecks.at(-1);

  return (
    <section class="later" aria-label={words.ask}>
      {saidNow.value && last ? (
        <p role="status" class="row">
          <b>{words.noted(last.lid, dayWords(last.on))}</b>
          <button
            type="button"
            class="plain"
            onClick={async () => {
              saidNow.value = !(await undoLidCheck(id, last.id));
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
      {box.lidChecks.length > (saidNow.value ? 1 : 0) && (
        <ul aria-label={words.list}>
          {box.lidChecks.slice(0, saidNow.value ? -1 : undefined).map((later) => (
            <li key={later.id}>{words.noted(later.lid, dayWords(later.on))}</li>
          ))}
        </ul>
      )}
    </section>
  );
};
