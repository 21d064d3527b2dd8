import { settings } from '../../../app/session.ts';
import type { WoodsToChoose } from '../../../app/woods-to-choose.ts';
import { ASSUMED } from '../../../domain/box/assumed.ts';
import type { Grain, PassHabit, Plan, Rig } from '../../../domain/box/records.ts';
import { usualClearance } from '../../../domain/joint/clearance.ts';
import { readPitch } from '../../../domain/units/read-quantity.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { passesWord, planFormWords as words } from './form-words.ts';
import type { PlanForm, PlanTexts } from './texts.ts';
import { WoodField } from './wood-field.tsx';
import { amountWords, sizeWords } from './words.ts';

const grains = [
  { value: 'end', word: words.grains.end },
  { value: 'side', word: words.grains.side },
] as const;

/** What the folded questions come to as they stand. */
export const fitNow = ({ aim, clearance, dialTurns, threads }: PlanTexts): string => {
  const fit = clearance.trim() === '' ? words.fitUsual : words.fitWanted(clearance);
  return words.fitNow(aim === 'fit' ? fit : words.fitDepth(dialTurns), threads);
};
export const woodNow = ({ lidGrain, baseGrain, ring, ringWood }: PlanTexts): string =>
  words.woodNow(
    words.grainsNow[lidGrain as Grain],
    words.grainsNow[baseGrain as Grain],
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
        options={[
          { value: 'fit', word: words.aims.fit },
          { value: 'depth', word: words.aims.depth },
        ]}
        chosen={aim as Plan['aim']['by']}
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
      options={grains}
      chosen={chosen as Grain}
      onChoose={(value) => form.set(name, value)}
    />
  );
  return (
    <>
      {grain(words.grain.lid, 'lidGrain', lidGrain)}
      {grain(words.grain.base, 'baseGrain', baseGrain)}
      <Choice
        legend={words.ring}
        options={(['none', 'lid', 'base'] as const).map((value) => ({ value, word: words.rings[value] }))}
        chosen={ring as 'none' | 'lid' | 'base'}
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
  const route = form.values.value.route as Plan['route'];
  return (
    <>
      <Choice
        legend={words.route}
        options={(['recess-first', 'both-turned'] as const).map((value) => ({
          value,
          word: words.routes[value],
        }))}
        chosen={route}
        onChoose={(value) => form.set('route', value)}
      />
      <p class="soft">
        {words.routeHint[route]} {route === 'both-turned' && rig.chucks === 1 && words.oneChuck}
      </p>
      <Choice
        legend={words.passes}
        options={(Object.keys(passesWord) as PassHabit[]).map((value) => ({
          value,
          word: passesWord[value],
        }))}
        chosen={form.values.value.passes as PassHabit}
        onChoose={(value) => form.set('passes', value)}
      />
      <Field form={form} name="name" label={words.name} hint={words.nameHint} />
    </>
  );
};
