import './bench.css';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { ask } from '../../app/ask.ts';
import { currentWithRuns } from '../../app/current-box.ts';
import { nextThing, STAGES, type Stage, stageStates } from '../../domain/box/stages.ts';
import { ToothStrip } from '../drawings/tooth-strip.tsx';
import { useLive } from '../parts/use-live.ts';
import { StatusTooth } from '../set-up/status-tooth.tsx';
import { Lazy } from '../shell/lazy.tsx';
import { goInstead, hrefTo, route } from '../shell/route.ts';
import { EmptyBench } from './empty-bench.tsx';
import { SetUpStage } from './set-up-stage.tsx';
import type { StageProps } from './stage-props.ts';
import { stageName, stageStateWord, benchWords as words } from './words.ts';

type StageScreen = ComponentType<StageProps & { readonly stage: Stage }>;

const LAZY: Readonly<Partial<Record<Stage, () => Promise<{ readonly default: StageScreen }>>>> = {
  plan: () => import('./plan/stage.tsx'),
  bore: () => import('./bore/stage.tsx'),
  'cut-recess': () => import('./cut/stage.tsx'),
  tenon: () => import('./tenon/stage.tsx'),
  'cut-tenon': () => import('./cut/stage.tsx'),
  trial: () => import('./trial/stage.tsx'),
  seat: () => import('./seat/stage.tsx'),
  close: () => import('./close/stage.tsx'),
};

/**
 * The box on the lathe and its next thing. #/bench goes to the next stage and stays there, so that the answer to what was
 * just entered can be read; #/bench/STAGE looks at one stage.
 */
export const Bench = ({ rest }: { rest: readonly string[] }) => {
  const [wanted] = rest;
  const shown = useLive(currentWithRuns, ['box', 'events']).value;

  useEffect(() => {
    if (wanted !== undefined) return;
    // Read afresh: what is shown may be from before the tap that led here.
    return ask(currentWithRuns, (now) => {
      const next = now && nextThing(now.onHand.box, now.runs);
      if (next && route.value.length === 1 && route.value[0] === 'bench') goInstead('bench', next);
    });
  }, [wanted, shown]);

  if (shown === undefined) return <main class="page" aria-busy="true" />;
  if (wanted === 'new') return <Lazy key="new" load={() => import('./plan/new-box.tsx')} props={{}} />;
  if (!shown) return <EmptyBench />;
  if (wanted === 'joint')
    return <Lazy key="joint" load={() => import('../joint/joint.tsx')} props={{ id: null }} />;

  const { onHand, runs } = shown;
  const stage = STAGES.find((s) => s === wanted) ?? nextThing(onHand.box, runs) ?? 'close';
  return (
    <main class="page bench">
      <header>
        <h1>{words.boxTitle(onHand.box.number, onHand.box.name)}</h1>
        <a href="#/bench/new">{words.another}</a>
      </header>
      <StageStrip onHand={onHand} runs={runs} shown={stage} />
      {stage === 'set-up-recess' || stage === 'set-up-tenon' ? (
        <SetUpStage onHand={onHand} runs={runs} part={stage === 'set-up-recess' ? 'recess' : 'tenon'} />
      ) : (
        <LazyStage stage={stage} onHand={onHand} runs={runs} />
      )}
    </main>
  );
};

const LazyStage = ({ stage, onHand, runs }: StageProps & { stage: Stage }) => {
  const load = LAZY[stage];
  return load ? <Lazy key={stage} load={load} props={{ onHand, runs, stage }} /> : null;
};

const TOOTH = { done: 'passed', now: 'to-come', 'passed-over': 'skipped', 'to-come': 'to-come' } as const;

/** The box as a thread, a tooth a stage; its heading opens the list of stages. */
const StageStrip = ({ onHand, runs, shown }: StageProps & { shown: Stage }) => {
  const stages = stageStates(onHand.box, runs);
  const at = stages.findIndex(({ stage }) => stage === shown);
  return (
    <div class="stages">
      <ToothStrip
        label={words.stageOf(at + 1, stages.length)}
        teeth={stages.map(({ stage, state }) => ({
          key: stage,
          hold: false,
          state: stage === shown ? 'now' : TOOTH[state],
        }))}
      />
      <details key={shown}>
        <summary>
          <h2>{stageName[shown]}</h2>
          <span class="soft">{words.stageOf(at + 1, stages.length)}</span>
        </summary>
        <ul>
          {stages.map(({ stage, state }) => (
            <li key={stage}>
              <a href={hrefTo('bench', stage)} aria-current={stage === shown ? 'step' : undefined}>
                <StatusTooth status={TOOTH[state]} />
                {stageName[stage]} <span class="soft">{stageStateWord[state]}</span>
              </a>
            </li>
          ))}
        </ul>
      </details>
    </div>
  );
};
