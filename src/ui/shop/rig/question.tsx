import { changeRig } from '../../../app/rigs.ts';
import { settings } from '../../../app/session.ts';
import type { Rig } from '../../../domain/box/records.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { useForm } from '../../parts/use-form.ts';
import { goInstead, hrefTo } from '../../shell/route.ts';
import {
  answerText,
  askedIn,
  type ChoiceQuestion,
  chosen,
  forgotten,
  isChoice,
  readAnswer,
  type TypedQuestion,
} from './answer.ts';
import { ScrapPair } from './scrap-pair.tsx';
import { RIG_QUESTIONS, type RigQuestion, rigOptions, rigWords as words } from './words.ts';

interface Props {
  readonly rigId: string;
  readonly rig: Rig;
  readonly question: RigQuestion;
}

/** One question about the rig: what, why, the answer, or "don't know yet" and what is done then. */
export const RigQuestionPage = ({ rigId, rig, question }: Props) => {
  const asked = askedIn(settings.value.unit)[question];
  const at = RIG_QUESTIONS.indexOf(question);
  const goOn = () => {
    const next = RIG_QUESTIONS[at + 1];
    goInstead('shop', 'rig', next ?? 'all', rigId);
    scrollTo(0, 0);
  };
  const change = (part: Partial<Rig>) => changeRig(rigId, (now) => ({ ...now, ...part }));
  const props = { rig, rigId, change, goOn, label: asked.short, hint: asked.hint };
  return (
    <main class="page shop rig">
      <div class="row spread">
        <a href={hrefTo('shop', 'rig', 'all', rigId)}>{words.all}</a>
        <span class="soft">{words.progress(at + 1, RIG_QUESTIONS.length)}</span>
      </div>
      <h1>{asked.ask}</h1>
      <p>{asked.why}</p>
      {asked.care && <p class="care">{asked.care}</p>}
      {isChoice(question) ? (
        <Chosen {...props} question={question} />
      ) : (
        <Typed key={answerText(rig, question)} {...props} question={question} />
      )}
      {asked.unknown && (
        <>
          <button
            type="button"
            onClick={async () => {
              if (await change(forgotten(question))) goOn();
            }}
          >
            {words.dontKnow}
          </button>
          <p class="soft">{asked.unknown}</p>
        </>
      )}
      {question === 'tipFlat' && <ScrapPair rigId={rigId} rig={rig} />}
    </main>
  );
};

interface Answering {
  readonly rig: Rig;
  readonly rigId: string;
  readonly change: (part: Partial<Rig>) => Promise<boolean>;
  readonly goOn: () => void;
  readonly label: string;
  readonly hint: string | undefined;
}

const Chosen = ({ rig, question, change, goOn, label }: Answering & { question: ChoiceQuestion }) => (
  <>
    <Choice
      legend={label}
      options={Object.entries(rigOptions[question]).map(([value, word]) => ({ value, word }))}
      chosen={rig[question] === null ? null : String(rig[question])}
      onChoose={(value) => change(chosen(question, value))}
    />
    <button type="button" class="main" onClick={goOn}>
      {words.goOn}
    </button>
  </>
);

const Typed = ({
  rig,
  rigId,
  question,
  change,
  goOn,
  label,
  hint,
}: Answering & { question: TypedQuestion }) => {
  const form = useForm(`rig ${rigId} ${question}`, { answer: answerText(rig, question) ?? '' });
  const keep = async (event: Event) => {
    event.preventDefault();
    const part = form.read('answer', (_, typed) => readAnswer(question, typed, settings.value.unit));
    if (!part || !(await change(part))) return;
    form.done();
    goOn();
  };
  return (
    <form onSubmit={keep}>
      <Field form={form} name="answer" label={label} {...(hint ? { hint } : {})} />
      <button type="submit" class="main">
        {words.keep}
      </button>
    </form>
  );
};
