import { type WoodsToChoose, woodNamed, woodsLike } from '../../../app/woods-to-choose.ts';
import { Field } from '../../parts/field.tsx';
import { planFormWords as words } from './form-words.ts';
import type { PlanField, PlanForm } from './texts.ts';

interface Props {
  readonly form: PlanForm;
  readonly name: PlanField;
  readonly label: string;
  readonly woods: WoodsToChoose;
}

const MOST = 6;

/** A wood: one tap for one used before, a few letters for one of the tables, any name for one that is in none. */
export const WoodField = ({ form, name, label, woods }: Props) => {
  const typed = form.values.value[name];
  const isKnown = woodNamed(woods, typed) !== null;
  const offered = isKnown ? [] : woodsLike(woods, typed, MOST);
  const isNew = typed.trim() !== '' && !isKnown && offered.length === 0;
  return (
    <div class="wood-field">
      <Field form={form} name={name} label={label} {...(isNew ? { hint: words.woodUnknown } : {})} />
      {offered.length > 0 && (
        <fieldset class="offered">
          <legend class="hidden-words">{typed.trim() === '' ? words.woodUsed : words.woodFound}</legend>
          {offered.map((wood) => (
            <button key={wood.key} type="button" onClick={() => form.set(name, wood.name)}>
              {wood.name}
            </button>
          ))}
        </fieldset>
      )}
      {isKnown && (
        <button type="button" class="plain" onClick={() => form.set(name, '')}>
          {words.changeWood}
        </button>
      )}
    </div>
  );
};
