import type { Findings } from '../../../domain/findings/findings.ts';
import { linkWord, findingsWords as words } from '../../text/findings-words.ts';
import { useStepNames } from './use-step-names.ts';

/** The first thing to read: what to change tomorrow, or that there is nothing to. */
export const Lead = ({ found: { table, links } }: { found: Findings }) => {
  const nameOf = useStepNames();
  const tried = table.rows.filter((row) => row.firstTry !== 'unknown');
  const count = (what: string) => tried.filter((row) => row.firstTry === what).length;
  const worth = links.links.filter(({ verdict: { word } }) => word === 'strong' || word === 'possible');
  return (
    <section class="lead">
      <h2>{words.tomorrow}</h2>
      {worth.length === 0 ? (
        <p class="say">{links.wordsAt === 0 ? words.nothingFew(links.wordsNext) : words.nothing}</p>
      ) : (
        worth.map(({ step, verdict }) => (
          <p key={step} class="say">
            {words.change(nameOf(step), linkWord[verdict.word])}
          </p>
        ))
      )}
      {worth.length > 0 && <p>{words.together}</p>}
      <p class="soft">{words.rightFirst(count('right'), count('eased'), tried.length)}</p>
    </section>
  );
};
