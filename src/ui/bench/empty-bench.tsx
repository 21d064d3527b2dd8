import { useSignal } from '@preact/signals';
import { newestBox } from '../../app/boxes.ts';
import { DEMO_LOG, logId } from '../../app/session.ts';
import { startLikeLast } from '../../app/start-box.ts';
import { LidOff } from '../drawings/lid-off.tsx';
import { useLive } from '../parts/use-live.ts';
import { Later } from '../shell/later.tsx';
import { go, goInstead } from '../shell/route.ts';
import { benchWords as words } from './words.ts';

/** Nothing on the lathe: begin a box, or look round in the demo. */
export const EmptyBench = () => {
  const busy = useSignal(false);
  const last = useLive(newestBox, ['box', 'log'], logId.value).value;

  const likeLast = async () => {
    if (busy.value || !last) return;
    busy.value = true;
    const id = await startLikeLast(last);
    busy.value = false;
    if (id) goInstead('bench', 'set-up-recess');
  };
  const demo = async () => {
    busy.value = true;
    const { openDemo } = await import('../../app/demo.ts');
    await openDemo();
    busy.value = false;
  };

  return (
    <main class="page bench">
      <h1>{words.nothingOnTheLathe}</h1>
      <LidOff />
      {last && <Later load={() => import('./later-offer.tsx')} props={{}} />}
      {last && (
        <>
          <p>{words.lastWas(last.box.number, last.box.name)}</p>
          <button type="button" class="main" disabled={busy.value} onClick={likeLast}>
            {words.likeTheLast}
          </button>
        </>
      )}
      <button type="button" class={last ? '' : 'main'} onClick={() => go('bench', 'new')}>
        {words.newBox}
      </button>
      {logId.value !== DEMO_LOG && (
        <>
          <p class="soft">{words.demoOffer}</p>
          <button type="button" disabled={busy.value} aria-busy={busy.value} onClick={demo}>
            {words.openDemo}
          </button>
        </>
      )}
    </main>
  );
};
