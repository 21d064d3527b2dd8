import { changeBox } from '../../../app/boxes.ts';
import { settings } from '../../../app/session.ts';
import type { BoreReading } from '../../../domain/box/records.ts';
import { seqOf, withItem } from '../../../domain/box/with-item.ts';
import type { Length } from '../../../domain/units/length.ts';
import { readLength } from '../../../domain/units/read-quantity.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { keysOf, oneOf, optionsOf } from '../../parts/options.ts';
import { Switches } from '../../parts/switches.tsx';
import { useAct } from '../../parts/use-act.ts';
import { useForm } from '../../parts/use-form.ts';
import { measureWords, boreWords as words } from '../measure-words.ts';
import { unitName } from '../plan/words.ts';

interface Props {
  readonly boxId: string;
  readonly isFirst: boolean;
  readonly where: BoreReading['where'];
  readonly overCrests: boolean;
  /** Its thread is cut: read plain, it was turned again. */
  readonly isThreaded: boolean;
}

/** Bores that a caliper and a lathe can hold, mm. */
const BORE = { min: 6, max: 400 };

/** One reading: one number is enough. */
export const BoreForm = ({ boxId, isFirst, where, overCrests, isThreaded }: Props) => {
  const { unit } = settings.value;
  const form = useForm(`bore ${boxId}`, {
    along: '',
    across: '',
    where: `${where}`,
    overCrests: overCrests ? 'yes' : '',
  });
  const texts = form.values.value;
  const read = (field: string, typed: string) => readLength(field, typed, unit, BORE);

  const save = useAct(async (id) => {
    const along = form.read('along', read);
    const across: Length | null | undefined = texts.across.trim() === '' ? null : form.read('across', read);
    if (!along || across === undefined) return false;
    const reading = {
      id,
      where: oneOf(keysOf(words.whereWord), texts.where) ?? 'mouth',
      along,
      across,
      overCrests: texts.overCrests !== '',
    };
    const saved = await changeBox(
      boxId,
      (box) => ({ ...box, bore: withItem(box.bore, { ...reading, seq: seqOf(box, id) }) }),
      'bore',
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
      {!isFirst && <h3>{measureWords.another}</h3>}
      <div class="row">
        <Field form={form} name="along" label={words.along} hint={unitName[unit]} />
        <Field form={form} name="across" label={words.across} hint={words.acrossHint} />
      </div>
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
      {texts.overCrests && <p class="soft">{measureWords.overCrestsNote}</p>}
      {texts.overCrests === '' && isThreaded && <p class="soft">{measureWords.turnedAgain}</p>}
      <button type="submit" class={isFirst ? 'main' : ''} disabled={save.busy}>
        {measureWords.save}
      </button>
    </form>
  );
};
