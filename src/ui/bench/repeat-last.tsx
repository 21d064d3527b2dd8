import type { BoxOnHand } from '../../app/boxes.ts';
import { startBox } from '../../app/start-box.ts';
import { useAct } from '../parts/use-act.ts';
import { goInstead } from '../shell/route.ts';
import { repeatWords as words } from './repeat-words.ts';

/** The plan, rig and procedure of the newest box for another one; its sizes are measured again. */
const RepeatLast = ({ last }: { last: BoxOnHand }) => {
  const { box } = last;
  const repeat = useAct(async (id) => {
    const saved = await startBox(id, box.plan, box, box.name);
    if (saved) goInstead('bench', 'set-up-recess');
    return saved;
  });
  return (
    <>
      <p>{words.lastWas(box.number, box.name)}</p>
      <button type="button" class="main" disabled={repeat.busy} onClick={() => repeat.act()}>
        {words.likeTheLast}
      </button>
    </>
  );
};

export default RepeatLast;
