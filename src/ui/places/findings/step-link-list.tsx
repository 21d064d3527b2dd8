import type { StepLink, StepLinks } from '../../../domain/findings/step-links.ts';
import type { Word } from '../../../domain/findings/words.ts';
import { DifferenceInterval } from '../../drawings/difference-interval.tsx';
import { linkSentence, linkWord, findingsWords as words } from '../../text/findings-words.ts';
import { LinkNumbers } from './link-numbers.tsx';
import { useStepNames } from './use-step-names.ts';

const ORDER: readonly Word[] = ['strong', 'possible', 'the-other-way', 'too-few', 'no-sign'];

/** Every scored step, the plainest link first. */
export const StepLinkList = ({ links: { links, wordsAt, wordsNext } }: { links: StepLinks }) => {
  const nameOf = useStepNames();
  const sorted = [...links].sort(
    (a, b) =>
      ORDER.indexOf(a.verdict.word) - ORDER.indexOf(b.verdict.word) ||
      (b.difference?.value ?? -1) - (a.difference?.value ?? -1),
  );
  return (
    <section>
      <h2>{words.steps}</h2>
      <p class="soft">{words.stepsAbout}</p>
      {sorted.map((link) => (
        <Link key={link.step} link={link} name={nameOf(link.step)} />
      ))}
      <p class="soft">
        {words.wordsAt(wordsAt, wordsNext)} {words.luck}
      </p>
    </section>
  );
};

const Link = ({ link, name }: { link: StepLink; name: string }) => {
  const { verdict, difference, howManyMore } = link;
  const sentence = linkSentence(link);
  return (
    <article class="link">
      <h3>{name}</h3>
      <p>
        <b>{linkWord[verdict.word]}.</b> {sentence}
      </p>
      {difference && (
        <DifferenceInterval
          low={100 * difference.low}
          high={100 * difference.high}
          estimate={100 * difference.value}
          label={words.difference(difference.value, difference.low, difference.high)}
          fewer={words.fewer}
          more={words.more}
        />
      )}
      {verdict.word === 'no-sign' && <p>{words.noSign}</p>}
      {verdict.word === 'the-other-way' && <p>{words.otherWay}</p>}
      {verdict.because && verdict.word !== 'strong' && <p class="soft">{words.because(verdict.because)}</p>}
      {howManyMore && verdict.word !== 'strong' && <p class="soft">{words.howMany(howManyMore)}</p>}
      <LinkNumbers link={link} />
    </article>
  );
};
