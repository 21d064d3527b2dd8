import './set-up.css';
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { eventsElsewhere } from '../../app/changes.ts';
import { leaveRun, openRun, run } from '../../app/set-up-run.ts';
import { Lazy } from '../shell/lazy.tsx';
import { hrefTo } from '../shell/route.ts';
import { Finish } from './finish.tsx';
import { Moved } from './moved/moved.tsx';
import { Paused } from './paused.tsx';
import { StepScreen } from './step/step.tsx';
import { useAtTheLathe } from './use-at-the-lathe.ts';
import { setUpWords as words } from './words.ts';

/** What lies over the step in hand. */
type Over = 'moved' | 'all-steps' | null;

/** One set-up, one thing at a time: a step, what moved, the whole list, a pause, or the end. */
export const SetUp = ({ runId }: { runId: string }) => {
  const loaded = useSignal(false);
  const over = useSignal<Over>(null);
  /** A step the user went back to; null follows the order. */
  const chosen = useSignal<string | null>(null);

  const waking = useAtTheLathe();

  useEffect(() => {
    loaded.value = false;
    chosen.value = null;
    over.value = null;
    let isShown = true;
    openRun(runId).then(() => {
      loaded.value = isShown;
    });
    return () => {
      isShown = false;
      leaveRun();
    };
  }, [runId]);

  // What another tab ticks shows here too.
  const writes = eventsElsewhere.value;
  useEffect(() => {
    if (writes > 0) openRun(runId);
  }, [writes]);

  const state = run.value;
  if (!state || state.runId !== runId)
    return loaded.value ? (
      <main class="set-up">
        <h1>{words.noSuchRun}</h1>
        <a class="act" href={hrefTo('bench')}>
          {words.putAway}
        </a>
      </main>
    ) : (
      <main class="set-up" aria-busy="true" />
    );

  const close = () => {
    over.value = null;
  };
  const choose = (key: string | null) => {
    chosen.value = key;
    close();
  };
  const inHand = chosen.value ?? state.now;

  const askWhatMoved = () => {
    over.value = 'moved';
  };
  const finish = <Finish run={state} onChoose={choose} onMoved={askWhatMoved} />;

  if (state.contested || state.readOnly || state.closed) return finish;
  if (over.value === 'moved') return <Moved onClose={() => choose(null)} />;
  if (over.value === 'all-steps')
    return (
      <Lazy
        key="all-steps"
        load={() => import('./all-steps.tsx')}
        props={{ run: state, waking: waking.value, onChoose: choose, onClose: close }}
      />
    );
  if (state.paused) return <Paused run={state} />;
  if (inHand === null) return finish;
  return (
    <StepScreen
      run={state}
      stepKey={inHand}
      chosen={chosen}
      onMoved={askWhatMoved}
      onAllSteps={() => {
        over.value = 'all-steps';
      }}
    />
  );
};
