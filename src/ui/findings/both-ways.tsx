import { useSignal } from '@preact/signals';
import { allBothWays, type BothWaysOnHand } from '../../app/both-ways.ts';
import type { Found } from '../../app/findings.ts';
import { keep } from '../../app/keep.ts';
import type { Standing } from '../../domain/experiment/both-ways-standing.ts';
import { measureOf } from '../../domain/experiment/trial-measure.ts';
import { useLive } from '../parts/use-live.ts';
import { Later } from '../shell/later.tsx';
import { BothWaysResult } from './both-ways-result.tsx';
import { bothWaysWords as words } from './both-ways-words.ts';

/** It has told what it can: at its end, or half way with a clear answer. */
const hasAnswered = (standing: Standing): boolean =>
  standing.look === 'end' || (standing.look === 'half' && standing.measured.clear);

/** The trial under way or the way to begin one, and what earlier ones said. */
export const BothWays = ({ found }: { found: Found }) => {
  const trials = useLive(allBothWays, ['both-ways']).value;
  const planning = useSignal(false);
  const open = trials?.find((trial) => !trial.plan.givenUp);
  const earlier = (trials ?? []).flatMap((trial) => {
    const standing = found.trials[trial.id];
    return trial !== open && standing && hasAnswered(standing) ? [{ trial, standing }] : [];
  });
  return (
    <section class="both-ways">
      <h2>{words.title}</h2>
      {!open && <p class="soft">{words.about}</p>}
      {open && <UnderWay trial={open} standing={found.trials[open.id]} />}
      {trials && !open && !planning.value && (
        <button
          type="button"
          onClick={() => {
            planning.value = true;
          }}
        >
          {words.plan}
        </button>
      )}
      {trials && !open && planning.value && (
        <Later key="begin" load={() => import('./both-ways-begin.tsx')} props={{ power: found.power }} />
      )}
      {earlier.length > 0 && (
        <>
          <h3>{words.earlier}</h3>
          {earlier.map(({ trial: { id, plan }, standing }) => (
            <article key={id}>
              <h4>“{plan.sentence}”</h4>
              <p class="soft">{words.measures(measureOf(plan))}</p>
              {standing.look !== 'none-yet' && <BothWaysResult look={standing} measure={measureOf(plan)} />}
            </article>
          ))}
        </>
      )}
    </section>
  );
};

const UnderWay = ({ trial, standing }: { trial: BothWaysOnHand; standing: Standing | undefined }) => {
  const { id, plan } = trial;
  const waits = standing && words.waits(standing);
  return (
    <>
      <h3>“{plan.sentence}”</h3>
      <p class="soft">{words.measures(measureOf(plan))}</p>
      <p>
        <b>{standing ? words.underWay(standing) : words.reading}</b>
      </p>
      {waits && <p>{waits}</p>}
      {standing && standing.look !== 'none-yet' && (
        <BothWaysResult look={standing} measure={measureOf(plan)} />
      )}
      {standing?.nextLook && <p class="soft">{words.asked}</p>}
      <button type="button" onClick={() => keep('both-ways', id, (now) => now && { ...now, givenUp: true })}>
        {!standing || !hasAnswered(standing)
          ? words.giveUp
          : standing.look === 'half'
            ? words.stopHere
            : words.putAway}
      </button>
    </>
  );
};
