import { useSignal } from '@preact/signals';
import { askToKeep, type Keeping as Kept, type Space } from '../../../platform/persist.ts';
import { byteWords } from '../../words/bytes.ts';
import { shopWords } from '../words.ts';

const words = shopWords.backups;

/** Room used, and whether the browser has promised to keep it. */
export const Keeping = ({ space, keeping }: { space: Space | null; keeping: Kept }) => {
  const kept = useSignal(keeping);
  return (
    <section>
      {space && <p>{words.space(byteWords(space.usedBytes), byteWords(space.quotaBytes))}</p>}
      <p>{words.keeping[kept.value]}</p>
      {kept.value === 'not-promised' && (
        <button
          type="button"
          onClick={() => {
            // Some browsers ask the user, who may never answer: nothing waits for it.
            askToKeep().then((answer) => {
              kept.value = answer;
            });
          }}
        >
          {words.ask}
        </button>
      )}
    </section>
  );
};
