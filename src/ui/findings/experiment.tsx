import { useSignal } from '@preact/signals';
import { allExperiments, type ExperimentOnHand } from '../../app/experiments.ts';
import type { Found } from '../../app/findings.ts';
import { keep } from '../../app/keep.ts';
import { measureOf } from '../../domain/experiment/experiment-measure.ts';
import type { ExperimentStatus } from '../../domain/experiment/experiment-status.ts';
import { useLive } from '../parts/use-live.ts';
import { Lazy } from '../shell/lazy.tsx';
import { ExperimentResult } from './experiment-result.tsx';
import { experimentWords as words } from './experiment-words.ts';

/** Whether no better answer can come: at its end, or halfway with a clear answer. */
const hasAnswered = (status: ExperimentStatus): boolean =>
  status.look === 'end' || (status.look === 'half' && status.measured.clear);

/** The open experiment or a way to begin one, and the results of earlier ones. */
export const Experiment = ({ found }: { found: Found }) => {
  const experiments = useLive(allExperiments, ['experiment']).value;
  const planning = useSignal(false);
  const open = experiments?.find((experiment) => !experiment.plan.givenUp);
  const earlier = (experiments ?? []).flatMap((experiment) => {
    const status = found.experiments[experiment.id];
    return experiment !== open && status && hasAnswered(status) ? [{ experiment, status }] : [];
  });
  return (
    <section class="experiment">
      <h2>{words.title}</h2>
      {!open && <p class="soft">{words.about}</p>}
      {open && <UnderWay experiment={open} status={found.experiments[open.id]} />}
      {experiments && !open && !planning.value && (
        <button
          type="button"
          onClick={() => {
            planning.value = true;
          }}
        >
          {words.plan}
        </button>
      )}
      {experiments && !open && planning.value && (
        <Lazy key="begin" load={() => import('./begin-experiment.tsx')} props={{ power: found.power }} />
      )}
      {earlier.length > 0 && (
        <>
          <h3>{words.earlier}</h3>
          {earlier.map(({ experiment: { id, plan }, status }) => (
            <article key={id}>
              <h4>“{plan.sentence}”</h4>
              <p class="soft">{words.measures(measureOf(plan))}</p>
              {status.look !== 'none-yet' && <ExperimentResult look={status} measure={measureOf(plan)} />}
            </article>
          ))}
        </>
      )}
    </section>
  );
};

const UnderWay = ({
  experiment,
  status,
}: {
  experiment: ExperimentOnHand;
  status: ExperimentStatus | undefined;
}) => {
  const { id, plan } = experiment;
  const waits = status && words.waits(status);
  return (
    <>
      <h3>“{plan.sentence}”</h3>
      <p class="soft">{words.measures(measureOf(plan))}</p>
      <p>
        <b>{status ? words.underWay(status) : words.reading}</b>
      </p>
      {waits && <p>{waits}</p>}
      {status && status.look !== 'none-yet' && <ExperimentResult look={status} measure={measureOf(plan)} />}
      {status?.nextLook && <p class="soft">{words.asked}</p>}
      <button type="button" onClick={() => keep('experiment', id, (now) => now && { ...now, givenUp: true })}>
        {!status || !hasAnswered(status)
          ? words.giveUp
          : status.look === 'half'
            ? words.stopHere
            : words.putAway}
      </button>
    </>
  );
};
