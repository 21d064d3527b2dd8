import { useSignal } from '@preact/signals';
import { keepProcedure, removeProcedure } from '../../../app/procedures.ts';
import { addStep, moveStep, readSentence, retireStep } from '../../../domain/setup/edit-procedure.ts';
import type { Procedure, Step } from '../../../domain/setup/procedure.ts';
import { Field } from '../../parts/field.tsx';
import { useAct } from '../../parts/use-act.ts';
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

  const add = useAct(async (fresh) => {
    const sentence = added.read('sentence', readSentence);
    const saved =
      sentence !== undefined &&
      // A retry of what was saved unheard adds no second one.
      (await keepProcedure(id, (p) =>
        p.steps.some(({ key }) => key === fresh) ? p : addStep(p, fresh, sentence),
      ));
    if (saved) added.done();
    return saved;
  });
  const rename = useAct(async () => {
    const name = named.read('name', readSentence);
    if (name && (await keepProcedure(id, (p) => ({ ...p, name })))) named.done({ name });
  });

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
        onSubmit={(event) => {
          event.preventDefault();
          add.act();
        }}
      >
        <Field form={added} name="sentence" label={words.addSentence} />
        <button type="submit" disabled={add.busy}>
          {words.add}
        </button>
      </form>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          rename.act();
        }}
      >
        <Field form={named} name="name" label={words.name} />
        <button type="submit" disabled={rename.busy}>
          {words.rename}
        </button>
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
