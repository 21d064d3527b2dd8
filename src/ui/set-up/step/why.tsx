import type { Step } from '../../../domain/setup/procedure.ts';
import { guardWord } from '../../shop/procedures/words.ts';
import { setUpWords as words } from '../words.ts';

/** Why a step is asked, and what it keeps from happening, in place of its drawing and sentence; a tap gives them back. */
export default ({ step, onClose }: { step: Step; onClose: () => void }) => (
  <button type="button" class="panel why" onClick={onClose}>
    <span>{step.why || words.noWhy}</span>
    {step.guards.length > 0 && (
      <span class="soft">{words.against(step.guards.map((guard) => guardWord[guard]))}</span>
    )}
    <span class="back">{words.back}</span>
  </button>
);
