import type { JointAsked } from '../../app/joint-asked.ts';
import { settings } from '../../app/session.ts';
import type { JointSeen, KnownPair } from '../../domain/box/joint-under.ts';
import { BigFigure, figureOf } from '../bench/plan/big-answer.tsx';
import { amountWords } from '../bench/plan/words.ts';
import { usePicked } from '../parts/use-picked.ts';
import { goingOf, goingWords, jointWords as words } from './words.ts';

interface Props {
  readonly known: KnownPair;
  readonly asItIs: JointSeen;
  readonly asked: JointAsked;
}

/** The end play as the one number, and how the pair goes together. */
export const PlayNow = ({ known, asItIs, asked }: Props) => {
  const play = usePicked(asked.seen, playWords);
  const number = usePicked(play, (text) => figureOf(text).number);
  const unit = usePicked(play, (text) => figureOf(text).unit);
  const going = usePicked(asked.seen, (seen) => goingOf(seen, known)).value;
  return (
    <div class="play">
      <div class="big-answer">
        <p>{asked.isWhatIf.value ? words.whatIfPlay(playWords(asItIs)) : words.endPlay}</p>
        {/* Across the screen as it is; of a set size while it changes. */}
        <BigFigure number={number} unit={unit} signs={playWords(asItIs).length} />
      </div>
      <p class={`going ${going}`} role="status">
        {goingWords[going]}
      </p>
    </div>
  );
};

const playWords = ({ endPlay }: JointSeen): string =>
  endPlay > 0 ? amountWords(endPlay, settings.value.unit) : words.none;
