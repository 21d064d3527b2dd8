import { pieceAt } from './piece.ts';
import type { Box, Trial } from './records.ts';
import { inSequence } from './sequence.ts';

/** From where in the sequence a trial or a seat is of the pieces that are there now: an older one was of a piece since turned again. */
export const ofThisPairSince = (box: Box): number =>
  Math.max(pieceAt(box, 'recess').since, pieceAt(box, 'tenon').since);

/** The newest trial of the two pieces that are there now. */
export const newestTrial = (box: Box): Trial | null => {
  const newest = inSequence(box.trials).at(-1);
  return newest && newest.seq > ofThisPairSince(box) ? newest : null;
};

/** The trial whose advice is still to be followed: the newest, unless it was right or something was cut or turned since. */
export const openTrial = (box: Box): Trial | null => {
  const trial = newestTrial(box);
  return trial && !trial.right && !box.cuts.some(({ seq }) => seq > trial.seq) ? trial : null;
};
