import type { StepLink } from '../../domain/findings/answers/step-links.ts';
import { DifferenceInterval } from '../drawings/difference-interval.tsx';
import { LinkNumbers } from './link-numbers.tsx';
import { becauseWords, linkSentence, linkWord, linkWords as words } from './link-words.ts';
import type { NameOf } from './step-name.ts';

interface Props {
  readonly link: StepLink;
  readonly nameOf: NameOf;
  /** Size of the log at which the words may change next. */
  readonly next: number;
}

/** A step that shows a link: its sentence, its picture, what mechanics says, what would settle it. */
export const Link = ({ link, nameOf, next }: Props) => {
  const { wording, howManyMore, explains } = link;
  return (
    <article class="link">
      <h3>{nameOf(link.step)}</h3>
      <p>
        <b>{linkWord[wording.word]}.</b> {linkSentence(link)}{' '}
        {wording.word === 'the-other-way' ? words.otherWay : words.together}
      </p>
      <Picture link={link} />
      <Because link={link} nameOf={nameOf} />
      <p class="soft">{words.explains(explains)}</p>
      {howManyMore && wording.word === 'possible' && <p class="soft">{words.howMany(howManyMore, next)}</p>}
      <details>
        <summary>{words.numbers}</summary>
        <LinkNumbers link={link} />
      </details>
    </article>
  );
};

/** A step without a clear link: what it can show as, and the rest one tap away. */
export const QuietLink = ({ link, nameOf, next }: Props) => {
  const { table, howManyMore, explains } = link;
  const { a, b, c, d } = table;
  return (
    <article class="link">
      <h4>{nameOf(link.step)}</h4>
      <p class="soft">
        {words.missedIn(a + b, a + b + c + d)} {words.explains(explains)}
      </p>
      <details>
        <summary>{words.numbers}</summary>
        <p>{linkSentence(link)}</p>
        <Picture link={link} />
        <Because link={link} nameOf={nameOf} />
        {howManyMore && <p class="soft">{words.howMany(howManyMore, next)}</p>}
        <LinkNumbers link={link} />
      </details>
    </article>
  );
};

const Picture = ({ link: { difference } }: { link: StepLink }) =>
  difference && (
    <DifferenceInterval
      low={100 * difference.low}
      high={100 * difference.high}
      estimate={100 * difference.value}
      label={words.difference(difference.value, difference.low, difference.high)}
      fewer={words.fewer}
      more={words.more}
    />
  );

const Because = ({ link, nameOf }: Pick<Props, 'link' | 'nameOf'>) => {
  const because = becauseWords(link.wording, link, nameOf);
  return because && <p class="soft">{because}</p>;
};
