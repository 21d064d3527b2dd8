import type { RunState, TimelineEntry } from '../../../domain/setup/fold.ts';
import { Strip } from '../../set-up/strip.tsx';
import { boxesWords as words } from '../../text/boxes-words.ts';
import { spanWords } from '../../text/clock-words.ts';
import { momentWords } from '../../text/day-words.ts';
import { happeningWords, partName } from '../../text/set-up-words.ts';

/** One set-up looked back on: its teeth, its time, and every event, those taken back struck through. */
export const RunStory = ({ run }: { run: RunState }) => (
  <details class="run">
    <summary>
      {partName[run.part]}, {momentWords(run.startedAt)}, {words.spent(spanWords(run.total))}
    </summary>
    <Strip run={run} now={null} />
    <ol class="timeline">
      {run.timeline.map((entry) => (
        <li key={`${entry.event.n} ${entry.event.writer}`}>
          <Entry run={run} entry={entry} />
        </li>
      ))}
    </ol>
  </details>
);

const Entry = ({ run, entry: { event, undone, gap } }: { run: RunState; entry: TimelineEntry }) => {
  const said = happeningWords(
    event,
    (key) => run.steps.find((s) => s.step.key === key)?.step.sentence ?? key,
  );
  if (undone)
    return (
      <>
        <s>{said}</s> ({words.undone})
      </>
    );
  return (
    <>
      {said} {gap.max > 0 && <span class="soft">{spanWords(gap)}</span>}
    </>
  );
};
