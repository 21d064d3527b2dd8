import '../bench/plan/style.css';
import './joint.css';
import { type BoxOnHand, boxById, withRuns } from '../../app/boxes.ts';
import { currentWithRuns } from '../../app/current-box.ts';
import { knownPair } from '../../domain/box/joint-under.ts';
import type { RunState } from '../../domain/setup/fold.ts';
import { NoPlan } from '../bench/plan/no-plan.tsx';
import { useCalculated } from '../bench/plan/use-calculated.ts';
import { boxesWords } from '../boxes/words.ts';
import { useLive } from '../parts/use-live.ts';
import { hrefTo } from '../shell/route.ts';
import { JointSheet } from './joint-sheet.tsx';
import { jointLinkWords } from './link-words.ts';
import { jointWords as words } from './words.ts';

const load = async (id: string | null) => (id === null ? currentWithRuns() : withRuns(await boxById(id)));

/** The joint of a box, or of the box on the bench when no id is given. */
const Joint = ({ id }: { id: string | null }) => {
  const shown = useLive(load, ['box', 'events'], id).value;
  if (shown === undefined) return <main class="page" aria-busy="true" />;
  if (!shown)
    return (
      <main class="page">
        <h1>{id === null ? words.noBox : boxesWords.noSuch}</h1>
        <a href={hrefTo(id === null ? 'bench' : 'boxes')}>
          {id === null ? words.backToBench : boxesWords.back}
        </a>
      </main>
    );
  const { onHand, runs } = shown;
  return (
    <main class="page joint">
      <a href={id === null ? hrefTo('bench') : hrefTo('boxes', id)}>
        {id === null ? words.backToBench : words.backToBox}
      </a>
      <header>
        <h1>{words.title}</h1>
        <p class="soft">{words.ofBox(onHand.box.number, onHand.box.name)}</p>
      </header>
      <Known onHand={onHand} runs={runs} />
    </main>
  );
};

export default Joint;

const Known = ({ onHand, runs }: { onHand: BoxOnHand; runs: ReadonlyMap<string, RunState> }) => {
  const { id, box } = onHand;
  const calculatedWith = useCalculated(box);
  if (!calculatedWith) return <div aria-busy="true" />;
  const { calculated } = calculatedWith;
  const known = calculated.ok ? knownPair(box, calculated.value, runs) : calculated;
  return known.ok ? (
    <>
      <JointSheet known={known.value} pitch={box.plan.pitch.text} />
      <a class="act" href={hrefTo('boxes', id, 'card')}>
        {jointLinkWords.card}
      </a>
    </>
  ) : (
    <NoPlan refusal={known.error} />
  );
};
