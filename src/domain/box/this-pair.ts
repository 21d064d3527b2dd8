import { pieceAt } from './piece.ts';
import type { Box, InSequence, Seat, Trial } from './records.ts';
import { inSequence } from './sequence.ts';

/** From where in the sequence both pieces are those that are there now. */
export const thisPairSince = (box: Box): number =>
  Math.max(pieceAt(box, 'recess').since, pieceAt(box, 'tenon').since);

/** The newest of them that is of the present pair; an older one was of a piece since turned again. */
const newestOf = <T extends InSequence & { readonly id: string }>(
  box: Box,
  entries: readonly T[],
): T | null => inSequence(entries).findLast(({ seq }) => seq > thisPairSince(box)) ?? null;

export const newestTrial = (box: Box): Trial | null => newestOf(box, box.trials);

export const newestSeat = (box: Box): Seat | null => newestOf(box, box.seats);
