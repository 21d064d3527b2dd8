import type { Box } from '../../box/records.ts';
import { holds, type RunState } from '../../setup/fold.ts';
import type { Movement } from '../../setup/procedure.ts';
import { symptomsOf } from '../rows/rows-from-log.ts';
import type { Case } from './suspects.ts';

/** What a joint's numbers said at its first trial that was not right, mm; left out where nothing was measured. */
type Measured = Case['measured'];

/**
 * One box as a case for the suspects: its first trial that was not right, the steps of its set-ups (missed in either part
 * counts as missed; hold points included, for a box is not a statistic), and what moved. Null when every trial was right.
 */
export const caseOf = (box: Box, runs: readonly RunState[], measured: Measured): Case | null => {
  const trial = box.trials.find((each) => !each.right);
  if (!trial) return null;
  const states = runs.filter((run) => run.closed !== 'abandoned').flatMap((run) => run.steps);
  const missed = new Set(
    states
      .filter(({ status }) => status === 'skipped' || status === 'failed' || status === 'closed')
      .map(({ step }) => step.key),
  );
  const done = states
    .filter(({ status }) => holds(status) && status !== 'not-needed')
    .map(({ step }) => step.key);
  return {
    symptoms: symptomsOf(trial),
    marks: trial.marks,
    missed: [...missed],
    done: [...new Set(done)].filter((key) => !missed.has(key)),
    moved: [...new Set(runs.flatMap(movementsOf))],
    measured,
  };
};

const movementsOf = (run: RunState): readonly Movement[] =>
  run.timeline.flatMap(({ event, undone }) =>
    !undone && event.kind === 'moved' && 'what' in event ? [event.what] : [],
  );

/** Taper and ovality of the bore as measured: the mouth less the relief, along less across, mm. */
export const shapeOf = (box: Box): Measured => {
  const at = (where: 'mouth' | 'relief') => box.bore.find((reading) => reading.where === where)?.along.mm;
  const [mouth, relief] = [at('mouth'), at('relief')];
  const both = box.bore.find((reading) => reading.across !== null);
  return {
    ...(mouth !== undefined && relief !== undefined && { taper: mouth - relief }),
    ...(both?.across && { oval: both.along.mm - both.across.mm }),
  };
};
