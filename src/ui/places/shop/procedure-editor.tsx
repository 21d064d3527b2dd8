import { useSignal } from '@preact/signals';
import { keepProcedure, removeProcedure } from '../../../app/procedures.ts';
import { addStep, moveStep, readSentence, retireStep } from '../../../domain/setup/edit-procedure.ts';
import type { Procedure, Step } from '../../../domain/setup/procedure.ts';
import { newId } from '../../../platform/ids.ts';
import { Field } from '../../parts/field.tsx';
import { useForm } from '../../parts/use-form.ts';
import { go } from '../../shell/route.ts';
import { procedureWords as words } from '../../text/procedure-words.ts';
import { StepEditor } from './step-editor.tsx';
import { StepList } from './step-list.tsx';

/** The user's own procedure: order, words, what re-opens a step; hold points stay. */
export const ProcedureEditor = ({ id, procedure }: { id: string; procedure: Procedure }) => {
  const editing = useSignal<string | null>(null);
  const sure = useSignal(false);
  const form = useForm(`new step ${id}`, { sentence: '' });

  const under = (step: Step) =>
    editing.value === step.key ? (
      <StepEditor
        id={id}
        step={step}
        onClose={() => {
          editing.value = null;
        }}
      />
    ) : (
      <div class="row">
        <button type="button" onClick={() => keepProcedure(id, (p) => moveStep(p, step.key, -1))}>
          {words.up}
        </button>
        <button type="button" onClick={() => keepProcedure(id, (p) => moveStep(p, step.key, 1))}>
          {words.down}
        </button>
        <button
          type="button"
          onClick={() => {
            editing.value = step.key;
          }}
        >
          {words.change}
        </button>
        {!step.hold && (
          <button type="button" onClick={() => keepProcedure(id, (p) => retireStep(p, step.key))}>
            {words.retire}
          </button>
        )}
      </div>
    );

  return (
    <>
      <StepList procedure={procedure} under={under} />
      <form
        onSubmit={async (event) => {
          event.preventDefault();
          const sentence = form.read('sentence', readSentence);
          if (sentence && (await keepProcedure(id, (p) => addStep(p, newId(), sentence)))) form.done();
        }}
      >
        <Field form={form} name="sentence" label={words.addSentence} />
        <button type="submit">{words.add}</button>
      </form>
      <button
        type="button"
        onClick={async () => {
          if (!sure.value) sure.value = true;
          else if (await removeProcedure(id)) go('shop', 'procedures');
        }}
      >
        {sure.value ? words.removeSure : words.remove}
      </button>
    </>
  );
};
