import type { RunState } from '../../domain/setup/fold.ts';
import { hrefTo } from '../shell/route.ts';
import { SetUpHeader } from './set-up-header.tsx';
import { StatusTooth } from './status-tooth.tsx';
import { Strip } from './strip.tsx';
import { statusWord, setUpWords as words } from './words.ts';

/** No cut: which hold points are in the way; a tap goes back to one. */
export const Withheld = ({ run, onChoose }: { run: RunState; onChoose: (key: string) => void }) => (
  <main class="set-up withheld">
    <SetUpHeader run={run} />
    <Strip run={run} now={null} />
    <h1 class="stop">{words.dontSwitchOn}</h1>
    <p>{words.notYet(run.withheldBy.length)}</p>
    <ul class="list">
      {run.steps
        .filter(({ step }) => run.withheldBy.includes(step.key))
        .map(({ step, status }) => (
          <li key={step.key}>
            <button type="button" onClick={() => onChoose(step.key)}>
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
