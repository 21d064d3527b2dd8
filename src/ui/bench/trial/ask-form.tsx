import { settings } from '../../../app/session.ts';
import { answerQuestion, type TrialAnswers } from '../../../app/trials.ts';
import type { Trial } from '../../../domain/box/records.ts';
import {
  type MarksAt,
  type MarksOn,
  marks,
  marksAt,
  type Seated,
  seated,
  type ThreadState,
  threads,
} from '../../../domain/box/trial-words.ts';
import { MEASURED_LIMITS } from '../../../domain/diagnosis/measured-limits.ts';
import type { Field as Asked } from '../../../domain/diagnosis/view.ts';
import type { Part } from '../../../domain/setup/events.ts';
import { mm } from '../../../domain/units/brands.ts';
import { readLength, readTurns } from '../../../domain/units/read-quantity.ts';
import { writeLength } from '../../../domain/units/write-quantity.ts';
import { Choice } from '../../parts/choice.tsx';
import { Choices } from '../../parts/choices.tsx';
import { Field } from '../../parts/field.tsx';
import { useAct } from '../../parts/use-act.ts';
import { type Form, useForm } from '../../parts/use-form.ts';
import { listOf } from './answers.ts';
import { CrestScale } from './crest-scale.tsx';
import { askWords, fieldWord, twoReadings, questionWords as words } from './question-words.ts';
import { marksAtWord, marksOnWord, seatedWord, threadWord } from './words.ts';

const BLANK = { one: '', two: '' };
type AskedForm = Form<keyof typeof BLANK>;
/** Diameters that a caliper takes of a joint, mm. */
const READING = { min: mm(1), max: mm(1000) };
type Difference = keyof typeof twoReadings;
const isDifference = (field: Asked): field is Difference => field in twoReadings;

interface Props {
  readonly boxId: string;
  readonly trial: Trial;
  readonly field: Asked;
  readonly part: Part;
  readonly onDone: () => void;
}

/** One thing that the advice asks, looked at or measured, saved with the trial. */
export const AskForm = ({ boxId, trial, field, part, onDone }: Props) => {
  const form = useForm(`ask ${trial.id} ${field}`, BLANK);
  const save = useAct(async (_, answer: Partial<TrialAnswers>) => {
    if (!(await answerQuestion(boxId, trial.id, field, answer))) return false;
    form.done();
    onDone();
    return true;
  });
  return (
    <form
      class="ask"
      onSubmit={(event) => {
        event.preventDefault();
        const answer = answerOf(form, field, part);
        if (answer) save.act(answer);
      }}
    >
      <header>
        <h1>{fieldWord[field]}</h1>
        <button type="button" onClick={onDone}>
          {words.back}
        </button>
      </header>
      <p>{askWords(field, part)}</p>
      <Inputs form={form} field={field} />
      <div class="acts">
        <button type="button" onClick={() => save.act({})}>
          {words.cannotTell}
        </button>
        <button type="submit" class="main" disabled={form.values.value.one.trim() === ''}>
          {words.save}
        </button>
      </div>
    </form>
  );
};

const Inputs = ({ form, field }: { form: AskedForm; field: Asked }) => {
  const { one, two } = form.values.value;
  if (isDifference(field))
    return (
      <>
        <Field form={form} name="one" label={twoReadings[field][0]} />
        <Field form={form} name="two" label={twoReadings[field][1]} />
      </>
    );
  switch (field) {
    case 'seated':
      return (
        <Choice<Seated>
          legend={fieldWord[field]}
          options={seated.map((value) => ({ value, word: seatedWord[value] }))}
          chosen={(one || null) as Seated | null}
          onChoose={(value) => form.set('one', value)}
        />
      );
    case 'threads':
      return (
        <Choices<ThreadState>
          legend={fieldWord[field]}
          options={threads.map((value) => ({ value, word: threadWord[value] }))}
          chosen={listOf(one)}
          onChange={(chosen) => form.set('one', chosen.join(' '))}
        />
      );
    case 'marks':
      return (
        <>
          <Choice<MarksOn>
            legend={words.marksOn}
            options={marks.map((value) => ({ value, word: marksOnWord[value] }))}
            chosen={(one || null) as MarksOn | null}
            onChoose={(value) => form.set('one', value)}
          />
          <Choice<MarksAt>
            legend={words.marksAt}
            options={marksAt.map((value) => ({ value, word: marksAtWord[value] }))}
            chosen={(two || null) as MarksAt | null}
            onChoose={(value) => form.set('two', value)}
          />
        </>
      );
    case 'crestFlat':
      return (
        <>
          <CrestScale onPick={(text) => form.set('one', text)} />
          <Field form={form} name="one" label={words.width} hint={words.scaleHint} />
        </>
      );
    case 'endPlay':
      return <Field form={form} name="one" label={words.play} hint={words.playHint} />;
    case 'turnsOn':
      return <Field form={form} name="one" label={words.turns} />;
    default:
      return <Field form={form} name="one" label={words.gap} hint={words.gapHint} />;
  }
};

/** What the form says; undefined leaves a refusal beside a field. */
const answerOf = (form: AskedForm, field: Asked, part: Part): Partial<TrialAnswers> | undefined => {
  const { unit } = settings.value;
  const { one, two } = form.values.value;
  if (isDifference(field)) {
    const read = (name: keyof typeof BLANK) =>
      form.read(name, (label, typed) => readLength(label, typed, unit, READING));
    const [first, second] = [read('one'), read('two')];
    if (!first || !second) return undefined;
    const by = mm(first.mm - second.mm);
    return { [field]: { mm: by, text: writeLength(by, unit === 'in' ? 'thou' : 'mm') } };
  }
  switch (field) {
    case 'seated':
      return { seated: one as Seated };
    case 'threads':
      return { threads: listOf<ThreadState>(one) };
    case 'marks':
      return { marks: { on: one as MarksOn, at: (two || 'all-along') as MarksAt } };
    case 'turnsOn': {
      const turnsOn = form.read('one', (label, typed) => readTurns(label, typed, MEASURED_LIMITS.turnsOn));
      return turnsOn === undefined ? undefined : { turnsOn };
    }
    default: {
      const length = form.read('one', (label, typed) =>
        readLength(label, typed, unit, MEASURED_LIMITS[field]),
      );
      if (!length) return undefined;
      return field === 'crestFlat' ? { crestFlat: { part, width: length } } : { [field]: length };
    }
  }
};
