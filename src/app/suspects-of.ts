import type { Box } from '../domain/box/records.ts';
import { caseOf, shapeOf } from '../domain/findings/answers/case-of.ts';
import { type Suspect, suspects } from '../domain/findings/answers/suspects.ts';
import { clearanceTrialsOf } from '../domain/findings/rows/clearance-trials.ts';
import { usualClearance } from '../domain/joint/clearance.ts';
import type { RunState } from '../domain/setup/fold.ts';
import { rigById } from './rigs.ts';

/** What may be behind a joint that was not right, likeliest first; empty when it was. */
export const suspectsOf = async (
  box: Box,
  runs: ReadonlyMap<string, RunState>,
): Promise<readonly Suspect[]> => {
  const [first] = clearanceTrialsOf(box, await rigById(box.rigId));
  const usual = usualClearance(box.plan.pitch.mm);
  const found = caseOf(box, [...runs.values()], {
    ...shapeOf(box),
    ...(first && { clearance: first.clearance }),
    ...(first && usual.ok && { suits: usual.value.usual }),
  });
  return found ? suspects(found) : [];
};
