import { withoutItem } from '../../../domain/box/with-item.ts';
import '../plan/style.css';
import '../dock.css';
import { changeBox } from '../../../app/boxes.ts';
import { settings } from '../../../app/session.ts';
import type { CalculatedBox } from '../../../domain/box/calculate.ts';
import { depthReached, isThreaded } from '../../../domain/box/cuts.ts';
import type { Mend } from '../../../domain/joint/tenon-check.ts';
import { Lazy } from '../../shell/lazy.tsx';
import { hrefTo } from '../../shell/route.ts';
import { ReadingList, withAt } from '../bore/reading-list.tsx';
import { mendActWords, recessFaultWords } from '../limit-words.ts';
import { measureWords, tenonWords as words } from '../measure-words.ts';
import { AssumedNote } from '../plan/assumptions.tsx';
import { BigAnswer } from '../plan/big-answer.tsx';
import { NoPlan } from '../plan/no-plan.tsx';
import { useCalculated } from '../plan/use-calculated.ts';
import { amountWords, sizeWords } from '../plan/words.ts';
import type { StageProps } from '../stage-props.ts';
import { TenonForm } from './form.tsx';
import { TenonVerdict } from './verdict.tsx';

/** The turned tenon, read, and what it does to the fit before any thread is cut. */
const TenonStage = ({ onHand }: StageProps) => {
  const { id, box } = onHand;
  const known = useCalculated(box);
  if (!known) return <div aria-busy="true" />;
  const { calculated } = known;
  const isFirst = box.tenon.length === 0;
  const counted = calculated.ok ? (calculated.value.tenon?.counted ?? []) : box.tenon;
  const check = calculated.ok ? calculated.value.check : null;
  const mend = check?.mend ?? null;
  const isOver = check?.size === 'over';
  const setUp = box.plan.route === 'recess-first' ? 'set-up-tenon' : 'set-up-recess';
  return (
    <>
      {calculated.ok ? (
        <Answer calculated={calculated.value} pitch={box.plan.pitch.text} />
      ) : (
        <NoPlan refusal={calculated.error} />
      )}
      <TenonForm
        key={box.tenon.length}
        boxId={id}
        heading={isFirst ? null : isOver ? words.turnedAgain : measureWords.another}
        overCrests={depthReached(box, 'tenon') !== null}
        isThreaded={isThreaded(box, 'tenon')}
      />
      <ReadingList
        readings={box.tenon}
        say={words.reading}
        aside={(reading) => (counted.includes(reading) ? null : measureWords.superseded)}
        onRemove={({ id: gone }) =>
          changeBox(id, (now) => ({ ...now, tenon: withoutItem(now.tenon, gone) }), 'tenon')
        }
        onPutBack={(reading, at) =>
          changeBox(id, (now) => ({ ...now, tenon: withAt(now.tenon, reading, at) }), 'tenon')
        }
      />
      {calculated.ok && <AssumedNote assumed={calculated.value.assumed} />}
      {!isFirst && mend && calculated.ok && (
        <div class="dock">
          <MendAct mend={mend} calculated={calculated.value} />
        </div>
      )}
      {!isFirst &&
        (mend ? (
          <a class="act" href={hrefTo('bench', setUp)}>
            {words.asItIs}
          </a>
        ) : (
          <div class="dock">
            <a class="act main" href={hrefTo('bench', setUp)}>
              {measureWords.toSetUp}
            </a>
          </div>
        ))}
    </>
  );
};

export default TenonStage;

/** Where the mend is done, or the field that takes the reading after it. */
const MendAct = ({ mend, calculated }: { mend: Mend; calculated: CalculatedBox }) => {
  const word = mendActWords(mend, calculated, settings.value.unit);
  if (mend.kind !== 'joint')
    return (
      <button
        type="button"
        class="main"
        onClick={() => document.querySelector<HTMLElement>('.plan-form input')?.focus()}
      >
        {word}
      </button>
    );
  const { recessCutTo, plan } = calculated;
  const place = recessCutTo === null ? 'plan' : recessCutTo < plan.sizes.depth ? 'set-up-recess' : 'bore';
  return (
    <a class="act main" href={hrefTo('bench', place)}>
      {word}
    </a>
  );
};

const Answer = ({ calculated, pitch }: { calculated: CalculatedBox; pitch: string }) => {
  const { unit } = settings.value;
  const { target, tenon, check, isBoreMeasured } = calculated;
  const fault = recessFaultWords(calculated, unit);
  if (tenon && check)
    return (
      <>
        <TenonVerdict calculated={calculated} tenon={tenon} check={check} />
        <Lazy load={() => import('../../joint/joint-glance.tsx')} props={{ calculated, pitch }} />
      </>
    );
  return (
    <>
      <BigAnswer
        before={words.target}
        text={sizeWords(target.tenon, unit)}
        beside={measureWords.plusOrMinus(amountWords(target.tolerance, unit))}
      />
      {fault && <p class="ask">{fault}</p>}
      {!isBoreMeasured && (
        <p>
          {words.noBore} <a href={hrefTo('bench', 'bore')}>{words.toBore}</a>
        </p>
      )}
    </>
  );
};
