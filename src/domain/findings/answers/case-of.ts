import type { Given } from '../../box/given.ts';
import { measuredBore } from '../../box/measured.ts';
import { pairAsCut } from '../../box/pair.ts';
import { pieceAt } from '../../box/piece.ts';
import type { Box, Trial } from '../../box/records.ts';
import { inSequence } from '../../box/sequence.ts';
import { setUpLog } from '../../box/set-up-log.ts';
import { usualClearance } from '../../joint/clearance.ts';
import { fitOf } from '../../joint/fit.ts';
import type { RunState } from '../../setup/fold.ts';
import { symptomsOf } from '../rows/rows-from-log.ts';
import type { Case } from './suspects.ts';

/** What a joint's numbers said at its first trial that was not right, mm; left out where nothing was measured. */
type Measured = Case['measured'];

/**
 * One box as a case for the suspects: its first trial that was not right, the steps of its set-ups (missed in either part
 * counts as missed; hold points included, for a box is not a statistic), and what moved. Null when every trial was right.
 */
export const caseOf = (
  box: Box,
  runs: readonly RunState[],
  given: Pick<Given, 'rig' | 'caliper'>,
): Case | null => {
  const trial = inSequence(box.trials).find((each) => !each.right);
  if (!trial) return null;
  return {
    symptoms: symptomsOf(trial),
    marks: trial.marks,
    ...setUpLog(runs),
    measured: measuredAt(box, trial, given),
  };
};

/** What was measured of the joint at a trial, and the clearance that most often suits its pitch, mm. */
const measuredAt = (box: Box, { seq }: Trial, given: Pick<Given, 'rig' | 'caliper'>): Measured => {
  const bore = measuredBore(pieceAt(box, 'recess', seq).readings, given.caliper);
  const { taper, outOfRound } = (bore.ok && bore.value) || { taper: null, outOfRound: null };
  const pair = pairAsCut(box, given, seq);
  const fit = pair && fitOf(pair);
  const suits = usualClearance(box.plan.pitch.mm);
  return {
    ...(fit?.ok && { clearance: fit.value.clearance }),
    ...(suits.ok && { suits: suits.value.usual }),
    ...(taper !== null && { taper }),
    ...(outOfRound !== null && { oval: outOfRound }),
  };
};
