import { useSignal } from '@preact/signals';
import { DEMO_LOG, logId } from '../../app/session.ts';
import { go } from '../shell/route.ts';
import { shopWords } from './words.ts';

const words = shopWords.backups;

/** The invented log: in and out with one tap. */
export const DemoCorner = () => {
  const busy = useSignal(false);
  const isShown = logId.value === DEMO_LOG;
  const act = async () => {
    busy.value = true;
    const { leaveDemo, openDemo } = await import('../../app/demo.ts');
    await (isShown ? leaveDemo() : openDemo());
    busy.value = false;
    go('bench');
  };
  return (
    <section>
      <h2>{words.demo}</h2>
      <p>{words.demoAbout}</p>
      <button type="button" disabled={busy.value} onClick={act}>
        {isShown ? words.demoLeave : words.demoOpen}
      </button>
    </section>
  );
};
