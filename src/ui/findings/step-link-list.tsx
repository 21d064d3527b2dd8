import type { StepLink, StepLinks } from '../../domain/findings/answers/step-links.ts';
import type { Word } from '../../domain/findings/answers/wording.ts';
import { Link, QuietLink } from './link.tsx';
import { linkWord, linkWords } from './link-words.ts';
import type { NameOf } from './step-name.ts';
import { findingsWords as words } from './words.ts';

const TOLD: readonly Word[] = ['strong', 'possible', 'the-other-way'];

/** Every scored step: those that show a link first and in full, the quiet ones together. */
export const StepLinkList = ({ links, nameOf }: { links: StepLinks; nameOf: NameOf }) => {
  const { wordsAt, wordsNext } = links;
  const sorted = [...links.links].sort(
    (a, b) =>
      TOLD.indexOf(a.wording.word) - TOLD.indexOf(b.wording.word) ||
      (b.difference?.value ?? -1) - (a.difference?.value ?? -1),
  );
  const of = (word: Word) => sorted.filter(({ wording }) => wording.word === word);
  const given = { nameOf, next: wordsNext };
  return (
    <section>
      <h2>{words.steps}</h2>
      <p class="soft">{words.stepsAbout}</p>
      {TOLD.flatMap(of).map((link) => (
        <Link key={link.step} link={link} {...given} />
      ))}
      <Quiet links={of('too-few')} word="too-few" about={linkWords.tooFewAbout} {...given} />
      <Quiet links={of('no-sign')} word="no-sign" about={linkWords.noSignAbout} {...given} />
      <p class="soft">
        {words.wordsAt(wordsAt, wordsNext)} {words.luck}
      </p>
    </section>
  );
};

interface QuietProps {
  readonly links: readonly StepLink[];
  readonly word: Word;
  readonly about: string;
  readonly nameOf: NameOf;
  readonly next: number;
}

const Quiet = ({ links, word, about, ...given }: QuietProps) =>
  links.length === 0 ? null : (
    <>
      <h3 class="group">{linkWord[word]}</h3>
      <p>{about}</p>
      {links.map((link) => (
        <QuietLink key={link.step} link={link} {...given} />
      ))}
    </>
  );
