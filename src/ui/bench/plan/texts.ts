import type { WoodsToChoose } from '../../../app/woods-to-choose.ts';
import type { Grain, PassHabit, Pitch, Plan } from '../../../domain/box/records.ts';
import { turns } from '../../../domain/units/brands.ts';
import { writeTurns } from '../../../domain/units/write-quantity.ts';
import { keysOf, oneOf } from '../../parts/options.ts';
import type { Form } from '../../parts/use-form.ts';
import { passesWord, planFormWords as words } from './form-words.ts';

/** What the form of a plan holds, every choice as text so that a draft keeps it. */
const NAMES = [
  'name',
  'pitch',
  'pitchOther',
  'opening',
  'outside',
  'lid',
  'base',
  'twoWoods',
  'recessIn',
  'aim',
  'clearance',
  'dialTurns',
  'threads',
  'lidGrain',
  'baseGrain',
  'ring',
  'ringWood',
  'ringGrain',
  'route',
  'passes',
] as const;
export type PlanField = (typeof NAMES)[number];
export type PlanTexts = Readonly<Record<PlanField, string>>;
export type PlanForm = Form<PlanField>;

/** A choice as its text says; what says none of them is the first. */
export const grainOf = (text: string): Grain => oneOf(keysOf(words.grains), text) ?? 'end';
export const routeOf = (text: string): Plan['route'] => oneOf(keysOf(words.routes), text) ?? 'recess-first';
export const pieceOf = (text: string): Plan['recessIn'] => oneOf(keysOf(words.pieces), text) ?? 'lid';
export const passesOf = (text: string): PassHabit => oneOf(keysOf(passesWord), text) ?? 'two-thirds';

export const USUAL_PITCHES = ['10 tpi', '16 tpi', '20 tpi'] as const;

const pitchTexts = (pitch: string | undefined): Pick<PlanTexts, 'pitch' | 'pitchOther'> => {
  if (!pitch) return { pitch: USUAL_PITCHES[0], pitchOther: '' };
  return USUAL_PITCHES.some((usual) => usual === pitch)
    ? { pitch, pitchOther: '' }
    : { pitch: 'other', pitchOther: pitch };
};

/** A new plan: what is a habit comes from the last box, what differs from box to box starts empty. */
export const textsForNew = (last: Plan | null, rigPitch: Pitch | null): PlanTexts => ({
  name: '',
  ...pitchTexts(rigPitch?.text ?? last?.pitch.text),
  opening: '',
  outside: '',
  lid: '',
  base: '',
  twoWoods: '',
  recessIn: last?.recessIn ?? 'lid',
  aim: last?.aim.by ?? 'fit',
  clearance: last?.aim.by === 'fit' ? (last.aim.clearance?.text ?? '') : '',
  dialTurns: last?.aim.by === 'depth' ? writeTurns(turns(last.aim.dialTurns)) : '',
  threads: writeTurns(turns(last?.threads ?? 3)),
  lidGrain: 'end',
  baseGrain: 'end',
  ring: 'none',
  ringWood: '',
  ringGrain: 'end',
  route: last?.route ?? 'recess-first',
  passes: last?.passes ?? 'two-thirds',
});

/** A plan as it stands, to be changed. */
export const textsOf = (plan: Plan, name: string, { all }: WoodsToChoose): PlanTexts => {
  const nameOf = (key: string): string => all.find((wood) => wood.key === key)?.name ?? key;
  return {
    ...textsForNew(plan, plan.pitch),
    name,
    opening: plan.opening.text,
    outside: plan.outside?.text ?? '',
    lid: nameOf(plan.lid.wood),
    base: nameOf(plan.base.wood),
    twoWoods: plan.base.wood === plan.lid.wood ? '' : 'yes',
    lidGrain: plan.lid.grain,
    baseGrain: plan.base.grain,
    ring: plan.insert?.in ?? 'none',
    ringWood: plan.insert ? nameOf(plan.insert.wood) : '',
    ringGrain: plan.insert?.grain ?? 'end',
  };
};
