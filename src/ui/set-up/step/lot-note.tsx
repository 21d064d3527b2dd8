import { useEffect } from 'preact/hooks';
import { askedOfBox } from '../../../app/experiments.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { useLive } from '../../parts/use-live.ts';
import { lotAtStep } from '../../words/lot.ts';

interface Props {
  readonly run: RunState;
  readonly stepKey: string;
  /** Hears which step the lot leaves out, so that no tap for several steps passes it. */
  readonly onLeftOut: (step: string | null) => void;
}

/** At the step that an experiment varies: what the lot asks of this box. */
export default ({ run, stepKey, onLeftOut }: Props) => {
  const asked = useLive(askedOfBox, ['experiment', 'box'], run.boxId).value;
  const leftOut = asked?.lot === 'without' ? asked.plan.step : null;
  useEffect(() => onLeftOut(leftOut), [leftOut]);
  return asked?.plan.step === stepKey ? <p class="lot">{lotAtStep[asked.lot]}</p> : null;
};
