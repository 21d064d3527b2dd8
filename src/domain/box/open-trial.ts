import type { Box, Trial } from './records.ts';
import { newestTrial } from './this-pair.ts';

/** The trial whose advice is still to be followed: the newest, unless it was right or something was cut or turned since. */
export const openTrial = (box: Box): Trial | null => {
  const trial = newestTrial(box);
  return trial && !trial.right && !box.cuts.some(({ seq }) => seq > trial.seq) ? trial : null;
};
