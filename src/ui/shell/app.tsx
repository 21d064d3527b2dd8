import { failure } from '../../app/failure.ts';
import { DEMO_LOG, logId } from '../../app/session.ts';
import { Bench } from '../bench/bench.tsx';
import { SetUp } from '../set-up/set-up.tsx';
import { DemoNote } from './demo-note.tsx';
import { Later } from './later.tsx';
import { PlacesBar } from './places-bar.tsx';
import { route } from './route.ts';
import { UpdateNote } from './update-note.tsx';
import { failureWords, shellWords } from './words.ts';

/** The whole screen: a set-up by itself, or one of the five places over the bar. */
export const App = () => {
  const [place = 'bench', ...rest] = route.value;
  if (place === 'set-up' && rest[0])
    return (
      <>
        <FailureNote />
        <SetUp runId={rest[0]} />
      </>
    );
  return (
    <>
      {logId.value === DEMO_LOG && <DemoNote />}
      <UpdateNote />
      <FailureNote />
      <Place name={place} rest={rest} />
      <PlacesBar place={place} />
    </>
  );
};

/** Bench is in the first load; the other places come when they are first asked for. */
const Place = ({ name, rest }: { name: string; rest: readonly string[] }) => {
  switch (name) {
    case 'boxes':
      return <Later key={name} load={() => import('../boxes/boxes.tsx')} props={{ rest }} />;
    case 'woods':
      return <Later key={name} load={() => import('../woods/woods.tsx')} props={{ rest }} />;
    case 'findings':
      return <Later key={name} load={() => import('../findings/findings.tsx')} props={{ rest }} />;
    case 'shop':
      return <Later key={name} load={() => import('../shop/shop.tsx')} props={{ rest }} />;
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

const FailureNote = () =>
  failure.value && (
    <div class="failure" role="alert">
      <p>{failureWords[failure.value]}</p>
      <button
        type="button"
        onClick={() => {
          failure.value = null;
        }}
      >
        {shellWords.dismiss}
      </button>
    </div>
  );
