import type { Box } from '../domain/box/records.ts';
import { caseOf } from '../domain/findings/answers/case-of.ts';
import { type Suspect, suspects } from '../domain/findings/answers/suspects.ts';
import type { RunState } from '../domain/setup/fold.ts';
import { givenFor } from './calculated.ts';

/** What may be behind a joint that was not right, likeliest first; empty when it was. */
export const suspectsOf = async (
  box: Box,
  runs: ReadonlyMap<string, RunState>,
): Promise<readonly Suspect[]> => {
  const found = caseOf(box, [...runs.values()], await givenFor(box));
  return found ? suspects(found) : [];
};
