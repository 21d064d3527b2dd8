import './boxes.css';
import { useSignal } from '@preact/signals';
import { allBoxes, newestBoxes } from '../../app/boxes.ts';
import { woodNames } from '../../app/wood-names.ts';
import { ANY_BOX, type BoxFilter, matches } from '../../domain/box/story.ts';
import { useLive } from '../parts/use-live.ts';
import { Lazy } from '../shell/lazy.tsx';
import { BoxRow } from './box-row.tsx';
import { BoxStory } from './box-story.tsx';
import { Filter } from './filter.tsx';
import { boxesWords as words } from './words.ts';

/** How many rows are drawn before "show more". */
const ROWS = 40;

const firstRows = async () => ({ boxes: await newestBoxes(ROWS), nameOf: await woodNames() });
const theRest = async (now: boolean) => (now ? allBoxes() : null);

const Boxes = ({ rest: [id, page] }: { rest: readonly string[] }) => {
  if (id === undefined) return <BoxList />;
  if (page === 'joint') return <Lazy key={page} load={() => import('../joint/joint.tsx')} props={{ id }} />;
  if (page === 'card') return <Lazy key={page} load={() => import('../joint/job-card.tsx')} props={{ id }} />;
  return <BoxStory key={id} id={id} />;
};

const BoxList = () => {
  // The newest stand while the rest of a large log is still being read.
  const newest = useLive(firstRows, ['box', 'wood']).value;
  const all = useLive(theRest, ['box'], newest !== undefined).value;
  const filter = useSignal<BoxFilter>(ANY_BOX);
  const rows = useSignal(ROWS);
  if (!newest) return <main class="page" aria-busy="true" />;
  const { nameOf } = newest;
  const boxes = all ?? newest.boxes;

  const found = boxes.filter(({ box }) => matches(box, filter.value, nameOf));
  return (
    <main class="page boxes">
      <h1>{words.title}</h1>
      {boxes.length === 0 ? (
        <>
          <p>{words.none}</p>
          <a class="act main" href="#/bench/new">
            {words.first}
          </a>
        </>
      ) : (
        <>
          <Filter boxes={boxes} filter={filter} nameOf={nameOf} />
          <p role="status" class="soft">
            {all ? words.count(found.length, all.length) : words.counting}
          </p>
          <ul class="rows">
            {found.slice(0, rows.value).map((onHand) => (
              <BoxRow key={onHand.id} {...onHand} nameOf={nameOf} />
            ))}
          </ul>
          {found.length > rows.value && (
            <button
              type="button"
              onClick={() => {
                rows.value += ROWS;
              }}
            >
              {words.more(Math.min(ROWS, found.length - rows.value))}
            </button>
          )}
        </>
      )}
    </main>
  );
};

export default Boxes;
