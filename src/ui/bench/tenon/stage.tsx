import '../plan/style.css';
import '../dock.css';
import { changeBox } from '../../../app/boxes.ts';
import { depthReached } from '../../../app/cutting.ts';
import type { Reckoned } from '../../../app/plan-of.ts';
import { settings } from '../../../app/session.ts';
import { Later } from '../../shell/later.tsx';
import { hrefTo } from '../../shell/route.ts';
import { ReadingList, withAt } from '../bore/reading-list.tsx';
import { measureWords, tenonWords as words } from '../measure-words.ts';
import { BigAnswer } from '../plan/big-answer.tsx';
import { NoPlan } from '../plan/no-plan.tsx';
import { StoodIn } from '../plan/stand-ins.tsx';
import { useReckoned } from '../plan/use-planned.ts';
import { amountWords, sizeWords } from '../plan/words.ts';
import type { StageProps } from '../stage-props.ts';
import { TenonForm } from './form.tsx';
import { TenonVerdict } from './verdict.tsx';

/** The turned tenon, read, and what it does to the fit before any thread is cut. */
const TenonStage = ({ onHand }: StageProps) => {
  const { id, box } = onHand;
  const known = useReckoned(box);
  if (!known) return <div aria-busy="true" />;
  const { reckoned } = known;
  const isFirst = box.tenon.length === 0;
  const counted = reckoned.ok ? (reckoned.value.tenon?.counted ?? []) : box.tenon;
  const isOver = reckoned.ok && reckoned.value.check?.verdict === 'over';
  const setUp = box.plan.route === 'recess-first' ? 'set-up-tenon' : 'set-up-recess';
  return (
    <>
      {reckoned.ok ? (
        <Answer reckoned={reckoned.value} pitch={box.plan.pitch.text} />
      ) : (
        <NoPlan refusal={reckoned.error} />
      )}
      <TenonForm
        key={box.tenon.length}
        boxId={id}
        heading={isFirst ? null : isOver ? words.turnedAgain : measureWords.another}
        overCrests={depthReached(box.cuts, 'tenon') !== null}
      />
      <ReadingList
        readings={box.tenon}
        say={words.reading}
        aside={(reading) => (counted.includes(reading) ? null : measureWords.superseded)}
        onRemove={({ id: gone }) =>
          changeBox(id, (now) => ({ ...now, tenon: now.tenon.filter((reading) => reading.id !== gone) }))
        }
        onPutBack={(reading, at) =>
          changeBox(id, (now) => ({ ...now, tenon: withAt(now.tenon, reading, at) }))
        }
      />
      {reckoned.ok && <StoodIn standIns={reckoned.value.standIns} />}
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

const Answer = ({ reckoned, pitch }: { reckoned: Reckoned; pitch: string }) => {
  const { unit } = settings.value;
  const { target, tenon, check, isBoreMeasured } = reckoned;
  if (tenon && check)
    return (
      <>
        <TenonVerdict reckoned={reckoned} tenon={tenon} check={check} />
        <Later load={() => import('../../joint/joint-glance.tsx')} props={{ reckoned, pitch }} />
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
