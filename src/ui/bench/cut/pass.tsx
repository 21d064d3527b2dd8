import { useSignal } from '@preact/signals';
import type { BoxOnHand } from '../../../app/boxes.ts';
import { recordPass, takeBackPass } from '../../../app/cutting.ts';
import { settings } from '../../../app/session.ts';
import { cutsOf, type NextPass } from '../../../domain/box/cuts.ts';
import type { Rig } from '../../../domain/box/records.ts';
import type { PlannedPass } from '../../../domain/joint/plan.ts';
import type { Part } from '../../../domain/setup/events.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { writeLength } from '../../../domain/units/write-quantity.ts';
import { feel } from '../../set-up/feel.ts';
import { partName } from '../../set-up/words.ts';
import { goInstead } from '../../shell/route.ts';
import { CutMoved } from './moved.tsx';
import { CutRecord } from './record.tsx';
import { CutScreen } from './screen.tsx';
import { cutWords as words } from './words.ts';

interface Props {
  readonly onHand: BoxOnHand;
  readonly part: Part;
  readonly run: RunState;
  readonly rig: Rig;
  readonly next: NextPass<PlannedPass>;
  readonly of: number;
  /** What the tenon's measured size means for this depth. */
  readonly note: string | null;
}

/** The next planned pass: one tap once it is cut and the cutter stands still. The last one closes the set-up and goes on. */
export const CutPass = ({ onHand, part, run, rig, next, of, note }: Props) => {
  const aside = useSignal<'moved' | 'list' | null>(null);
  const { pass, number, isLast } = next;
  const last = cutsOf(onHand.box, part).at(-1);

  if (aside.value === 'moved')
    return <CutMoved onHand={onHand} run={run} onStay={() => (aside.value = null)} />;
  if (aside.value === 'list')
    return <CutRecord onHand={onHand} part={part} run={run} onBack={() => (aside.value = null)} />;

  const cut = async (id: string) => {
    const depth = { mm: pass.depth, text: writeLength(pass.depth, settings.value.unit) };
    const saved = await recordPass(onHand.id, { id, part, run, depth, correction: false, isLast });
    if (!saved) return false;
    feel('pass');
    if (isLast) goInstead('bench');
    return true;
  };

  return (
    <CutScreen
      title={words.passOf(partName[part], number, of)}
      short={words.passShort(number, of)}
      run={run}
      hand={rig.hand}
      depth={pass.depth}
      dial={pass.dial}
      before={number > 1 || last ? words.between : (note ?? words.noTap)}
      act={words.cutPass(number)}
      actShort={words.cutPassShort(number)}
      onCut={cut}
      onMoved={() => (aside.value = 'moved')}
      onUndo={last ? () => takeBackPass(onHand.id, onHand.box.cuts, last, run) : null}
      onList={() => (aside.value = 'list')}
    />
  );
};
