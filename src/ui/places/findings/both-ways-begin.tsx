import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { beginBothWays } from '../../../app/both-ways-trial.ts';
import { BLOCK, TRIAL_BOXES } from '../../../domain/findings/draw-lots.ts';
import type { StepMeaning } from '../../../domain/findings/joint-row.ts';
import type { PowerAt } from '../../../domain/findings/trial-power.ts';
import { readCount } from '../../../domain/units/read-quantity.ts';
import { Field } from '../../parts/field.tsx';
import { useForm } from '../../parts/use-form.ts';
import { bothWaysWords as words } from '../../text/both-ways-words.ts';

interface Props {
  readonly steps: readonly StepMeaning[];
  readonly power: readonly PowerAt[];
}

/** Which step, how many boxes, and what so many can tell, before the lots are drawn. */
const BeginBothWays = ({ steps, power }: Props) => {
  const id = useId();
  const step = useSignal(steps[0]?.key ?? '');
  const form = useForm('both ways', { boxes: '40' });
  const typed = Number(form.values.value.boxes);
  const at = power.find(({ boxes }) => boxes === typed - (typed % BLOCK));
  const begin = async () => {
    const count = form.read('boxes', (field, text) => readCount(field, text, TRIAL_BOXES));
    const chosen = steps.find(({ key }) => key === step.value);
    if (count === undefined || !chosen) return;
    if (await beginBothWays(chosen.key, chosen.sentence, count - (count % BLOCK))) form.done();
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        begin();
      }}
    >
      <label for={id}>{words.step}</label>
      <select
        id={id}
        value={step.value}
        onChange={(event) => {
          step.value = event.currentTarget.value;
        }}
      >
        {steps.map(({ key, sentence }) => (
          <option key={key} value={key}>
            {sentence}
          </option>
        ))}
      </select>
      <Field form={form} name="boxes" label={words.boxes} keys="numeric" />
      {at && <p class="soft">{words.power(at)}</p>}
      <button type="submit">{words.begin}</button>
    </form>
  );
};

export default BeginBothWays;
