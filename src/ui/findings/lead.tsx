import type { Findings } from '../../domain/findings/answers/findings.ts';
import { linkWord } from './link-words.ts';
import type { NameOf } from './step-name.ts';
import { findingsWords as words } from './words.ts';

/** The first thing to read: what to change tomorrow, or that there is nothing to. */
export const Lead = ({ found, nameOf }: { found: Findings; nameOf: NameOf }) => {
  const { links, firstTries, rows, leftOut } = found;
  const { right, eased, unknown } = firstTries;
  const worth = links.links.filter(({ wording: { word } }) => word === 'strong' || word === 'possible');
  return (
    <section class="lead">
      <h2>{words.tomorrow}</h2>
      {worth.map(({ step, wording }) => (
        <p key={step} class="say">
          {words.change(nameOf(step), linkWord[wording.word])}
        </p>
      ))}
      {worth.length > 0 ? (
        <p>{words.together}</p>
      ) : links.wordsAt === 0 ? (
        <p class="say">{words.nothingFew(links.wordsNext)}</p>
      ) : (
        <>
          <p class="say">{words.nothing}</p>
          <p>{words.nothingAbout}</p>
        </>
      )}
      <p class="soft">
        {words.rightFirst(right, eased, rows - unknown)}{' '}
        {words.leftOut({ ...leftOut, [words.untried]: unknown })}
      </p>
    </section>
  );
};
