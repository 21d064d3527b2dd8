import { settings } from '../../app/session.ts';
import type { CalculatedBox } from '../../domain/box/calculate.ts';
import { turnsToStop } from '../../domain/box/cuts.ts';
import { passesOf } from '../../domain/box/pair.ts';
import type { Box } from '../../domain/box/records.ts';
import { latestRun } from '../../domain/box/stages.ts';
import type { Part } from '../../domain/setup/events.ts';
import type { RunState } from '../../domain/setup/fold.ts';
import { turns } from '../../domain/units/brands.ts';
import { writeTurns } from '../../domain/units/write-quantity.ts';
import { recessRows, tenonRows } from '../bench/plan/rows.ts';
import { PlanSection } from '../bench/plan/section.tsx';
import { type SizeRow, Sizes } from '../bench/plan/sizes.tsx';
import { planWords, sizeWords } from '../bench/plan/words.ts';
import { partName } from '../set-up/words.ts';
import { dialTargetWords } from '../words/dial.ts';
import JointGlance from './joint-glance.tsx';
import { jointWords } from './words.ts';

const words = jointWords.card;

interface Props {
  readonly box: Box;
  readonly runs: ReadonlyMap<string, RunState>;
  readonly woods: string;
  readonly calculated: CalculatedBox;
}

/** Drawing and section, sizes with their letters, passes with the dial, the stop, room to write what was measured. */
export const JobCardSheet = ({ box, runs, woods, calculated }: Props) => {
  const { unit } = settings.value;
  const { plan } = box;
  return (
    <>
      <header>
        <h1>{jointWords.ofBox(box.number, box.name)}</h1>
        <p>
          {woods} · {plan.pitch.text} · {planWords.routeSays[plan.route]}
        </p>
      </header>
      <div class="pictures">
        <PlanSection calculated={calculated} plan={plan} />
        <JointGlance calculated={calculated} pitch={plan.pitch.text} />
      </div>
      <div class="columns">
        <Sizes heading={planWords.recessHead(plan.recessIn)} rows={recessRows(calculated, plan, unit)} />
        <Sizes heading={planWords.tenonHead(plan.recessIn)} rows={tenonRows(calculated, unit)} />
        {(['recess', 'tenon'] as const).map((part) => (
          <Passes key={part} part={part} box={box} runs={runs} calculated={calculated} />
        ))}
      </div>
      <Sizes heading={words.measured} rows={measuredRows(calculated)} />
      <p class="cautions">
        {words.cautions} {words.lidOn[calculated.given.rig.hand]}
      </p>
      <p class="soft">{words.by}</p>
    </>
  );
};

interface PassesProps {
  readonly part: Part;
  readonly box: Box;
  readonly runs: ReadonlyMap<string, RunState>;
  readonly calculated: CalculatedBox;
}

const Passes = ({ part, box, runs, calculated }: PassesProps) => {
  const { unit } = settings.value;
  const passes = passesOf(part, calculated);
  const run = latestRun(box, part, runs);
  const counted = run && turnsToStop(run);
  const { recessTurns, tenonTurns } = calculated.plan.lengths;
  const stop = counted === null ? (part === 'recess' ? recessTurns : tenonTurns) : turns(counted);
  const rows: SizeRow[] = (passes.ok ? passes.value : []).map(({ depth, dial }, i) => ({
    name: words.pass(i + 1, sizeWords(depth, unit)),
    value: dial ? dialTargetWords(dial) : '—',
    ...(dial || i > 0 ? {} : { note: words.noDial }),
  }));
  return (
    <Sizes
      heading={words.passesOf(partName[part])}
      rows={[
        ...rows,
        {
          name: words.stop,
          value: words.stopOf(writeTurns(stop)),
          note: counted === null ? words.stopNote : words.stopCounted,
        },
      ]}
    />
  );
};

/** What is measured, or a blank to write it on. */
const measuredRows = ({ bore, isBoreMeasured, tenon }: CalculatedBox): SizeRow[] => {
  const { unit } = settings.value;
  return [
    { name: words.bore, value: isBoreMeasured ? sizeWords(bore.mean, unit) : words.blank },
    { name: words.tenon, value: tenon ? sizeWords(tenon.mean, unit) : words.blank },
  ];
};
