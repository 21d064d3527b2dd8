import { useSignal } from '@preact/signals';
import { backupFile, boxesTable, noteBackup } from '../../../app/backups.ts';
import { announce } from '../../../app/changes.ts';
import { shareOrDownload } from '../../../platform/share.ts';
import { sizeWords } from '../../words/bytes.ts';
import { shopWords } from '../words.ts';

const words = shopWords.backups;

/** Make, then share: two taps, since the browser lets a file be shared only just after a tap. */
export const Export = () => {
  const file = useSignal<File | null>(null);
  const busy = useSignal(false);

  const make = (what: () => Promise<File | undefined>) => async () => {
    busy.value = true;
    file.value = (await what()) ?? null;
    busy.value = false;
  };
  const hand = async (made: File) => {
    if ((await shareOrDownload(made)) === 'left') return;
    if (made.type === 'application/zip') await noteBackup();
    file.value = null;
    announce('log');
  };

  if (file.value) {
    const made = file.value;
    return (
      <section>
        <p role="status">{words.ready(made.name, sizeWords(made.size))}</p>
        <button type="button" class="main" onClick={() => hand(made)}>
          {words.share}
        </button>
      </section>
    );
  }
  return (
    <section>
      <button type="button" class="main" disabled={busy.value} onClick={make(backupFile)}>
        {busy.value ? words.making : words.make}
      </button>
      <button type="button" disabled={busy.value} onClick={make(boxesTable)}>
        {words.csv}
      </button>
    </section>
  );
};
