import { newestBox } from '../../app/boxes.ts';
import { DEMO_LOG, logId } from '../../app/session.ts';
import { LidOff } from '../drawings/lid-off.tsx';
import { useAct } from '../parts/use-act.ts';
import { useLive } from '../parts/use-live.ts';
import { Lazy } from '../shell/lazy.tsx';
import { go } from '../shell/route.ts';
import { benchWords as words } from './words.ts';

const newest = () => newestBox();

/** Nothing on the lathe: begin a box, or look round in the demo. */
export const EmptyBench = () => {
  const last = useLive(newest, ['box']).value;

  const demo = useAct(async () => (await import('../../app/demo.ts')).openDemo());

  return (
    <main class="page bench">
      <h1>{words.nothingOnTheLathe}</h1>
      <LidOff />
      {last && <Lazy load={() => import('./later-offer.tsx')} props={{}} />}
      {last && <Lazy load={() => import('./repeat-last.tsx')} props={{ last }} />}
      <button type="button" class={last ? '' : 'main'} onClick={() => go('bench', 'new')}>
        {words.newBox}
      </button>
      {logId.value !== DEMO_LOG && (
        <>
          <p class="soft">{words.demoOffer}</p>
          <button type="button" disabled={demo.busy} aria-busy={demo.busy} onClick={() => demo.act()}>
            {words.openDemo}
          </button>
        </>
      )}
    </main>
  );
};
