import { settings } from '../../../app/session.ts';
import type { WoodsToChoose } from '../../../app/woods-to-choose.ts';
import { ASSUMED } from '../../../domain/box/assumed.ts';
import type { Rig } from '../../../domain/box/records.ts';
import { usualClearance } from '../../../domain/joint/clearance.ts';
import { readPitch } from '../../../domain/units/read-quantity.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { optionsOf } from '../../parts/options.ts';
import { passesWord, planFormWords as words } from './form-words.ts';
import { grainOf, type PlanForm, type PlanTexts, routeOf } from './texts.ts';
import { WoodField } from './wood-field.tsx';
import { amountWords, sizeWords } from './words.ts';

/** What the folded questions come to as they stand. */
export const fitNow = ({ aim, clearance, dialTurns, threads }: PlanTexts): string => {
  const fit = clearance.trim() === '' ? words.fitUsual : words.fitWanted(clearance);
  return words.fitNow(aim === 'fit' ? fit : words.fitDepth(dialTurns), threads);
};
export const woodNow = ({ lidGrain, baseGrain, ring, ringWood }: PlanTexts): string =>
  words.woodNow(
    words.grainsNow[grainOf(lidGrain)],
    words.grainsNow[grainOf(baseGrain)],
    ring === 'none' ? '' : ringWood || words.aWood,
  );

/** How the fit is come by: a clearance, or the depth the turner always cuts. */
export const FitFields = ({ form, rig }: { form: PlanForm; rig: Rig }) => {
  const { unit } = settings.value;
  const { aim, pitch, pitchOther } = form.values.value;
  const read = readPitch('pitch', pitch === 'other' ? pitchOther : pitch, 'tpi');
  const usual = read.ok ? usualClearance(read.value.mm) : null;
  const clearanceHint = usual?.ok
    ? words.clearanceHint(amountWords(usual.value.least, unit), amountWords(usual.value.most, unit))
    : '';
  return (
    <>
      <Choice
        legend={words.aim}
        options={optionsOf(words.aims)}
        chosen={aim}
        onChoose={(by) => form.set('aim', by)}
      />
      {aim === 'fit' ? (
        <Field form={form} name="clearance" label={words.clearance} hint={clearanceHint} />
      ) : (
        <Field
          form={form}
          name="dialTurns"
          label={words.dialTurns}
          hint={
            rig.travelPerTurn ? words.dialTurnsHint : words.dialGuess(sizeWords(ASSUMED.travelPerTurn, unit))
          }
        />
      )}
      <Field form={form} name="threads" label={words.threads} hint={words.threadsHint} />
    </>
  );
};

/** Grain of each piece, and a ring that carries one of the threads. */
export const WoodFields = ({ form, woods }: { form: PlanForm; woods: WoodsToChoose }) => {
  const { lidGrain, baseGrain, ring, ringGrain } = form.values.value;
  const grain = (legend: string, name: 'lidGrain' | 'baseGrain' | 'ringGrain', chosen: string) => (
    <Choice
      legend={legend}
      options={optionsOf(words.grains)}
      chosen={chosen}
      onChoose={(value) => form.set(name, value)}
    />
  );
  return (
    <>
      {grain(words.grain.lid, 'lidGrain', lidGrain)}
      {grain(words.grain.base, 'baseGrain', baseGrain)}
      <Choice
        legend={words.ring}
        options={optionsOf(words.rings)}
        chosen={ring}
        onChoose={(value) => form.set('ring', value)}
      />
      {ring !== 'none' && (
        <>
          <WoodField form={form} name="ringWood" label={words.ringWood} woods={woods} />
          {grain(words.grain.ring, 'ringGrain', ringGrain)}
        </>
      )}
    </>
  );
};

/** The order of work, the share of each pass, and what the box is called. */
export const RouteFields = ({ form, rig }: { form: PlanForm; rig: Rig }) => {
  const route = routeOf(form.values.value.route);
  return (
    <>
      <Choice
        legend={words.route}
        options={optionsOf(words.routes)}
        chosen={route}
        onChoose={(value) => form.set('route', value)}
      />
      <p class="soft">
        {words.routeHint[route]} {route === 'both-turned' && rig.chucks === 1 && words.oneChuck}
      </p>
      <Choice
        legend={words.passes}
        options={optionsOf(passesWord)}
        chosen={form.values.value.passes}
        onChoose={(value) => form.set('passes', value)}
      />
      <Field form={form} name="name" label={words.name} hint={words.nameHint} />
    </>
  );
};
