import { allBoxes } from '../../../app/boxes.ts';
import { logId } from '../../../app/session.ts';
import { woodNames } from '../../../app/wood-names.ts';
import { firstFit, threadWood } from '../../../domain/log/box-story.ts';
import { useLive } from '../../parts/use-live.ts';
import { findingsWords as words } from '../../text/findings-words.ts';
import { BoxRow } from '../boxes/box-row.tsx';

/** How many of the last alike boxes are worth a look. */
const LAST = 5;

/** The last boxes in the wood and pitch of the newest one: useful from the second box on. */
export const LastBoxes = () => {
  const shown = useLive(
    async () => ({ boxes: await allBoxes(), nameOf: await woodNames() }),
    ['box', 'wood', 'log'],
    logId.value,
  ).value;
  const newest = shown?.boxes[0];
  if (!shown || !newest) return null;
  const wood = threadWood(newest.box, 'lid');
  const { text } = newest.box.plan.pitch;
  const alike = shown.boxes.filter(
    ({ box }) => firstFit(box) !== null && threadWood(box, 'lid') === wood && box.plan.pitch.text === text,
  );
  return (
    <section>
      <h2>{words.lastBoxes(shown.nameOf(wood), text)}</h2>
      {alike.length === 0 ? (
        <p>{words.lastNone}</p>
      ) : (
        <ul class="rows">
          {alike.slice(0, LAST).map((onHand) => (
            <BoxRow key={onHand.id} {...onHand} nameOf={shown.nameOf} />
          ))}
        </ul>
      )}
    </section>
  );
};
