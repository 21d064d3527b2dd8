import '../dock.css';
import { settings } from '../../../app/session.ts';
import { recordTrial } from '../../../app/trials.ts';
import { goingOn, marks, marksAt, seated, threads } from '../../../domain/box/trial-words.ts';
import { Choice } from '../../parts/choice.tsx';
import { Choices } from '../../parts/choices.tsx';
import { Field } from '../../parts/field.tsx';
import { someOf } from '../../parts/options.ts';
import { Switches } from '../../parts/switches.tsx';
import { useAct } from '../../parts/use-act.ts';
import { useForm } from '../../parts/use-form.ts';
import { asksFloor, BLANK, trialAnswers } from './answers.ts';
import {
  goingOnWord,
  marksAtWord,
  marksOnWord,
  seatedWord,
  threadWord,
  trialWords as words,
} from './words.ts';

const optionsIn = <T extends string>(keys: readonly T[], word: Readonly<Record<T, string>>) =>
  keys.map((value) => ({ value, word: word[value] }));

interface Props {
  readonly boxId: string;
  /** A lid was right before: this may be a new fit, after finish or drying. */
  readonly wasRight: boolean;
  readonly onRecorded: () => void;
}

/** What a trial fit was like, in the words of the trade; what is ticked is kept as a draft until it is recorded. */
export const TrialForm = ({ boxId, wasRight, onRecorded }: Props) => {
  const form = useForm(`trial ${boxId}`, BLANK);
  const { values } = form;
  const { unit } = settings.value;

  const save = useAct(async (id) => {
    const trial = trialAnswers(form, unit);
    if (!trial || !(await recordTrial(boxId, id, trial))) return false;
    form.done();
    onRecorded();
    return true;
  });

  const saidNothing = !Object.entries(values.value).some(([name, text]) => name !== 'afterFinish' && text);

  return (
    <form
      class="trial"
      onSubmit={(event) => {
        event.preventDefault();
        save.act();
      }}
    >
      <Choices
        legend={words.goingOn}
        options={optionsIn(goingOn, goingOnWord)}
        chosen={someOf(goingOn, values.value.goingOn)}
        onChange={(chosen) => form.set('goingOn', chosen.join(' '))}
      />
      <Choice
        legend={words.seated}
        options={optionsIn(seated, seatedWord)}
        chosen={values.value.seated}
        onChoose={(value) => form.set('seated', value)}
      />
      <Choices
        legend={words.threads}
        options={optionsIn(threads, threadWord)}
        chosen={someOf(threads, values.value.threads)}
        onChange={(chosen) => form.set('threads', chosen.join(' '))}
      />
      <Choice
        legend={words.marks}
        options={optionsIn(marks, marksOnWord)}
        chosen={values.value.marksOn}
        onChoose={(value) => form.set('marksOn', value)}
      />
      {values.value.marksOn !== '' && (
        <Choice
          legend={words.marksAt}
          options={optionsIn(marksAt, marksAtWord)}
          chosen={values.value.marksAt}
          onChoose={(value) => form.set('marksAt', value)}
        />
      )}
      <div class="row">
        <Field form={form} name="endPlay" label={words.endPlay} hint={words.endPlayHint} />
        <Field form={form} name="turnsOn" label={words.turnsOn} />
      </div>
      {(asksFloor(values.value.goingOn) || values.value.bottomGap !== '') && (
        <Field form={form} name="bottomGap" label={words.bottomGap} hint={words.bottomGapHint} />
      )}
      {wasRight && (
        <Switches
          switches={[
            {
              word: words.afterFinish,
              on: values.value.afterFinish !== '',
              set: (on) => form.set('afterFinish', on ? 'yes' : ''),
            },
          ]}
        />
      )}
      {saidNothing ? (
        <p class="soft">{words.sayOne}</p>
      ) : (
        <div class="dock">
          <button type="submit" class="main" disabled={save.busy}>
            {words.whatNow}
          </button>
        </div>
      )}
    </form>
  );
};
