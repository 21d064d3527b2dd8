import type { RunState } from '../../../domain/setup/fold.ts';
import type { Step } from '../../../domain/setup/procedure.ts';
import { guardWord } from '../../shop/procedures/words.ts';
import { setUpWords as words } from '../words.ts';
import { SlipNote } from './slip-note.tsx';

interface Props {
  readonly run: RunState;
  readonly step: Step;
  readonly onClose: () => void;
}

/** Why a step is asked, and what it keeps from happening, in place of its drawing and sentence; a tap gives them back. */
export default ({ run, step, onClose }: Props) => (
  <button type="button" class="panel" onClick={onClose}>
    <span>{step.why || words.noWhy}</span>
    {step.key === 'pick-up' && <SlipNote run={run} />}
    {step.guards.length > 0 && (
      <span class="soft">{words.against(step.guards.map((guard) => guardWord[guard]))}</span>
    )}
    <span class="back">{words.back}</span>
  </button>
);
