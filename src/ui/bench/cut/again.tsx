import { useSignal } from '@preact/signals';
import type { BoxOnHand } from '../../../app/boxes.ts';
import { recordPass } from '../../../app/cutting.ts';
import { settings } from '../../../app/session.ts';
import { depthReached } from '../../../domain/box/cuts.ts';
import type { Rig } from '../../../domain/box/records.ts';
import { benchStep, type Dial, dialTarget } from '../../../domain/joint/dial.ts';
import type { Part } from '../../../domain/setup/events.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { type Millimetres, mm } from '../../../domain/units/brands.ts';
import { writeLength } from '../../../domain/units/write-quantity.ts';
import { feel } from '../../set-up/feel.ts';
import { partName } from '../../set-up/words.ts';
import { goInstead } from '../../shell/route.ts';
import { stepWords } from '../../words/dial.ts';
import { CutMoved } from './moved.tsx';
import { CutRecord } from './record.tsx';
import { CutScreen } from './screen.tsx';
import { cutWords as words } from './words.ts';

interface Props {
  readonly onHand: BoxOnHand;
  readonly part: Part;
  readonly run: RunState;
  readonly rig: Rig;
  readonly dial: Dial | null;
  /** How much deeper than what has been cut, as the advice has it, mm; nothing is the same setting again. */
  readonly by: number;
}

/** Deepest that one correction can be set here, mm; a new tenon beyond that. */
const MOST = 1;

/** A pass after a trial fit: deeper by a little, or at the same setting again. */
export const CutAgain = ({ onHand, part, run, rig, dial, by }: Props) => {
  const over = useSignal<'moved' | 'list' | null>(null);
  const deeper = useSignal(Math.min(MOST, Math.max(0, by)));
  const { unit } = settings.value;
  const step = benchStep[unit === 'in' ? 'inch' : 'metric'];
  const reached = depthReached(onHand.box, part);
  const depth = mm((reached?.mm ?? 0) + deeper.value);
  const onDial = (length: Millimetres) => {
    const target = dial ? dialTarget(length, dial) : null;
    return target?.ok ? target.value : null;
  };

  if (over.value === 'moved')
    return <CutMoved onHand={onHand} run={run} onStay={() => (over.value = null)} />;
  if (over.value === 'list')
    return <CutRecord onHand={onHand} part={part} run={run} onBack={() => (over.value = null)} />;

  const cut = async (id: string) => {
    const text = writeLength(depth, unit);
    const pass = { id, part, run, depth: { mm: depth, text }, correction: true, isLast: true };
    if (!(await recordPass(onHand.id, pass))) return false;
    feel('pass');
    goInstead('bench');
    return true;
  };

  return (
    <CutScreen
      title={words.correction(partName[part])}
      short={words.againShort}
      run={run}
      hand={rig.hand}
      depth={depth}
      dial={onDial(depth)}
      before={words.lidOff}
      act={words.cutAgain}
      actShort={words.cutAgainShort}
      onCut={cut}
      onMoved={() => (over.value = 'moved')}
      onUndo={null}
      onList={() => (over.value = 'list')}
    >
      <div class="by">
        <button
          type="button"
          aria-label={words.less}
          disabled={deeper.value <= 0}
          onClick={() => (deeper.value = Math.max(0, deeper.value - step))}
        >
          −
        </button>
        <p role="status">
          {deeper.value < step / 2 ? words.sameSetting : words.deeperBy(stepWords(mm(deeper.value), unit))}
        </p>
        <button
          type="button"
          aria-label={words.more}
          disabled={deeper.value >= MOST}
          onClick={() => (deeper.value = Math.min(MOST, deeper.value + step))}
        >
          +
        </button>
      </div>
    </CutScreen>
  );
};
