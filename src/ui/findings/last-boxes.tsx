import { boxById } from '../../app/boxes.ts';
import { woodNames } from '../../app/wood-names.ts';
import type { LastAlike } from '../../domain/findings/answers/last-alike.ts';
import { BoxRow } from '../boxes/box-row.tsx';
import { useLive } from '../parts/use-live.ts';
import { Lazy } from '../shell/lazy.tsx';
import { findingsWords as words } from './words.ts';

const load = async (...ids: readonly string[]) => ({
  boxes: (await Promise.all(ids.map(boxById))).flatMap((box) => box ?? []),
  nameOf: await woodNames(),
});

/** The last boxes in the wood and pitch of the newest one, and what the handbook says of that wood. */
export const LastBoxes = ({ alike: { wood, pitch, boxes } }: { alike: LastAlike }) => {
  const shown = useLive(load, ['box', 'wood'], ...boxes).value;
  if (!shown) return null;
  return (
    <section>
      <h2>{words.lastBoxes(shown.nameOf(wood), pitch)}</h2>
      {shown.boxes.length === 0 ? (
        <p>{words.lastNone}</p>
      ) : (
        <ul class="rows">
          {shown.boxes.map((onHand) => (
            <BoxRow key={onHand.id} {...onHand} nameOf={shown.nameOf} />
          ))}
        </ul>
      )}
      <Lazy key={wood} load={() => import('../woods/handbook-line.tsx')} props={{ wood }} />
    </section>
  );
};
