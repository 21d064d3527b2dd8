import './boxes.css';
import { useSignal } from '@preact/signals';
import { allBoxes } from '../../../app/boxes.ts';
import { logId } from '../../../app/session.ts';
import { ANY_BOX, type BoxFilter, passes } from '../../../domain/log/box-story.ts';
import { useLive } from '../../parts/use-live.ts';
import { boxesWords as words } from '../../text/boxes-words.ts';
import { BoxRow } from './box-row.tsx';
import { BoxStory } from './box-story.tsx';
import { Filter } from './filter.tsx';

/** How many rows are drawn before "show more". */
const ROWS = 40;

const Boxes = ({ rest }: { rest: readonly string[] }) =>
  rest[0] ? <BoxStory key={rest[0]} id={rest[0]} /> : <BoxList />;

const BoxList = () => {
  const boxes = useLive(allBoxes, ['box', 'log'], logId.value).value;
  const filter = useSignal<BoxFilter>(ANY_BOX);
  const rows = useSignal(ROWS);
  if (!boxes) return <main class="page" aria-busy="true" />;

  const found = boxes.filter(({ box }) => passes(box, filter.value, (key) => key));
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
          <Filter boxes={boxes} filter={filter} />
          <p role="status" class="soft">
            {words.count(found.length, boxes.length)}
          </p>
          <ul class="rows">
            {found.slice(0, rows.value).map((onHand) => (
              <BoxRow key={onHand.id} {...onHand} />
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
