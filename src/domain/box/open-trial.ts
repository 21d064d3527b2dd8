import type { Box, Trial } from './records.ts';
import { inSequence } from './sequence.ts';
import { newestTrial } from './this-pair.ts';

/** The trial whose advice is still to be followed: the newest, unless it was right or something was cut or turned since. */
export const openTrial = (box: Box): Trial | null => {
  const trial = newestTrial(box);
  return trial && !trial.right && !box.cuts.some(({ seq }) => seq > trial.seq) ? trial : null;
};

/** The trial that a box's page speaks of: the newest that was not right, whatever was made since; null when all were right. */
export const trialToExplain = ({ trials }: Pick<Box, 'trials'>): Trial | null =>
  inSequence(trials).findLast(({ right }) => !right) ?? null;
