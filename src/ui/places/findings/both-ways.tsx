import { useSignal } from '@preact/signals';
import { allBothWays, type BothWaysOnHand, changeBothWays } from '../../../app/both-ways.ts';
import type { Found } from '../../../app/findings.ts';
import { logId } from '../../../app/session.ts';
import { useLive } from '../../parts/use-live.ts';
import { Later } from '../../shell/later.tsx';
import { bothWaysWords as words } from '../../text/both-ways-words.ts';

const isFull = ({ plan }: BothWaysOnHand): boolean => plan.boxes.length >= plan.lots.length;

/** The trial under way or the way to begin one, and what earlier ones said. */
export const BothWays = ({ found }: { found: Found }) => {
  const trials = useLive(allBothWays, ['both-ways', 'log'], logId.value).value;
  const planning = useSignal(false);
  const open = trials?.find((trial) => !trial.plan.givenUp);
  const earlier = trials?.filter((trial) => trial !== open && isFull(trial)) ?? [];
  return (
    <section>
      <h2>{words.title}</h2>
      <p class="soft">{words.about}</p>
      {open && <UnderWay trial={open} found={found} />}
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
        <Later key="begin" load={() => import('./both-ways-begin.tsx')} props={found} />
      )}
      {earlier.length > 0 && (
        <>
          <h3>{words.earlier}</h3>
          <ul>
            {earlier.map(({ id, plan }) => (
              <li key={id}>
                “{plan.sentence}” {words.standing(found.trials[id])}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
};

const UnderWay = ({ trial, found }: { trial: BothWaysOnHand; found: Found }) => {
  const { id, plan } = trial;
  return (
    <>
      <p>
        <b>{words.underWay(plan.sentence, plan.boxes.length, plan.lots.length)}</b>
      </p>
      <p>{words.standing(found.trials[id])}</p>
      {!isFull(trial) && <p class="soft">{words.asked}</p>}
      <button type="button" onClick={() => changeBothWays(id, (now) => ({ ...now, givenUp: true }))}>
        {isFull(trial) ? words.putAway : words.giveUp}
      </button>
    </>
  );
};
