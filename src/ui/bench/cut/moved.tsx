import { useSignal } from '@preact/signals';
import type { BoxOnHand } from '../../../app/boxes.ts';
import { openRun, record } from '../../../app/set-up-run.ts';
import { startSetUp } from '../../../app/start-set-up.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import type { Movement } from '../../../domain/setup/procedure.ts';
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
  const busy = useSignal(false);
  const note = async (what: Movement) => {
    if (busy.value) return;
    busy.value = true;
    const runId = run.closed === null ? run.runId : await startSetUp(onHand, run.part);
    if (runId) await openRun(runId);
    const saved = runId !== undefined && (await record({ kind: 'moved', what }));
    busy.value = false;
    if (saved) feel('reopened');
    if (runId && (saved || run.closed !== null)) go('set-up', runId);
  };
  return (
    <section class="set-up cutting" aria-label={words.whatMoved}>
      <WhatMoved heading="h2" busy={busy.value} onMoved={note} onNothing={onStay} />
    </section>
  );
};
