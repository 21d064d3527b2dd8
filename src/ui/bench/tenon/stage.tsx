import { withoutItem } from '../../../domain/box/with-item.ts';
import '../plan/style.css';
import '../dock.css';
import { changeBox } from '../../../app/boxes.ts';
import { settings } from '../../../app/session.ts';
import type { CalculatedBox } from '../../../domain/box/calculate.ts';
import { depthReached, isThreaded } from '../../../domain/box/cuts.ts';
import { Later } from '../../shell/later.tsx';
import { hrefTo } from '../../shell/route.ts';
import { ReadingList, withAt } from '../bore/reading-list.tsx';
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
  const isOver = calculated.ok && calculated.value.check?.verdict === 'over';
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
      {!isFirst && (
        <div class="dock">
          <a class="act main" href={hrefTo('bench', setUp)}>
            {measureWords.toSetUp}
          </a>
        </div>
      )}
    </>
  );
};

export default TenonStage;

const Answer = ({ calculated, pitch }: { calculated: CalculatedBox; pitch: string }) => {
  const { unit } = settings.value;
  const { target, tenon, check, isBoreMeasured } = calculated;
  if (tenon && check)
    return (
      <>
        <TenonVerdict calculated={calculated} tenon={tenon} check={check} />
        <Later load={() => import('../../joint/joint-glance.tsx')} props={{ calculated, pitch }} />
      </>
    );
  return (
    <>
      <BigAnswer
        before={words.target}
        text={sizeWords(target.tenon, unit)}
        beside={measureWords.plusOrMinus(amountWords(target.tolerance, unit))}
      />
      {!isBoreMeasured && (
        <p>
          {words.noBore} <a href={hrefTo('bench', 'bore')}>{words.toBore}</a>
        </p>
      )}
    </>
  );
};
