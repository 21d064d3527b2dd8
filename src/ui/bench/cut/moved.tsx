import type { BoxOnHand } from '../../../app/boxes.ts';
import { record, runById } from '../../../app/set-up-run.ts';
import { startSetUp } from '../../../app/start-set-up.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import type { Movement } from '../../../domain/setup/procedure.ts';
import { useAct } from '../../parts/use-act.ts';
import { feel } from '../../set-up/feel.ts';
import { WhatMoved } from '../../set-up/moved/what-moved.tsx';
import { setUpWords as words } from '../../set-up/words.ts';
import { go } from '../../shell/route.ts';

interface Props {
  readonly onHand: BoxOnHand;
  readonly run: RunState;
  readonly onStay: () => void;
}

/**
 * Something moved between two passes: noted in the set-up, which then asks again for just what that lost. A set-up that is
 * closed already is followed by a new one, in which the groove is picked up.
 */
export const CutMoved = ({ onHand, run, onStay }: Props) => {
  const { busy, act } = useAct(async (fresh, what: Movement) => {
    const runId = run.closed === null ? run.runId : fresh;
    if (run.closed !== null && !(await startSetUp(fresh, onHand, run.part))) return false;
    const saved = await record({ kind: 'moved', what }, run.closed === null ? run : await runById(fresh));
    if (saved) feel('reopened');
    if (saved || run.closed !== null) go('set-up', runId);
    return saved;
  });
  return (
    <section class="set-up cutting" aria-label={words.whatMoved}>
      <WhatMoved heading="h2" busy={busy} onMoved={act} onNothing={onStay} />
    </section>
  );
};
