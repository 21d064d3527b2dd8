import { type BoxOnHand, newestBox } from '../../app/boxes.ts';
import { DEMO_LOG, logId } from '../../app/session.ts';
import { startBox } from '../../app/start-box.ts';
import { LidOff } from '../drawings/lid-off.tsx';
import { useAct } from '../parts/use-act.ts';
import { useLive } from '../parts/use-live.ts';
import { Lazy } from '../shell/lazy.tsx';
import { go, goInstead } from '../shell/route.ts';
import { benchWords as words } from './words.ts';

const newest = () => newestBox();

/** Nothing on the lathe: begin a box, or look round in the demo. */
export const EmptyBench = () => {
  const last = useLive(newest, ['box']).value;

  // The plan, rig and procedure of the newest box; its sizes are measured again.
  const repeat = useAct(async (id, { box }: BoxOnHand) => {
    const saved = await startBox(id, box.plan, box, box.name);
    if (saved) goInstead('bench', 'set-up-recess');
    return saved;
  });
  const demo = useAct(async () => (await import('../../app/demo.ts')).openDemo());

  return (
    <main class="page bench">
      <h1>{words.nothingOnTheLathe}</h1>
      <LidOff />
      {last && <Lazy load={() => import('./later-offer.tsx')} props={{}} />}
      {last && (
        <>
          <p>{words.lastWas(last.box.number, last.box.name)}</p>
          <button type="button" class="main" disabled={repeat.busy} onClick={() => repeat.act(last)}>
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
          <button type="button" disabled={demo.busy} aria-busy={demo.busy} onClick={() => demo.act()}>
            {words.openDemo}
          </button>
        </>
      )}
    </main>
  );
};
