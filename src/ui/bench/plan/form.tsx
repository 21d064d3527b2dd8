import './style.css';
import '../dock.css';
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { settings } from '../../../app/session.ts';
import type { WoodsToChoose } from '../../../app/woods-to-choose.ts';
import { calculate } from '../../../domain/box/calculate.ts';
import type { Given } from '../../../domain/box/given.ts';
import type { Plan } from '../../../domain/box/records.ts';
import { LONGEST } from '../../../domain/log/bounds.ts';
import type { Refusal } from '../../../domain/result.ts';
import { readText } from '../../../domain/units/read-text.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { optionsOf } from '../../parts/options.ts';
import { Switches } from '../../parts/switches.tsx';
import { useAct } from '../../parts/use-act.ts';
import { useForm } from '../../parts/use-form.ts';
import { Fold } from './fold.tsx';
import { FitFields, fitNow, RouteFields, WoodFields, woodNow } from './form-more.tsx';
import { planFormWords as words } from './form-words.ts';
import { NoPlan } from './no-plan.tsx';
import { readPlan } from './read.ts';
import { placeRefusal } from './refusal.ts';
import { type PlanField, type PlanTexts, USUAL_PITCHES } from './texts.ts';
import { WoodField } from './wood-field.tsx';

interface Props {
  /** Names the draft. */
  readonly id: string;
  readonly initial: PlanTexts;
  readonly given: Given;
  readonly woods: WoodsToChoose;
  readonly act: string;
  /** Resolves to whether the plan was saved; the form then lets its draft go. `id` is for a new box, the same in a retry. */
  readonly onPlan: (plan: Plan, name: string, id: string) => Promise<boolean>;
}

/** The questions of a plan: what every box needs first, the rest folded with what it will be. */
export const PlanQuestions = ({ id, initial, given, woods, act, onPlan }: Props) => {
  const { unit } = settings.value;
  const form = useForm<PlanField>(id, initial);
  const element = useRef<HTMLFormElement>(null);
  const ofTheRig = useSignal<Refusal | null>(null);
  const texts = form.values.value;
  const wrong = (...names: PlanField[]) => names.some((name) => form.errors.value[name]);

  /** A plan that makes a joint, and its name; or nothing, with each refusal beside its field. */
  const goodPlan = (): { readonly plan: Plan; readonly name: string } | undefined => {
    ofTheRig.value = null;
    const plan = readPlan(form, woods, unit);
    const name = form.read('name', (field, typed) => readText(field, typed, LONGEST.name));
    if (!plan || name === undefined) return undefined;
    const joint = calculate({ plan, bore: [], tenon: [], cuts: [], trials: [] }, given);
    if (joint.ok) return { plan, name };
    const placed = placeRefusal(joint.error, given.rig, unit);
    if (placed) form.refuse(placed.field, placed.refusal);
    else ofTheRig.value = joint.error;
    return undefined;
  };
  const save = useAct(async (fresh) => {
    const plan = goodPlan();
    if (!plan) {
      requestAnimationFrame(() => element.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return false;
    }
    const saved = await onPlan(plan.plan, plan.name, fresh);
    if (saved) form.done();
    return saved;
  });

  return (
    <form
      ref={element}
      class="plan-form"
      onSubmit={(event) => {
        event.preventDefault();
        save.act();
      }}
    >
      <Choice
        legend={words.pitch}
        options={[
          ...USUAL_PITCHES.map((pitch) => ({ value: pitch, word: pitch })),
          { value: 'other' as const, word: words.other },
        ]}
        chosen={texts.pitch}
        onChoose={(pitch) => form.set('pitch', pitch)}
      />
      {texts.pitch === 'other' && (
        <Field form={form} name="pitchOther" label={words.pitchOther} hint={words.pitchHint} />
      )}
      <div class="row">
        <Field form={form} name="opening" label={words.opening} hint={words.openingHint(unit)} />
        <Field form={form} name="outside" label={words.outside} hint={words.outsideHint} />
      </div>
      <WoodField form={form} name="lid" label={texts.twoWoods ? words.lidWood : words.wood} woods={woods} />
      <Switches
        switches={[
          {
            word: words.twoWoods,
            on: texts.twoWoods !== '',
            set: (on) => form.set('twoWoods', on ? 'yes' : ''),
          },
        ]}
      />
      {texts.twoWoods && <WoodField form={form} name="base" label={words.baseWood} woods={woods} />}
      <Choice
        legend={words.recessIn}
        options={optionsOf(words.pieces)}
        chosen={texts.recessIn}
        onChoose={(piece) => form.set('recessIn', piece)}
      />
      <Fold summary={words.fitMore} now={fitNow(texts)} open={wrong('clearance', 'dialTurns', 'threads')}>
        <FitFields form={form} rig={given.rig} />
      </Fold>
      <Fold summary={words.woodMore} now={woodNow(texts)} open={wrong('ringWood')}>
        <WoodFields form={form} woods={woods} />
      </Fold>
      <Fold summary={words.routeMore} open={wrong('name')}>
        <RouteFields form={form} rig={given.rig} />
      </Fold>
      {ofTheRig.value && <NoPlan refusal={ofTheRig.value} />}
      <div class="dock">
        <button type="submit" class="main" disabled={save.busy}>
          {act}
        </button>
      </div>
    </form>
  );
};
