import type { Part } from '../setup/events.ts';
import type { RunState } from '../setup/fold.ts';
import { movementsBetween } from '../setup/inherit.ts';
import type { Movement } from '../setup/procedure.ts';
import { pieceAt } from './piece.ts';
import type { Box, Rig } from './records.ts';

type Runs = ReadonlyMap<string, RunState>;

/** The set-up whose settings may still hold: the newest of either piece that was not given up. */
export const latestBefore = (box: Box, runs: Runs): RunState | undefined =>
  box.setUps
    .map(({ runId }) => runs.get(runId))
    .findLast((run) => run !== undefined && run.closed !== 'abandoned');

/**
 * What the job itself moved since a set-up of the box, before the next one of `part`. A piece turned again since then had the jig off
 * the bed, whatever the route. Nothing is known of an unknown number of banjos, so the post counts as lifted out.
 */
export const movedSince = (
  before: RunState,
  box: Box,
  part: Part,
  { banjos }: Pick<Rig, 'banjos'>,
): readonly Movement[] => {
  const seq = box.setUps.find(({ runId }) => runId === before.runId)?.seq ?? 0;
  const isTurnedSince = (['recess', 'tenon'] as const).some((each) => pieceAt(box, each).since > seq);
  if (isTurnedSince) return movementsBetween('recess-first', banjos ?? 1);
  return before.part === part ? ['chuck-off'] : movementsBetween(box.plan.route, banjos ?? 1);
};
