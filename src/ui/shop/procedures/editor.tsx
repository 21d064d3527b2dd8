import { useSignal } from '@preact/signals';
import { keepProcedure, removeProcedure } from '../../../app/procedures.ts';
import { addStep, moveStep, readSentence, retireStep } from '../../../domain/setup/edit-procedure.ts';
import type { Procedure, Step } from '../../../domain/setup/procedure.ts';
import { newId } from '../../../platform/ids.ts';
import { Field } from '../../parts/field.tsx';
import { useForm } from '../../parts/use-form.ts';
import { go, hrefTo } from '../../shell/route.ts';
import { StepEditor } from './step-editor.tsx';
import { StepList } from './step-list.tsx';
import { procedureWords as words } from './words.ts';

/** The user's own procedure: its name, order, words, what re-opens a step; hold points stay. */
export const ProcedureEditor = ({ id, procedure }: { id: string; procedure: Procedure }) => {
  const editing = useSignal<string | null>(null);
  const sure = useSignal(false);
  const added = useForm(`new step ${id}`, { sentence: '' });
  const named = useForm(`procedure ${id}`, { name: procedure.name });

  const move = (step: Step, by: -1 | 1, word: string) => (
    <button
      type="button"
      disabled={moveStep(procedure, step.key, by) === procedure}
      onClick={() => keepProcedure(id, (p) => moveStep(p, step.key, by))}
    >
      {word}
    </button>
  );
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
        {move(step, -1, words.up)}
        {move(step, 1, words.down)}
        <button
          type="button"
          onClick={() => {
            editing.value = step.key;
          }}
        >
          {words.change}
        </button>
        {!step.hold && (
          <button type="button" onClick={() => keepProcedure(id, (p) => retireStep(p, step.key), true)}>
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
          const sentence = added.read('sentence', readSentence);
          if (sentence && (await keepProcedure(id, (p) => addStep(p, newId(), sentence)))) added.done();
        }}
      >
        <Field form={added} name="sentence" label={words.addSentence} />
        <button type="submit">{words.add}</button>
      </form>
      <form
        onSubmit={async (event) => {
          event.preventDefault();
          const name = named.read('name', readSentence);
          if (name && (await keepProcedure(id, (p) => ({ ...p, name })))) named.done();
        }}
      >
        <Field form={named} name="name" label={words.name} />
        <button type="submit">{words.rename}</button>
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
      <p class="soft">
        {words.replaced} <a href={hrefTo('shop', 'backups')}>{words.toReplaced}</a>
      </p>
    </>
  );
};
