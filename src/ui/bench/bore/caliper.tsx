import type { BoxOnHand } from '../../../app/boxes.ts';
import { keepOffset } from '../../../app/instruments.ts';
import { settings } from '../../../app/session.ts';
import type { Instrument } from '../../../domain/box/records.ts';
import { boundsOf } from '../../../domain/joint/bounds.ts';
import { within } from '../../../domain/result.ts';
import { mm } from '../../../domain/units/brands.ts';
import { readLength } from '../../../domain/units/read-quantity.ts';
import { writeLength } from '../../../domain/units/write-quantity.ts';
import { Field } from '../../parts/field.tsx';
import { useAct } from '../../parts/use-act.ts';
import { useForm } from '../../parts/use-form.ts';
import { caliperWords as words } from '../measure-words.ts';
import { Fold } from '../plan/fold.tsx';

/** Rings worth checking a caliper on, mm. */
const RING = { min: 3, max: 200 };

/** The difference between the two pairs of jaws, found once on a ring. */
export const CaliperOffset = ({ onHand, caliper }: { onHand: BoxOnHand; caliper: Instrument }) => {
  const { unit } = settings.value;
  const form = useForm('caliper', { inside: '', outside: '' });
  const offset = caliper.insideMinusOutside;
  const read = (field: string, typed: string) => readLength(field, typed, unit, RING);

  const keep = useAct(async () => {
    const inside = form.read('inside', read);
    const outside = form.read('outside', read);
    if (!inside || !outside) return;
    const { min, max } = boundsOf('insideMinusOutside');
    const difference = within('inside', inside.mm - outside.mm, min, max);
    if (!difference.ok) {
      form.refuse('inside', {
        problem: 'out-of-range',
        field: 'inside',
        given: inside.mm,
        min: outside.mm + min,
        max: outside.mm + max,
        quantity: 'length',
      });
      return;
    }
    const found = mm(difference.value);
    if (await keepOffset(onHand, { mm: found, text: writeLength(found, unit) })) form.done();
  });

  return (
    <Fold summary={words.title} now={offset ? words.known(offset.mm, unit) : words.unknown} open={false}>
      <p>{words.why}</p>
      <form
        class="plan-form"
        onSubmit={(event) => {
          event.preventDefault();
          keep.act();
        }}
      >
        <Field form={form} name="inside" label={words.inside} />
        <Field form={form} name="outside" label={words.outside} hint={words.outsideHint} />
        <button type="submit" disabled={keep.busy}>
          {words.keep}
        </button>
      </form>
      {offset && (
        <button type="button" class="plain" onClick={() => keepOffset(onHand, null)}>
          {words.forget}
        </button>
      )}
    </Fold>
  );
};
