import { keepProcedure } from '../../../app/procedures.ts';
import { LONGEST } from '../../../domain/log/bounds.ts';
import { changeStep, fixedMovements, readSentence } from '../../../domain/setup/edit-procedure.ts';
import { GUARDS, MOVEMENTS, type Step } from '../../../domain/setup/procedure.ts';
import { readText } from '../../../domain/units/read-text.ts';
import { Choices } from '../../parts/choices.tsx';
import { Field } from '../../parts/field.tsx';
import { someOf } from '../../parts/options.ts';
import { useForm } from '../../parts/use-form.ts';
import { movementWord } from '../../set-up/words.ts';
import { guardWord, procedureWords as words } from './words.ts';

/** Choices lie in the form as text, so that a draft keeps them with the rest. */
const asText = (chosen: readonly string[]): string => chosen.join(' ');

/** The words of one step, what it guards against, and which movements ask it again; a hold point keeps its words. */
export const StepEditor = ({ id, step, onClose }: { id: string; step: Step; onClose: () => void }) => {
  const form = useForm(`step ${id} ${step.key}`, {
    sentence: step.sentence,
    why: step.why,
    guards: asText(step.guards),
    reopenedBy: asText(step.reopenedBy),
  });
  const { values } = form;
  const guards = someOf(GUARDS, values.value.guards);
  const reopenedBy = someOf(MOVEMENTS, values.value.reopenedBy);
  const fixed = fixedMovements(step);
  return (
    <form
      onSubmit={async (event) => {
        event.preventDefault();
        const sentence = form.read('sentence', readSentence);
        const why = form.read('why', (field, typed) => readText(field, typed, LONGEST.note));
        if (!sentence || why === undefined) return;
        const change = { sentence, why, guards, reopenedBy };
        if (!(await keepProcedure(id, (p) => changeStep(p, step.key, change), true))) return;
        form.done();
        onClose();
      }}
    >
      {step.hold ? (
        <p>{words.holdKeeps}</p>
      ) : (
        <Field form={form} name="sentence" label={words.sentence} rows={2} />
      )}
      <Field form={form} name="why" label={words.why} rows={3} />
      <Choices
        legend={words.guards}
        options={GUARDS.map((value) => ({ value, word: guardWord[value] }))}
        chosen={guards}
        onChange={(chosen) => form.set('guards', asText(chosen))}
      />
      {!step.everyTime && (
        <Choices
          legend={words.reopenedBy}
          options={MOVEMENTS.filter((value) => !fixed.includes(value)).map((value) => ({
            value,
            word: movementWord[value],
          }))}
          chosen={reopenedBy}
          onChange={(chosen) => form.set('reopenedBy', asText(chosen))}
        />
      )}
      <div class="row">
        <button type="submit">{words.keep}</button>
        <button
          type="button"
          onClick={() => {
            form.done();
            onClose();
          }}
        >
          {words.leave}
        </button>
      </div>
    </form>
  );
};
