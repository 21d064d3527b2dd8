import { holds, type RunState } from '../setup/fold.ts';
import type { Movement } from '../setup/procedure.ts';

/** What the set-ups of a box say together. */
export interface SetUpLog {
  /** Steps missed in either piece: skipped, left failing, or resting on one that was. */
  readonly missed: readonly string[];
  /** Steps done wherever they were asked, and missed nowhere. */
  readonly done: readonly string[];
  /** What moved, in set-ups given up too. */
  readonly moved: readonly Movement[];
}

/** Over all set-ups of a box, hold points included; steps of set-ups that were given up count for nothing. */
export const setUpLog = (runs: Iterable<RunState>): SetUpLog => {
  const all = [...runs];
  const steps = all.filter((run) => run.closed !== 'abandoned').flatMap((run) => run.steps);
  const missed = new Set(
    steps
      .filter(({ status }) => status === 'skipped' || status === 'failed' || status === 'closed')
      .map(({ step }) => step.key),
  );
  const done = steps
    .filter(({ status }) => holds(status) && status !== 'not-needed')
    .map(({ step }) => step.key);
  return {
    missed: [...missed],
    done: [...new Set(done)].filter((key) => !missed.has(key)),
    moved: [...new Set(all.flatMap(movementsOf))],
  };
};

/** Every movement noted in a set-up and not undone, those noted after its close too. */
const movementsOf = (run: RunState): readonly Movement[] =>
  run.timeline.flatMap(({ event, undone }) =>
    !undone && event.kind === 'moved' && 'what' in event ? [event.what] : [],
  );
