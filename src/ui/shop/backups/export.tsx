import { useSignal } from '@preact/signals';
import { backupFile, boxesTable, noteBackup } from '../../../app/backups.ts';
import { shareOrDownload } from '../../../platform/share.ts';
import type { BackupRefusal } from '../../../storage/backup/format.ts';
import { useAct } from '../../parts/use-act.ts';
import { byteWords } from '../../words/bytes.ts';
import { backupRefusalWords, shopWords } from '../words.ts';

const words = shopWords.backups;

/** Make, then share: two taps, since the browser lets a file be shared only just after a tap. */
export const Export = () => {
  const file = useSignal<File | null>(null);

  const refusal = useSignal<BackupRefusal | null>(null);

  const backup = useAct(async () => {
    const made = await backupFile();
    file.value = made?.ok ? made.value : null;
    refusal.value = made && !made.ok ? made.error : null;
  });
  const table = useAct(async () => {
    file.value = (await boxesTable()) ?? null;
  });
  const busy = backup.busy || table.busy;
  const hand = async (made: File) => {
    if ((await shareOrDownload(made)) === 'left') return;
    if (made.type === 'application/zip') await noteBackup();
    file.value = null;
  };

  if (file.value) {
    const made = file.value;
    return (
      <section>
        <p role="status">{words.ready(made.name, byteWords(made.size))}</p>
        <button type="button" class="main" onClick={() => hand(made)}>
          {words.share}
        </button>
      </section>
    );
  }
  return (
    <section>
      {refusal.value && (
        <p role="alert">
          {words.unreadable(backupRefusalWords(refusal.value))} <a href="./rescue.html">{words.rescue}</a>
        </p>
      )}
      <button type="button" class="main" disabled={busy} onClick={() => backup.act()}>
        {busy ? words.making : words.make}
      </button>
      <button type="button" disabled={busy} onClick={() => table.act()}>
        {words.csv}
      </button>
    </section>
  );
};
