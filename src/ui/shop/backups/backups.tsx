import { lastBackup } from '../../../app/backups.ts';
import { offline } from '../../../app/updates.ts';
import { keeping, space } from '../../../platform/persist.ts';
import { useLive } from '../../parts/use-live.ts';
import { hrefTo } from '../../shell/route.ts';
import { ageWords } from '../../words/age.ts';
import { DemoCorner } from '../demo-corner.tsx';
import { shopWords } from '../words.ts';
import { Export } from './export.tsx';
import { Import } from './import.tsx';
import { Keeping } from './keeping.tsx';
import { Replaced } from './replaced.tsx';

const words = shopWords.backups;

const load = async () => ({ last: await lastBackup(), space: await space(), keeping: await keeping() });

/** Where the data live, how to take a copy out and in, and what was replaced. */
const Backups = () => {
  const state = useLive(load, ['device']).value;
  return (
    <main class="page shop">
      <a href={hrefTo('shop')}>{shopWords.back}</a>
      <h1>{words.title}</h1>
      <p>{words.where}</p>
      {offline.value && <p>{words.offline[offline.value]}</p>}
      {state && (
        <>
          <p>
            <b>{state.last ? words.last(ageWords(state.last, Date.now())) : words.never}</b>
          </p>
          <Export />
          <Import />
          <Keeping space={state.space} keeping={state.keeping} />
        </>
      )}
      <Replaced />
      <DemoCorner />
    </main>
  );
};

export default Backups;
