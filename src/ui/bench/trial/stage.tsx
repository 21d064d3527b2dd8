import '../dock.css';
import './style.css';
import { useSignal } from '@preact/signals';
import { RIGHT, recordTrial, takeBackTrial } from '../../../app/trials.ts';
import { depthReached } from '../../../domain/box/cuts.ts';
import { openTrial } from '../../../domain/box/open-trial.ts';
import type { Trial } from '../../../domain/box/records.ts';
import { useAct } from '../../parts/use-act.ts';
import { goInstead, hrefTo } from '../../shell/route.ts';
import type { StageProps } from '../stage-props.ts';
import { Advice } from './advice.tsx';
import { EarlierTries, TakeBack } from './earlier-tries.tsx';
import { TrialForm } from './form.tsx';
import { trialLine, trialWords as words } from './words.ts';

/** One tap when it is right; else how it is, and what to do about it. */
const TrialStage = ({ onHand }: StageProps) => {
  const { id, box } = onHand;
  /** The trial whose advice was followed or passed over, so that the next can be told. */
  const doneWith = useSignal<string | null>(null);
  const open = openTrial(box);
  const shown = open && open.id !== doneWith.value ? open : null;

  const right = useAct(async (fresh) => {
    const afterFinish = box.trials.some((trial) => trial.right);
    const saved = await recordTrial(id, fresh, { ...RIGHT, afterFinish });
    if (saved) goInstead('bench');
    return saved;
  });

  if (shown)
    return (
      <>
        <p class="told">{trialLine(shown)}</p>
        <Advice onHand={onHand} trial={shown} />
        <div class="dock">
          <button
            type="button"
            class="main"
            onClick={() => {
              doneWith.value = shown.id;
            }}
          >
            {words.tried}
          </button>
        </div>
        <TakeBack word={words.undo} onTap={() => takeBackTrial(id, shown.id)} />
        <EarlierTries title={words.earlier} lines={linesOf(box.trials.slice(0, -1))} />
      </>
    );

  const last = box.trials.at(-1);
  return (
    <>
      <p>{words.first}</p>
      <button type="button" class="main right-first" disabled={right.busy} onClick={() => right.act()}>
        {words.right}
      </button>
      <h3>{words.else}</h3>
      <TrialForm
        key={box.trials.length}
        boxId={id}
        wasRight={box.trials.some((trial) => trial.right)}
        onRecorded={() => scrollTo(0, 0)}
      />
      <p class="soft">
        {words.cutSoFar(
          depthReached(box, 'recess')?.text ?? words.notCut,
          depthReached(box, 'tenon')?.text ?? words.notCut,
        )}{' '}
        <a href={hrefTo('bench', 'cut-tenon')}>{words.changeCut}</a>
      </p>
      <EarlierTries title={words.earlier} lines={linesOf(box.trials)} />
      {last && <TakeBack word={words.undo} onTap={() => takeBackTrial(id, last.id)} />}
    </>
  );
};
export default TrialStage;

const linesOf = (trials: readonly Trial[]) =>
  trials.map((trial) => ({ id: trial.id, line: trialLine(trial) }));
