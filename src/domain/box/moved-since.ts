import type { Part } from '../setup/events.ts';
import type { RunState } from '../setup/fold.ts';
import { movementsBetween } from '../setup/inherit.ts';
import type { Movement } from '../setup/procedure.ts';
import type { Box, Rig } from './records.ts';
import { thisPairSince } from './this-pair.ts';

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
  if (thisPairSince(box) > seq) return movementsBetween('recess-first', banjos ?? 1);
  return before.part === part ? ['chuck-off'] : movementsBetween(box.plan.route, banjos ?? 1);
};
