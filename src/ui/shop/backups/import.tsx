import { useSignal } from '@preact/signals';
import { lookInto, type Offered, takeBackupIn } from '../../../app/backups.ts';
import { pickFile } from '../../../platform/files.ts';
import { useAct } from '../../parts/use-act.ts';
import { momentWords } from '../../words/day.ts';
import { backupRefusalWords, shopWords } from '../words.ts';

const words = shopWords.backups;

/** A file is read whole and summed up first; only then, and all at once, is it taken in. */
export const Import = () => {
  const offered = useSignal<Offered | null>(null);
  const said = useSignal<string | null>(null);

  const look = useAct(async (_, file: File) => {
    const found = await lookInto(file);
    said.value = found && !found.ok ? words.refused(backupRefusalWords(found.error)) : null;
    offered.value = found?.ok ? found.value : null;
  });
  // Not busy while the file is picked: a picker that was left may never say so.
  const pick = async () => {
    const file = await pickFile({ accept: '.zip,application/zip' });
    if (file) await look.act(file);
  };
  const take = useAct(async (_, what: Offered) => {
    const taken = await takeBackupIn(what);
    if (!taken) return;
    offered.value = null;
    said.value = taken.ok ? words.imported : words.refused(backupRefusalWords(taken.error));
  });

  return (
    <section>
      {said.value && <p role="alert">{said.value}</p>}
      {offered.value ? (
        <>
          <p>{words.madeAt(momentWords(offered.value.summary.madeAt))}</p>
          {offered.value.summary.takenInBefore && <p>{words.before}</p>}
          <p role="status">
            {words.summary(
              offered.value.summary.fresh,
              offered.value.summary.changed,
              offered.value.summary.same,
            )}
          </p>
          <div class="row">
            <button
              type="button"
              disabled={take.busy}
              onClick={() => offered.value && take.act(offered.value)}
            >
              {words.importNow}
            </button>
            <button
              type="button"
              onClick={() => {
                offered.value = null;
              }}
            >
              {words.importLeave}
            </button>
          </div>
        </>
      ) : (
        <button type="button" disabled={look.busy} onClick={pick}>
          {words.import}
        </button>
      )}
    </section>
  );
};
