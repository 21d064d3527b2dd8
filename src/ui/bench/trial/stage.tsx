import '../dock.css';
import './style.css';
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { settings } from '../../../app/session.ts';
import { RIGHT, recordMoves, recordTrial, takeBackTrial } from '../../../app/trials.ts';
import { depthReached } from '../../../domain/box/cuts.ts';
import { openTrial } from '../../../domain/box/open-trial.ts';
import type { Trial } from '../../../domain/box/records.ts';
import { useAct } from '../../parts/use-act.ts';
import { Lazy } from '../../shell/lazy.tsx';
import { goInstead, hrefTo, isWhole } from '../../shell/route.ts';
import type { StageProps } from '../stage-props.ts';
import { EarlierTries, TakeBack } from './earlier-tries.tsx';
import { TrialForm } from './form.tsx';
import { doneLine } from './move-words.ts';
import { trialLine, trialWords as words } from './words.ts';

/** One tap when it is good; else how it is, and what to do about it. It takes the whole screen; "Stages" leads back to the Bench. */
const TrialStage = ({ onHand }: StageProps) => {
  const { id, box } = onHand;
  /** The trial whose advice was followed or passed over, so that the next can be entered. */
  const doneWith = useSignal<string | null>(null);
  const over = useSignal<'list' | 'change' | null>(null);
  const open = openTrial(box);
  const shown = open && open.id !== doneWith.value ? open : null;
  const wasRight = box.trials.some((trial) => trial.right);
  useEffect(() => {
    isWhole.value = over.value !== 'list';
    return () => {
      isWhole.value = false;
    };
  }, [over.value]);

  if (over.value === 'list') return <Record {...{ id, box }} onBack={() => (over.value = null)} />;
  if (shown && over.value !== 'change')
    return (
      <section class="trial-screen advice" aria-label={trialLine(shown)}>
        <Lazy
          key={shown.id}
          load={() => import('./advice.tsx')}
          props={{
            boxId: id,
            trial: shown,
            onChange: () => (over.value = 'change'),
            onTriedAgain: () => (doneWith.value = shown.id),
          }}
        />
        <TakeBack word={words.undo} onTap={() => takeBackTrial(id, shown.id)} />
      </section>
    );
  return (
    <section class="trial-screen" aria-label={words.title}>
      <header>
        <h1>{words.title}</h1>
        <button type="button" onClick={() => (over.value = 'list')}>
          {words.stages}
        </button>
      </header>
      <Good id={id} wasRight={wasRight} />
      <p>{words.unplug}</p>
      {!shown && <MovesSince id={id} trial={box.trials.at(-1)} />}
      <TrialForm
        key={shown?.id ?? box.trials.length}
        boxId={id}
        trial={shown}
        wasRight={wasRight}
        onSaved={() => {
          over.value = null;
        }}
      />
    </section>
  );
};
export default TrialStage;

const Good = ({ id, wasRight }: { id: string; wasRight: boolean }) => {
  const good = useAct(async (fresh) => {
    const saved = await recordTrial(id, fresh, { ...RIGHT, afterFinish: wasRight });
    if (saved) goInstead('bench');
    return saved;
  });
  return (
    <button type="button" class="good" disabled={good.busy} onClick={() => good.act()}>
      {words.good}
    </button>
  );
};

/** What was noted as done after the last trial; a wrong note is taken back here. */
const MovesSince = ({ id, trial }: { id: string; trial: Trial | undefined }) =>
  trial?.moves && trial.moves.length > 0 ? (
    <div class="row">
      <p>{words.doneSince(doneLine(trial.moves, settings.value.unit))}</p>
      <button type="button" onClick={() => recordMoves(id, trial.id, (trial.moves ?? []).slice(0, -1))}>
        {words.undoMove}
      </button>
    </div>
  ) : null;

/** What was cut and tried so far. */
const Record = ({ id, box, onBack }: StageProps['onHand'] & { onBack: () => void }) => {
  const last = box.trials.at(-1);
  return (
    <>
      <button type="button" class="main" onClick={onBack}>
        {words.back}
      </button>
      <p class="soft">
        {words.cutSoFar(
          depthReached(box, 'recess')?.text ?? words.notCut,
          depthReached(box, 'tenon')?.text ?? words.notCut,
        )}{' '}
        <a href={hrefTo('bench', 'cut-tenon')}>{words.changeCut}</a>
      </p>
      <EarlierTries
        title={words.earlier}
        lines={box.trials.map((trial) => ({ id: trial.id, line: trialLine(trial) }))}
      />
      {last && <TakeBack word={words.undo} onTap={() => takeBackTrial(id, last.id)} />}
    </>
  );
};
