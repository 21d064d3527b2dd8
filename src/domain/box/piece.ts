import type { Part } from '../setup/events.ts';
import type { BoreReading, Box, Cut, InSequence, TenonReading } from './records.ts';
import { inSequence } from './sequence.ts';

/** Recess or tenon as it was turned once: what was read of it, and what was cut into it. */
export interface Piece<R> {
  /** Place in the sequence from which it counts; 0 for the first that was turned. */
  readonly since: number;
  readonly readings: readonly R[];
  /** Its passes, oldest first. */
  readonly cuts: readonly Cut[];
}

interface ReadingOf {
  readonly recess: BoreReading;
  readonly tenon: TenonReading;
}

type Entries = Pick<Box, 'bore' | 'tenon' | 'cuts' | 'trials'>;

/**
 * The piece that was there at a place in the sequence, now when none is given. A piece that was measured plain, or tried, and then
 * cut has its thread: a plain reading after that is of one turned again, whose passes begin anew. A plain reading that comes late to
 * a piece never measured before is its own. Of a piece all readings count, whenever they were taken; of its cuts those up to there.
 */
export const pieceAt = <P extends Part>(
  box: Entries,
  part: P,
  until = Number.POSITIVE_INFINITY,
): Piece<ReadingOf[P]> => {
  const readings = (part === 'recess' ? box.bore : box.tenon) as readonly ReadingOf[P][];
  const cuts = box.cuts.filter((cut) => cut.part === part);
  // At equal places: read, then cut, then tried.
  const entries = inSequence<Entry<ReadingOf[P]>>([
    ...readings.map((reading) => ({ ...entryOf(reading, 1), reading })),
    ...cuts.map((cut) => ({ ...entryOf(cut, 2), cut })),
    ...box.trials.map((trial) => entryOf(trial, 3)),
  ]);
  let piece = begun<ReadingOf[P]>(0);
  let found = piece;
  for (const { seq, reading, cut } of entries) {
    if (cut) {
      piece.isCut = true;
      if (seq <= until) piece.cuts.push(cut);
    } else if (reading) {
      const isPlain = !reading.overCrests;
      if (isPlain && piece.isCut && piece.isKnown) {
        piece = begun(seq);
        if (seq <= until) found = piece;
      }
      piece.isKnown ||= isPlain;
      piece.readings.push(reading);
    } else piece.isKnown ||= piece.isCut;
  }
  return found;
};

/** Whether a plain reading taken now would be of a piece turned again. */
export const isThreaded = (box: Entries, part: Part): boolean => {
  const { readings, cuts } = pieceAt(box, part);
  const [first] = cuts;
  const isTried = first !== undefined && box.trials.some(({ seq }) => seq >= first.seq);
  return isTried || (first !== undefined && readings.some(({ overCrests }) => !overCrests));
};

/** A reading, a cut, or (neither) a trial. */
interface Entry<R> extends InSequence {
  readonly id: string;
  readonly reading?: R;
  readonly cut?: Cut;
}

const entryOf = ({ id, seq }: InSequence & { readonly id: string }, kind: number) => ({
  id: `${kind} ${id}`,
  seq,
});

const begun = <R>(since: number) => ({
  since,
  readings: [] as R[],
  cuts: [] as Cut[],
  isCut: false,
  /** Measured plain, or tried. */
  isKnown: false,
});
