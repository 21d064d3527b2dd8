import { useId } from 'preact/hooks';
import { beginExperiment, openQuestions } from '../../app/begin-experiment.ts';
import { BLOCK, EXPERIMENT_BOXES } from '../../domain/experiment/draw-lots.ts';
import type { PowerAt } from '../../domain/experiment/experiment-power.ts';
import type { ExperimentQuestion } from '../../domain/experiment/experiment-questions.ts';
import { readCount } from '../../domain/units/read-quantity.ts';
import { Choice } from '../parts/choice.tsx';
import { Field } from '../parts/field.tsx';
import { useAct } from '../parts/use-act.ts';
import { useForm } from '../parts/use-form.ts';
import { useLive } from '../parts/use-live.ts';
import { experimentWords as words } from './experiment-words.ts';
import { PowerList } from './power-list.tsx';

interface Props {
  readonly power: readonly PowerAt[];
}

/** The form that plans an experiment: which step, what is measured, how many boxes, and the power of that many. */
const BeginExperiment = ({ power }: Props) => {
  const questions = useLive(openQuestions, ['box', 'procedure']).value;
  if (!questions) return null;
  const first = questions.find(({ measures }) => measures[0]?.kind === 'reading') ?? questions[0];
  return first ? <Plan questions={questions} first={first} power={power} /> : <p>{words.noStep}</p>;
};

const Plan = ({
  questions,
  first,
  power,
}: Props & { questions: readonly ExperimentQuestion[]; first: ExperimentQuestion }) => {
  const id = useId();
  const form = useForm('experiment', { step: first.step, measure: '0', boxes: '40' });
  const question = questions.find((each) => each.step === form.values.value.step) ?? first;
  const measure = question.measures[Number(form.values.value.measure)] ?? question.measures[0];
  const begin = useAct(async (fresh) => {
    const count = form.read('boxes', (field, text) => readCount(field, text, EXPERIMENT_BOXES));
    if (count === undefined || !measure) return false;
    const saved = await beginExperiment(fresh, question, measure, count - (count % BLOCK));
    if (saved) form.done();
    return saved;
  });
  if (!measure) return null;
  const typed = Number(form.values.value.boxes);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        begin.act();
      }}
    >
      <div class="field">
        <label for={id}>{words.step}</label>
        <select
          id={id}
          value={question.step}
          onChange={(event) => {
            form.set('step', event.currentTarget.value);
            form.set('measure', '0');
          }}
        >
          {questions.map(({ step: key, sentence }) => (
            <option key={key} value={key}>
              {sentence}
            </option>
          ))}
        </select>
      </div>
      <Choice
        legend={words.measure}
        options={question.measures.map((each, i) => ({ value: `${i}`, word: words.measures(each) }))}
        chosen={`${question.measures.indexOf(measure)}`}
        onChoose={(value) => form.set('measure', value)}
      />
      <p class="soft">{words.measureAbout(measure)}</p>
      <Field form={form} name="boxes" label={words.boxes} keys="numeric" />
      <PowerList power={power} measure={measure} boxes={typed - (typed % BLOCK)} />
      <button type="submit" disabled={begin.busy}>
        {words.begin}
      </button>
    </form>
  );
};

export default BeginExperiment;
