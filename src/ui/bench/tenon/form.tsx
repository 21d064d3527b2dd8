import { changeBox } from '../../../app/boxes.ts';
import { settings } from '../../../app/session.ts';
import { seqOf, withItem } from '../../../domain/box/with-item.ts';
import { readLength } from '../../../domain/units/read-quantity.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { keysOf, oneOf, optionsOf } from '../../parts/options.ts';
import { Switches } from '../../parts/switches.tsx';
import { useAct } from '../../parts/use-act.ts';
import { useForm } from '../../parts/use-form.ts';
import { measureWords, tenonWords as words } from '../measure-words.ts';
import { unitName } from '../plan/words.ts';

interface Props {
  readonly boxId: string;
  /** What the form is for now; nothing before the first reading. */
  readonly heading: string | null;
  readonly overCrests: boolean;
  /** Its thread is cut: read plain, it was turned again. */
  readonly isThreaded: boolean;
}

/** Tenons that a caliper and a lathe can hold, mm. */
const TENON = { min: 6, max: 400 };

/** One reading over the tenon. */
export const TenonForm = ({ boxId, heading, overCrests, isThreaded }: Props) => {
  const { unit } = settings.value;
  const form = useForm(`tenon ${boxId}`, {
    diameter: '',
    where: 'end',
    overCrests: overCrests ? 'yes' : '',
  });
  const texts = form.values.value;

  const save = useAct(async (id) => {
    const diameter = form.read('diameter', (field, typed) => readLength(field, typed, unit, TENON));
    if (!diameter) return false;
    const reading = {
      id,
      where: oneOf(keysOf(words.whereWord), texts.where) ?? 'end',
      diameter,
      overCrests: texts.overCrests !== '',
    };
    const saved = await changeBox(
      boxId,
      (box) => ({ ...box, tenon: withItem(box.tenon, { ...reading, seq: seqOf(box, id) }) }),
      'tenon',
    );
    if (!saved) return false;
    form.done();
    // The answer stands at the top.
    scrollTo(0, 0);
    return true;
  });

  return (
    <form
      class="plan-form"
      onSubmit={(event) => {
        event.preventDefault();
        save.act();
      }}
    >
      {heading && <h3>{heading}</h3>}
      <Field form={form} name="diameter" label={words.diameter} hint={unitName[unit]} />
      <Choice
        legend={words.where}
        options={optionsOf(words.whereWord)}
        chosen={texts.where}
        onChoose={(value) => form.set('where', value)}
      />
      <Switches
        switches={[
          {
            word: measureWords.overCrests,
            on: texts.overCrests !== '',
            set: (on) => form.set('overCrests', on ? 'yes' : ''),
          },
        ]}
      />
      {texts.overCrests === '' && isThreaded && <p class="soft">{measureWords.turnedAgain}</p>}
      <button type="submit" class={heading ? '' : 'main'} disabled={save.busy}>
        {measureWords.save}
      </button>
    </form>
  );
};
