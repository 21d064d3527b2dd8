import { useEffect } from 'preact/hooks';
import { askedOf } from '../../../app/both-ways.ts';
import { boxById } from '../../../app/boxes.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { useLive } from '../../parts/use-live.ts';
import { lotAtStep } from '../../words/lot.ts';

interface Props {
  readonly run: RunState;
  readonly stepKey: string;
  /** Hears which step the lot leaves out, so that no tap for several steps passes it. */
  readonly onLeftOut: (step: string | null) => void;
}

/** At the step that a trial varies: what the lot asks of this box. */
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
  return asked?.plan.step === stepKey ? <p class="lot">{lotAtStep[asked.lot]}</p> : null;
};
