import type { RunState } from '../../domain/setup/fold.ts';
import { StepDrawing } from '../drawings/step-drawing.tsx';
import { hrefTo } from '../shell/route.ts';
import { statusWord, setUpWords as words } from '../text/set-up-words.ts';
import { SetUpHeader } from './set-up-header.tsx';
import { StatusTooth } from './status-tooth.tsx';
import { Strip } from './strip.tsx';

/** The end of a set-up: ready for the cut, or "don't switch on" and what is in the way. */
export const Finish = ({ run, onChoose }: { run: RunState; onChoose?: (key: string) => void }) => {
  if (run.contested || run.readOnly || run.closed)
    return (
      <main class="set-up">
        <Strip run={run} now={null} />
        <h1>{run.contested ? words.contested : run.readOnly ? words.readOnly : words.closedRun}</h1>
        <div style={{ flex: 1 }} />
        <a class="act" href={hrefTo('bench')}>
          {words.putAway}
        </a>
      </main>
    );
  if (run.withheldBy.length > 0)
    return (
      <main class="set-up">
        <SetUpHeader run={run} />
        <Strip run={run} now={null} />
        <h1 class="stop">{words.dontSwitchOn}</h1>
        <p>{words.notYet(run.withheldBy.length)}</p>
        <ul class="list">
          {run.steps
            .filter(({ step }) => run.withheldBy.includes(step.key))
            .map(({ step, status }) => (
              <li key={step.key}>
                <button type="button" onClick={() => onChoose?.(step.key)}>
                  <StatusTooth status={status} />
                  <span>
                    {step.sentence} <span class="soft">{statusWord[status]}</span>
                  </span>
                </button>
              </li>
            ))}
        </ul>
        <a class="act" href={hrefTo('bench')}>
          {words.putAway}
        </a>
      </main>
    );
  return (
    <main class="set-up">
      <SetUpHeader run={run} />
      <Strip run={run} now={null} />
      <div class="drawing-slot">
        <StepDrawing of="power-on" />
      </div>
      <h1>{words.readyTitle}</h1>
      <p>{words.ready}</p>
      <p>{words.readyHands}</p>
      <div class="acts">
        <a class="act go" href={hrefTo('bench', `cut-${run.part}`)}>
          {words.toTheCut}
        </a>
      </div>
    </main>
  );
};
