import { isKnown, type Verdict } from '../../domain/setup/events.ts';
import { foldRun, type RunState, type StepStatus, type TimelineEntry } from '../../domain/setup/fold.ts';
import { StatusTooth } from '../set-up/status-tooth.tsx';
import { Strip } from '../set-up/strip.tsx';
import { happeningWords, partName } from '../set-up/words.ts';
import { spanWords } from '../words/clock.ts';
import { momentWords } from '../words/day.ts';
import { boxesWords as words } from './words.ts';

/** One past set-up: its teeth, its time, and every event; undone events are struck through. */
export const RunStory = ({ run }: { run: RunState }) => (
  <details>
    <summary>
      {partName[run.part]}, {momentWords(run.startedAt)}, {words.spent(spanWords(run.total))}
    </summary>
    <Strip run={run} now={null} />
    <ol class="timeline">
      {run.timeline.map((entry, i) => (
        <li key={`${entry.event.n} ${entry.event.writer}`}>
          <Entry run={run} entry={entry} />
          {entry.event.kind === 'moved' && !entry.undone && <AfterMove run={run} upTo={i} />}
        </li>
      ))}
    </ol>
  </details>
);

const TOOTH: Readonly<Record<Verdict, StepStatus>> = { pass: 'passed', fail: 'failed', skip: 'skipped' };

const Entry = ({ run, entry: { event, undone, gap } }: { run: RunState; entry: TimelineEntry }) => {
  const said = happeningWords(
    event,
    (key) => run.steps.find((s) => s.step.key === key)?.step.sentence ?? key,
  );
  const verdict = isKnown(event) && event.kind === 'ticked' ? event.verdict : null;
  return (
    <>
      {verdict && !undone ? <StatusTooth status={TOOTH[verdict]} /> : <span />}
      {undone ? (
        <span>
          <s>{said}</s> ({words.undone})
        </span>
      ) : event.kind === 'moved' ? (
        <b>{said}</b>
      ) : (
        <span>{said}</span>
      )}
      <span class="soft">{!undone && gap.max > 0 && spanWords(gap)}</span>
    </>
  );
};

/** How the set-up stood once something had moved: which teeth lost their point. */
const AfterMove = ({ run, upTo }: { run: RunState; upTo: number }) => {
  const then = foldRun(run.timeline.slice(0, upTo + 1).map(({ event }) => event));
  if (!then) return null;
  const asked = then.steps.filter(({ status }) => status === 'reopened').length;
  return (
    <div class="after-move">
      <Strip run={then} now={null} />
      <span class="soft">{words.askedAgain(asked)}</span>
    </div>
  );
};
