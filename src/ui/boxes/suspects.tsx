import { suspectsOf } from '../../app/suspects-of.ts';
import type { Box } from '../../domain/box/records.ts';
import type { RunState } from '../../domain/setup/fold.ts';
import { useLive } from '../parts/use-live.ts';
import { suspectWords as words } from './suspect-words.ts';

/** How many are worth naming; the rest are noise. */
const NAMED = 4;

/** For a box that did not fit: what may be behind it, likeliest first. */
const Suspects = ({ box, runs }: { box: Box; runs: ReadonlyMap<string, RunState> }) => {
  const found = useLive(suspectsOf, ['rig'], box, runs).value;
  if (!found || found.length === 0) return null;
  const sentences = new Map(
    [...runs.values()].flatMap((run) => run.steps.map(({ step }) => [step.key, step.sentence] as const)),
  );
  return (
    <section>
      <h2>{words.title}</h2>
      <p class="soft">{words.about}</p>
      <ol>
        {found.slice(0, NAMED).map((suspect) => (
          <li key={suspect.cause}>
            <b>{words.name(suspect)}</b>, {words.chance(suspect.chance)}
            {suspect.clues.length > 0 && (
              <span class="soft">. {words.clues(suspect, (key) => sentences.get(key) ?? key)}</span>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
};

export default Suspects;
