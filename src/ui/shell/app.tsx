import { late } from '../../app/ask.ts';
import { failures } from '../../app/failure.ts';
import { DEMO_LOG, logId } from '../../app/session.ts';
import { isInMemory } from '../../app/start.ts';
import { Bench } from '../bench/bench.tsx';
import { SetUp } from '../set-up/set-up.tsx';
import { DemoNote } from './demo-note.tsx';
import { Lazy } from './lazy.tsx';
import { PlacesBar } from './places-bar.tsx';
import { isWhole, route } from './route.ts';
import { UpdateNote } from './update-note.tsx';
import { shellWords } from './words.ts';

/** The whole screen: a set-up by itself, or one of the five places over the bar. */
export const App = () => {
  const [place = 'bench', ...rest] = route.value;
  if (place === 'set-up' && rest[0])
    return (
      <>
        <Notices />
        <SetUp runId={rest[0]} />
      </>
    );
  return (
    <>
      <Notices />
      {logId.value === DEMO_LOG && <DemoNote />}
      <UpdateNote />
      <Place name={place} rest={rest} />
      {!isWhole.value && <PlacesBar place={place} />}
    </>
  );
};

/** Bench is in the first load; the other places come when they are first asked for. */
const Place = ({ name, rest }: { name: string; rest: readonly string[] }) => {
  switch (name) {
    case 'boxes':
      return <Lazy key={name} load={() => import('../boxes/boxes.tsx')} props={{ rest }} />;
    case 'woods':
      return <Lazy key={name} load={() => import('../woods/woods.tsx')} props={{ rest }} />;
    case 'findings':
      return <Lazy key={name} load={() => import('../findings/findings.tsx')} props={{ rest }} />;
    case 'shop':
      return <Lazy key={name} load={() => import('../shop/shop.tsx')} props={{ rest }} />;
    case 'bench':
      return <Bench rest={rest} />;
    default:
      return (
        <main class="page">
          <h1>{shellWords.noSuchPlace}</h1>
        </main>
      );
  }
};

/** One place for what failed and what is waited for, above every screen; its words are no part of the first load. */
const Notices = () =>
  (isInMemory.value || failures.value.length + late.value.length > 0) && (
    <div class="notices">
      <Lazy load={() => import('./notices.tsx')} props={{}} missing={shellWords.trouble} />
    </div>
  );
