import { useSignal } from '@preact/signals';
import type { BoxOnHand } from '../../../app/boxes.ts';
import { settings } from '../../../app/session.ts';
import { calculate } from '../../../domain/box/calculate.ts';
import { adviceOn, knownJoint } from '../../../domain/box/known-joint.ts';
import type { Trial } from '../../../domain/box/records.ts';
import { refusalWords } from '../../words/refusal.ts';
import { useGiven } from '../cut/use-given.ts';
import { AdviceCauses } from './advice-causes.tsx';
import { AdviceMove } from './advice-move.tsx';
import { adviceWords as words } from './advice-words.ts';

/** What is most likely wrong, and the next move in the order of the bench, one at a time. */
export const Advice = ({ onHand, trial }: { onHand: BoxOnHand; trial: Trial }) => {
  const given = useGiven(onHand);
  const at = useSignal(0);
  const { unit } = settings.value;
  if (!given) return <div aria-busy="true" />;

  const calculated = calculate(onHand.box, given);
  if (!calculated.ok) return <p role="alert">{refusalWords(calculated.error, words.joint, unit)}</p>;
  const known = knownJoint(onHand.box, trial, calculated.value, unit);
  const advice = adviceOn(trial, known);
  if (!advice.ok) return <p role="alert">{refusalWords(advice.error, words.trial, unit)}</p>;

  const { causes, remedies } = advice.value;
  const remedy = remedies[at.value];
  const [first] = causes;
  return (
    <>
      {first ? (
        <AdviceMove
          remedy={remedy}
          at={at.value}
          of={remedies.length}
          before={advice.value.before}
          known={known}
          cause={first}
          felt={trial.endPlay !== null}
          onMove={(to) => {
            at.value = to;
          }}
        />
      ) : (
        <p>{words.nothingPoints}</p>
      )}
      <AdviceCauses advice={advice.value} />
      {known.pair === null && <p class="soft">{words.unknownJoint}</p>}
      <p class="soft">{words.assumes}</p>
    </>
  );
};
