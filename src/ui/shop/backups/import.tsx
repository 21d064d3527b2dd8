import { useSignal } from '@preact/signals';
import { lookInto, type Offered, takeBackupIn } from '../../../app/backups.ts';
import { pickFile } from '../../../platform/files.ts';
import { momentWords } from '../../words/day.ts';
import { backupRefusalWords, shopWords } from '../words.ts';

const words = shopWords.backups;

/** A file is read whole and summed up first; only then, and all at once, is it taken in. */
export const Import = () => {
  const offered = useSignal<Offered | null>(null);
  const said = useSignal<string | null>(null);
  const busy = useSignal(false);

  const pick = async () => {
    const file = await pickFile({ accept: '.zip,application/zip' });
    if (!file) return;
    busy.value = true;
    const found = await lookInto(file);
    busy.value = false;
    said.value = found && !found.ok ? words.refused(backupRefusalWords(found.error)) : null;
    offered.value = found?.ok ? found.value : null;
  };
  const take = async (what: Offered) => {
    busy.value = true;
    const taken = await takeBackupIn(what);
    busy.value = false;
    if (!taken) return;
    offered.value = null;
    said.value = taken.ok ? words.imported : words.refused(backupRefusalWords(taken.error));
  };

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
            <button type="button" disabled={busy.value} onClick={() => offered.value && take(offered.value)}>
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
        <button type="button" disabled={busy.value} onClick={pick}>
          {words.import}
        </button>
      )}
    </section>
  );
};
