import { useSignal } from '@preact/signals';
import { keepProcedure } from '../../../app/procedures.ts';
import { changeStep, readSentence } from '../../../domain/setup/edit-procedure.ts';
import { GUARDS, MOVEMENTS, type Step } from '../../../domain/setup/procedure.ts';
import { Choices } from '../../parts/choices.tsx';
import { Field } from '../../parts/field.tsx';
import { useForm } from '../../parts/use-form.ts';
import { guardWord, procedureWords as words } from '../../text/procedure-words.ts';
import { movementWord } from '../../text/set-up-words.ts';

/** The words of one step, what it guards against, and which movements ask it again. */
export const StepEditor = ({ id, step, onClose }: { id: string; step: Step; onClose: () => void }) => {
  const form = useForm(`step ${id} ${step.key}`, { sentence: step.sentence, why: step.why });
  const guards = useSignal(step.guards);
  const reopenedBy = useSignal(step.reopenedBy);
  return (
    <form
      onSubmit={async (event) => {
        event.preventDefault();
        const sentence = form.read('sentence', readSentence);
        if (!sentence) return;
        const change = {
          sentence,
          why: form.values.value.why.trim(),
          guards: guards.value,
          reopenedBy: reopenedBy.value,
        };
        if (!(await keepProcedure(id, (p) => changeStep(p, step.key, change)))) return;
        form.done();
        onClose();
      }}
    >
      <Field form={form} name="sentence" label={words.sentence} />
      <Field form={form} name="why" label={words.why} />
      <Choices
        legend={words.guards}
        options={GUARDS.map((value) => ({ value, word: guardWord[value] }))}
        chosen={guards.value}
        onChange={(chosen) => {
          guards.value = chosen;
        }}
      />
      {!step.everyTime && (
        <Choices
          legend={words.reopenedBy}
          options={MOVEMENTS.map((value) => ({ value, word: movementWord[value] }))}
          chosen={reopenedBy.value}
          onChange={(chosen) => {
            reopenedBy.value = chosen;
          }}
        />
      )}
      <div class="row">
        <button type="submit">{words.keep}</button>
        <button type="button" onClick={onClose}>
          {words.leave}
        </button>
      </div>
    </form>
  );
};
