import { askedOfBox } from '../../app/experiments.ts';
import { startSetUp } from '../../app/start-set-up.ts';
import { latestRun } from '../../domain/box/stages.ts';
import type { Part } from '../../domain/setup/events.ts';
import { useAct } from '../parts/use-act.ts';
import { useLive } from '../parts/use-live.ts';
import { Strip } from '../set-up/strip.tsx';
import { go, hrefTo } from '../shell/route.ts';
import { lotWords } from '../words/lot.ts';
import type { StageProps } from './stage-props.ts';
import { benchWords as words } from './words.ts';

/** Start a set-up, or go on with the one under way. */
export const SetUpStage = ({ onHand, runs, part }: StageProps & { part: Part }) => {
  const run = latestRun(onHand.box, part, runs);

  const asked = useLive(askedOfBox, ['experiment', 'box'], onHand.id).value;

  const { busy, act } = useAct(async (runId) => {
    const saved = await startSetUp(runId, onHand, part);
    if (saved) go('set-up', runId);
    return saved;
  });

  const open = run && run.closed === null;
  return (
    <>
      {asked && <p>{lotWords(asked.plan.sentence, asked.lot)}</p>}
      {run && <Strip run={run} now={run.now} />}
      <p>{open ? words.setUpUnderWay : run ? words.setUpDone : words.setUpFirst[part]}</p>
      {open && (
        <a class="act main" href={hrefTo('set-up', run.runId)}>
          {words.goOnWithSetUp}
        </a>
      )}
      <button type="button" class={open ? '' : 'main'} disabled={busy} onClick={() => act()}>
        {run ? words.startAnew : words.startSetUp}
      </button>
    </>
  );
};
