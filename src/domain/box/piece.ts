import type { Part } from '../setup/events.ts';
import type { BoreReading, Box, Cut, InSequence, TenonReading } from './records.ts';
import { inSequence } from './sequence.ts';

/** Recess or tenon as it was turned once: what was read of it, and what was cut into it. */
interface Piece<R> {
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
  const readings = inSequence((part === 'recess' ? box.bore : box.tenon) as readonly ReadingOf[P][]);
  const cuts = inSequence(box.cuts.filter((cut) => cut.part === part));
  const plain = readings.filter(({ overCrests }) => !overCrests);
  let [since, end] = [0, Number.POSITIVE_INFINITY];
  const isIts = ({ seq }: InSequence): boolean => seq >= since && seq < end;
  for (const { seq } of plain) {
    end = seq;
    const isAnother = cuts.some(isIts) && [...plain, ...box.trials].some(isIts);
    if (isAnother && seq > until) break;
    if (isAnother) since = seq;
    end = Number.POSITIVE_INFINITY;
  }
  return {
    since,
    readings: readings.filter(isIts),
    cuts: cuts.filter((cut) => isIts(cut) && cut.seq <= until),
  };
};
