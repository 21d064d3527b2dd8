import { DEMO_LOG, logId } from '../../app/session.ts';
import { useAct } from '../parts/use-act.ts';
import { go } from '../shell/route.ts';
import { shopWords } from './words.ts';

const words = shopWords.backups;

/** The invented log: in and out with one tap. */
export const DemoCorner = () => {
  const isShown = logId.value === DEMO_LOG;
  const { busy, act } = useAct(async () => {
    const { leaveDemo, openDemo } = await import('../../app/demo.ts');
    await (isShown ? leaveDemo() : openDemo());
    go('bench');
  });
  return (
    <section>
      <h2>{words.demo}</h2>
      <p>{words.demoAbout}</p>
      <button type="button" disabled={busy} onClick={() => act()}>
        {isShown ? words.demoLeave : words.demoOpen}
      </button>
    </section>
  );
};
