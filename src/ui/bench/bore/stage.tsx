import { withoutItem } from '../../../domain/box/with-item.ts';
import '../plan/style.css';
import '../dock.css';
import { changeBox } from '../../../app/boxes.ts';
import { settings } from '../../../app/session.ts';
import type { CalculatedBox } from '../../../domain/box/calculate.ts';
import { depthReached, isThreaded } from '../../../domain/box/cuts.ts';
import { pieceAt } from '../../../domain/box/piece.ts';
import type { Box } from '../../../domain/box/records.ts';
import { Lazy } from '../../shell/lazy.tsx';
import { hrefTo } from '../../shell/route.ts';
import { recessFaultWords } from '../limit-words.ts';
import { isBoreTapered, measureWords, roundWords, taperWords, boreWords as words } from '../measure-words.ts';
import { AssumedNote } from '../plan/assumptions.tsx';
import { BigAnswer } from '../plan/big-answer.tsx';
import { NoPlan } from '../plan/no-plan.tsx';
import { useCalculated } from '../plan/use-calculated.ts';
import { amountWords, sizeWords } from '../plan/words.ts';
import type { StageProps } from '../stage-props.ts';
import { CaliperOffset } from './caliper.tsx';
import { BoreForm } from './form.tsx';
import { ReadingList, withAt } from './reading-list.tsx';

/** The plain bore, read; the tenon that follows from it. */
const BoreStage = ({ onHand }: StageProps) => {
  const { id, box } = onHand;
  const known = useCalculated(box);
  if (!known) return <div aria-busy="true" />;
  const { given, calculated } = known;
  const isFirst = box.bore.length === 0;
  const isTapered = calculated.ok && isBoreTapered(calculated.value.bore, calculated.value.target.tolerance);
  const onward = isTapered ? 'act' : 'act main';
  const hasMouth = box.bore.some(({ where }) => where === 'mouth');
  return (
    <>
      {isFirst && <p>{words.first}</p>}
      {!isFirst && calculated.ok && <TenonToTurn calculated={calculated.value} box={box} />}
      {!calculated.ok && <NoPlan refusal={calculated.error} />}
      <BoreForm
        key={box.bore.length}
        boxId={id}
        isFirst={isFirst}
        where={hasMouth ? 'relief' : 'mouth'}
        overCrests={depthReached(box, 'recess') !== null}
        isThreaded={isThreaded(box, 'recess')}
      />
      <ReadingList
        readings={box.bore}
        say={words.reading}
        aside={(reading) =>
          pieceAt(box, 'recess').readings.includes(reading) ? null : measureWords.superseded
        }
        onRemove={({ id: gone }) =>
          changeBox(id, (now) => ({ ...now, bore: withoutItem(now.bore, gone) }), 'bore')
        }
        onPutBack={(reading, at) =>
          changeBox(id, (now) => ({ ...now, bore: withAt(now.bore, reading, at) }), 'bore')
        }
      />
      <CaliperOffset onHand={onHand} caliper={given.caliper} />
      {calculated.ok && <AssumedNote assumed={calculated.value.assumed} />}
      {!isFirst && (
        <div class="dock">
          {isTapered && (
            <button
              type="button"
              class="main"
              onClick={() => document.querySelector<HTMLElement>('.plan-form input')?.focus()}
            >
              {words.trueIt}
            </button>
          )}
          {box.plan.route === 'recess-first' ? (
            <a class={onward} href={hrefTo('bench', 'set-up-recess')}>
              {measureWords.toSetUp}
            </a>
          ) : (
            <a class={onward} href={hrefTo('bench', 'tenon')}>
              {measureWords.toTenon}
            </a>
          )}
        </div>
      )}
    </>
  );
};

export default BoreStage;

/** How far off the opening planned is worth a question, mm. */
const WORTH_ASKING = 1;

const TenonToTurn = ({ calculated, box }: { calculated: CalculatedBox; box: Box }) => {
  const { unit } = settings.value;
  const { bore, target, recessCutTo, plan } = calculated;
  const fault = recessFaultWords(calculated, unit);
  const offPlan = bore.mean - box.plan.opening.mm;
  return (
    <>
      <BigAnswer
        before={words.tenon}
        text={sizeWords(target.tenon, unit)}
        beside={measureWords.plusOrMinus(amountWords(target.tolerance, unit))}
      />
      <p class="zero">
        {words.zero} <b>{words.plus(sizeWords(target.fromZero, unit))}</b>
      </p>
      <Lazy load={() => import('./own-allowance.tsx')} props={{ calculated }} />
      <section>
        <h3>{words.tells}</h3>
        <p>
          {words.mean} <b>{sizeWords(bore.mean, unit)}</b>,{' '}
          {words.meanKnown(amountWords(bore.uncertainty, unit))}.
        </p>
        <p>{taperWords(bore, target.tolerance, unit)}</p>
        <p>{roundWords(bore, target.tolerance, unit)}</p>
        {bore.overCrests && <p>{measureWords.overCrestsNote}</p>}
        {recessCutTo !== null && (
          <p class={fault ? 'ask' : ''}>
            {fault ?? words.cutTo(sizeWords(recessCutTo, unit), sizeWords(plan.sizes.depth, unit))}
          </p>
        )}
        {Math.abs(offPlan) > WORTH_ASKING && (
          <p class="ask">
            {words.offPlan(sizeWords(Math.abs(offPlan), unit), offPlan > 0 ? 'over' : 'under')}
          </p>
        )}
      </section>
    </>
  );
};
