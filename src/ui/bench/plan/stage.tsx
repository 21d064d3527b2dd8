import './style.css';
import '../dock.css';
import { useSignal } from '@preact/signals';
import { settings } from '../../../app/session.ts';
import type { CalculatedBox } from '../../../domain/box/calculate.ts';
import type { Plan } from '../../../domain/box/records.ts';
import { JointLinks } from '../../joint/joint-links.tsx';
import { Lazy } from '../../shell/lazy.tsx';
import { hrefTo } from '../../shell/route.ts';
import type { StageProps } from '../stage-props.ts';
import { Assumptions } from './assumptions.tsx';
import { BigAnswer } from './big-answer.tsx';
import { NoPlan } from './no-plan.tsx';
import { blankRows, recessRows, slideRows, tenonRows, threadRows } from './rows.ts';
import { PlanSection } from './section.tsx';
import { Sizes } from './sizes.tsx';
import { useCalculated } from './use-calculated.ts';
import { roughWords, warningWords, planWords as words } from './words.ts';

/** Every size of the box, what to look out for, and what was assumed. */
const PlanStage = ({ onHand }: StageProps) => {
  const { box } = onHand;
  const changing = useSignal(false);
  const known = useCalculated(box);
  if (!known) return <div aria-busy="true" />;
  const { given, calculated } = known;
  const change = (
    <button
      type="button"
      onClick={() => {
        changing.value = !changing.value;
        scrollTo(0, 0);
      }}
    >
      {changing.value ? words.leave : words.change}
    </button>
  );

  if (changing.value)
    return (
      <>
        <Lazy
          key="change"
          load={() => import('./change.tsx')}
          props={{
            onHand,
            given,
            onKept: () => {
              changing.value = false;
            },
          }}
        />
        {change}
      </>
    );
  if (!calculated.ok)
    return (
      <>
        <NoPlan refusal={calculated.error} />
        {change}
      </>
    );
  return (
    <>
      <PlanSheet calculated={calculated.value} plan={box.plan} rigId={box.rigId} />
      {change}
      <div class="dock">
        <a class="act main" href={hrefTo('bench', 'bore')}>
          {words.toBore}
        </a>
      </div>
    </>
  );
};

export default PlanStage;

const PlanSheet = ({ calculated, plan, rigId }: { calculated: CalculatedBox; plan: Plan; rigId: string }) => {
  const { unit } = settings.value;
  const { warnings, lengths } = calculated.plan;
  return (
    <>
      <BigAnswer
        before={words.bore}
        text={plan.opening.text}
        beside={`${words.depth} ${roughWords(lengths.recessDepth, unit)}`}
      />
      <p>{words.routeSays[plan.route]}</p>
      {warnings.length > 0 && (
        <section>
          <h3>{words.warnings}</h3>
          <ul class="warnings">
            {warnings.map((warning) => (
              <li key={warning.code}>{warningWords(warning, unit)}</li>
            ))}
          </ul>
        </section>
      )}
      <PlanSection calculated={calculated} plan={plan} />
      <Lazy
        load={() => import('../../joint/joint-glance.tsx')}
        props={{ calculated, pitch: plan.pitch.text }}
      />
      <JointLinks />
      <Sizes heading={words.recessHead(plan.recessIn)} rows={recessRows(calculated, plan, unit)} />
      <Sizes heading={words.tenonHead(plan.recessIn)} rows={tenonRows(calculated, unit)} />
      <Sizes heading={words.threadHead} rows={threadRows(calculated, plan, unit)} />
      <Sizes heading={words.blankHead} rows={blankRows(calculated, unit)} />
      <Sizes heading={words.slideHead} rows={slideRows(calculated, unit)} />
      <Assumptions assumed={calculated.assumed} rigId={rigId} />
    </>
  );
};
