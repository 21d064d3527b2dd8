import { settings } from '../../../app/session.ts';
import type { CutPiece, Pair } from '../../../domain/joint/fit.ts';
import type { FitState } from '../../../domain/joint/fit-target.ts';
import { HALF_ANGLE } from '../../../domain/joint/profile.ts';
import { type Amount, type Remedy, stateAfter } from '../../../domain/joint/remedies.ts';
import type { KnownJoint } from '../../../domain/joint/trial-evidence.ts';
import { type Millimetres, mm } from '../../../domain/units/brands.ts';
import { writeLength } from '../../../domain/units/write-quantity.ts';
import { JointSection } from '../../drawings/joint-section/joint-section.tsx';
import { adviceWords as words } from './advice-words.ts';

/** Turns of thread drawn. */
const TURNS = 2;

/** What a move will change: the fit in numbers, and the section now and after. */
export const AdviceChange = ({
  remedy,
  before,
  known,
  felt,
}: {
  remedy: Remedy;
  before: FitState;
  known: KnownJoint;
  /** The end play was measured, not calculated from sizes. */
  felt: boolean;
}) => {
  const { unit } = settings.value;
  const after = stateAfter(before, [remedy], known);
  const say = (play: Millimetres | null) =>
    play === null ? '' : play <= 0 ? words.binds : writeLength(play, unit);
  const cut = known.pair && pairAfter(known.pair, remedy);
  return (
    <section class="change" aria-label={words.changes}>
      {before.endPlay !== null && after.endPlay !== null && before.endPlay !== after.endPlay && (
        <p>{words.endPlay(say(before.endPlay), say(after.endPlay), felt)}</p>
      )}
      {known.pair && cut && (
        <div class="before-after">
          <figure>
            <Section pair={known.pair} label={words.sectionSays(words.now, say(before.endPlay))} />
            <figcaption>{words.now}</figcaption>
          </figure>
          <figure>
            <Section pair={cut} label={words.sectionSays(words.after, say(after.endPlay))} />
            <figcaption>{words.after}</figcaption>
          </figure>
        </div>
      )}
    </section>
  );
};

const Section = ({ pair, label }: { pair: Pair; label: string }) => (
  <JointSection
    threads={TURNS}
    pitch={pair.pitch}
    halfAngle={HALF_ANGLE}
    recess={pair.recess}
    tenon={pair.tenon}
    pose="centred"
    label={label}
  />
);

/** The pair once the move is made; null for a move that does not change the thread. */
const pairAfter = (pair: Pair, { remedy, amounts }: Remedy): Pair | null => {
  if (remedy !== 'deepen' && remedy !== 'ease-crests') return null;
  const byOn = (part: Amount['part']) => amounts.find((amount) => amount.part === part)?.by ?? 0;
  const change = remedy === 'deepen' ? deepened : eased;
  return {
    ...pair,
    recess: change(pair.recess, byOn('recess'), 1),
    tenon: change(pair.tenon, byOn('tenon'), -1),
  };
};

type Change = (piece: CutPiece, by: number, outward: 1 | -1) => CutPiece;

const deepened: Change = (piece, by) => ({ ...piece, depth: mm(piece.depth + by) });

/** A crest eased is a blank that was so much smaller, cut so much less deep. */
const eased: Change = (piece, by, outward) => ({
  ...piece,
  diameter: mm(piece.diameter + 2 * outward * by),
  depth: mm(piece.depth - by),
});
