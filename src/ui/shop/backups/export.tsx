import { useSignal } from '@preact/signals';
import { backupFile, boxesTable, noteBackup } from '../../../app/backups.ts';
import { shareOrDownload } from '../../../platform/share.ts';
import { useAct } from '../../parts/use-act.ts';
import { sizeWords } from '../../words/bytes.ts';
import { shopWords } from '../words.ts';

const words = shopWords.backups;

/** Make, then share: two taps, since the browser lets a file be shared only just after a tap. */
export const Export = () => {
  const file = useSignal<File | null>(null);

  const { busy, act } = useAct(async (_, what: () => Promise<File | undefined>) => {
    file.value = (await what()) ?? null;
  });
  const hand = async (made: File) => {
    if ((await shareOrDownload(made)) === 'left') return;
    if (made.type === 'application/zip') await noteBackup();
    file.value = null;
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
      <button type="button" class="main" disabled={busy} onClick={() => act(backupFile)}>
        {busy ? words.making : words.make}
      </button>
      <button type="button" disabled={busy} onClick={() => act(boxesTable)}>
        {words.csv}
      </button>
    </section>
  );
};
