import { useEffect } from 'preact/hooks';
import { askedOf } from '../../../app/both-ways.ts';
import { boxById } from '../../../app/boxes.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { useLive } from '../../parts/use-live.ts';
import { lotAtStep } from '../../words/lot.ts';
import { SlipNote } from './slip-note.tsx';

interface Props {
  readonly run: RunState;
  readonly stepKey: string;
  /** Hears which step the lot leaves out, so that no tap for several steps passes it. */
  readonly onLeftOut: (step: string | null) => void;
}

/** What a step says beside its sentence: what the lot of a trial asks of this box; how far the old groove may be missed. */
export default ({ run, stepKey, onLeftOut }: Props) => {
  const asked = useLive(
    async () => {
      const onHand = await boxById(run.boxId);
      return onHand && askedOf(onHand);
    },
    ['both-ways', 'box'],
    `${run.boxId} ${stepKey}`,
  ).value;
  const leftOut = asked?.lot === 'without' ? asked.plan.step : null;
  useEffect(() => onLeftOut(leftOut), [leftOut]);
  return (
    <>
      {asked?.plan.step === stepKey && <p class="lot">{lotAtStep[asked.lot]}</p>}
      {stepKey === 'pick-up' && <SlipNote run={run} />}
    </>
  );
};
