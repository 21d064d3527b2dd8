import '../bench/plan/style.css';
import './job-card.css';
import { boxStory } from '../../app/box-story.ts';
import type { BoxOnHand } from '../../app/boxes.ts';
import { woodsOf } from '../../domain/box/story.ts';
import type { RunState } from '../../domain/setup/fold.ts';
import { printPage } from '../../platform/share.ts';
import { NoPlan } from '../bench/plan/no-plan.tsx';
import { useCalculated } from '../bench/plan/use-calculated.ts';
import { boxesWords } from '../boxes/words.ts';
import { useLive } from '../parts/use-live.ts';
import { hrefTo } from '../shell/route.ts';
import { JobCardSheet } from './job-card-sheet.tsx';
import { jointWords } from './words.ts';

const words = jointWords.card;

/** What is wanted at the lathe on one page of paper, for who keeps the phone out of the dust. */
const JobCard = ({ id }: { id: string }) => {
  const story = useLive(boxStory, ['box', 'events', 'wood'], id).value;
  if (!story) return <main class="page" aria-busy="true" />;
  const { shown, nameOf } = story;
  if (!shown)
    return (
      <main class="page">
        <h1>{boxesWords.noSuch}</h1>
        <a href={hrefTo('boxes')}>{boxesWords.back}</a>
      </main>
    );
  const { onHand, runs } = shown;
  return (
    <main class="page job-card">
      <nav class="row">
        <a href={hrefTo('boxes', id, 'joint')}>{words.back}</a>
        <button type="button" class="main" onClick={printPage}>
          {words.print}
        </button>
      </nav>
      <Card onHand={onHand} runs={runs} woods={woodsOf(onHand.box).map(nameOf).join(' / ')} />
    </main>
  );
};

export default JobCard;

interface CardProps {
  readonly onHand: BoxOnHand;
  readonly runs: ReadonlyMap<string, RunState>;
  readonly woods: string;
}

const Card = ({ onHand, runs, woods }: CardProps) => {
  const { box } = onHand;
  const known = useCalculated(box);
  if (!known) return <div aria-busy="true" />;
  return known.calculated.ok ? (
    <JobCardSheet box={box} runs={runs} woods={woods} calculated={known.calculated.value} />
  ) : (
    <NoPlan refusal={known.calculated.error} />
  );
};
