import { countUp } from '../log/count-up.ts';
import type { Box, InSequence } from './records.ts';

type Entries = Pick<Box, 'bore' | 'tenon' | 'setUps' | 'cuts' | 'trials' | 'seats'>;

/** The place of the next entry of a box: one past the greatest in it. Asked inside the change that adds the entry. */
export const nextSeq = ({ bore, tenon, setUps, cuts, trials, seats }: Entries): number =>
  countUp(Math.max(0, ...[bore, tenon, setUps, cuts, trials, seats].flat().map(({ seq }) => seq)));

/** Entries in the order they were made; equal places (two devices) go by id, so that every device reads the same. */
export const inSequence = <T extends InSequence & { readonly id: string }>(entries: readonly T[]): T[] =>
  [...entries].sort((a, b) => a.seq - b.seq || (a.id < b.id ? -1 : 1));
