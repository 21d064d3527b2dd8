import { useSignal } from '@preact/signals';
import { allBothWays, changeBothWays } from '../../../app/both-ways.ts';
import { beginBothWays, standingOf } from '../../../app/both-ways-trial.ts';
import { logId } from '../../../app/session.ts';
import { trialPower } from '../../../domain/findings/both-ways.ts';
import type { JointTable } from '../../../domain/findings/joint-row.ts';
import { readCount } from '../../../domain/units/read-quantity.ts';
import { Field } from '../../parts/field.tsx';
import { useForm } from '../../parts/use-form.ts';
import { useLive } from '../../parts/use-live.ts';
import { bothWaysWords as words } from '../../text/both-ways-words.ts';
import { useStepNames } from './use-step-names.ts';

/** The trial under way, or the way to begin one. */
const BothWays = ({ table }: { table: JointTable }) => {
  const trials = useLive(allBothWays, ['both-ways', 'log'], logId.value).value;
  const open = trials?.find(({ plan }) => !plan.givenUp);
  return (
    <section>
      <h2>{words.title}</h2>
      <p class="soft">{words.about}</p>
      {open && (
        <>
          <p>{words.underWay(open.plan.sentence, open.plan.boxes.length, open.plan.lots.length)}</p>
          <p>{words.standing(standingOf(open.plan, table.rows))}</p>
          <button
            type="button"
            onClick={() => changeBothWays(open.id, (plan) => ({ ...plan, givenUp: true }))}
          >
            {words.giveUp}
          </button>
        </>
      )}
      {trials && !open && <Begin table={table} />}
    </section>
  );
};

/** What a log of this kind commonly looks like, for telling the power beforehand (shares right). */
const EXPECTED = { measure: 'right', withRate: 0.85, withoutRate: 0.65 } as const;

const Begin = ({ table }: { table: JointTable }) => {
  const nameOf = useStepNames();
  const step = useSignal(table.steps[0]?.key ?? '');
  const form = useForm('both ways', { boxes: '40' });
  const boxes = Number(form.values.value.boxes);
  return (
    <form
      onSubmit={async (event) => {
        event.preventDefault();
        const count = form.read('boxes', (field, typed) => readCount(field, typed, { min: 8, max: 200 }));
        if (count === undefined || step.value === '') return;
        if (await beginBothWays(step.value, nameOf(step.value), count - (count % 4))) form.done();
      }}
    >
      <label>
        {words.step}
        <select
          value={step.value}
          onChange={(event) => {
            step.value = event.currentTarget.value;
          }}
        >
          {table.steps.map(({ key }) => (
            <option key={key} value={key}>
              {nameOf(key)}
            </option>
          ))}
        </select>
      </label>
      <Field form={form} name="boxes" label={words.boxes} keys="numeric" />
      {boxes >= 8 && boxes <= 200 && <p class="soft">{words.power(boxes, trialPower(boxes, EXPECTED))}</p>}
      <button type="submit">{words.begin}</button>
    </form>
  );
};

export default BothWays;
