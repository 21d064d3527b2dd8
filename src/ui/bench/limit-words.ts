import type { CalculatedBox } from '../../domain/box/calculate.ts';
import { type BrokenLimit, boreCrestsTo } from '../../domain/joint/broken-limits.ts';
import { LEAST_CREST, LEAST_ENGAGEMENT } from '../../domain/joint/least.ts';
import type { Mend } from '../../domain/joint/tenon-check.ts';
import { mm } from '../../domain/units/brands.ts';
import { writeLength, writePercent } from '../../domain/units/write-quantity.ts';
import { toldApart } from '../words/told-apart.ts';
import { amountWords, sizeWords } from './plan/words.ts';

type Unit = 'in' | 'mm';

const other = { recess: 'tenon', tenon: 'recess' } as const;

/** What would go wrong with the thread, with the number that says so. */
const limitWords = (limit: BrokenLimit, unit: Unit): string => {
  switch (limit.code) {
    case 'engagement-low': {
      if (limit.percent <= 0) return 'No thread would hold: the tenon is no bigger than the recess.';
      const [percent, least] = toldApart(limit.percent, LEAST_ENGAGEMENT, [
        writePercent,
        (value) => writePercent(value, { places: 1 }),
      ]);
      return `Only ${percent} of the thread would engage: under ${least} wood strips easily.`;
    }
    case 'crest-thin': {
      if (limit.crestFlat <= 0)
        return `The cut would go past the end of the V: no crest is left on the ${limit.part}.`;
      const [crest, least] = toldApart(limit.crestFlat, LEAST_CREST, [
        (value) => sizeWords(value, unit),
        (value) => writeLength(mm(value), unit, { places: unit === 'in' ? 4 : 3 }),
      ]);
      return `The ${limit.part}’s crests would be left ${crest} wide: under ${least} they chip in most woods.`;
    }
    case 'crests-meet':
      return `The ${limit.part}’s crests would stand ${amountWords(-limit.gap, unit)} deep in the ${other[limit.part]}’s roots.`;
  }
};

/** What a recess that was not cut as planned does to the joint, and what mends it; null while all is within limits. */
export const recessFaultWords = (calculated: CalculatedBox, unit: Unit): string | null => {
  const { limits, recessCutTo, plan, pair } = calculated;
  const [limit] = limits;
  if (!limit || recessCutTo === null) return null;
  const cut = `The recess was cut ${sizeWords(recessCutTo, unit)} deep, not ${sizeWords(plan.sizes.depth, unit)}.`;
  const fault = `${cut} ${limitWords(limit, unit)}`;
  if (recessCutTo < plan.sizes.depth) return `${fault} Cut the recess deeper first.`;
  const bored = boreCrestsTo(pair);
  return bored === null
    ? `${fault} Bore it out past its thread and thread it again.`
    : `${fault} Bore its crests out to ${sizeWords(bored, unit)} first.`;
};

/** Why a tenon must not be cut as it is, in one sentence with one number. */
export const mendWords = (mend: Mend, calculated: CalculatedBox, unit: Unit): string => {
  switch (mend.kind) {
    case 'turn-down':
      return `No depth makes up for it. ${limitWords(mend.limit, unit)}`;
    case 'new-tenon':
      return limitWords({ code: 'engagement-low', percent: mend.percent }, unit);
    case 'true': {
      const by = amountWords(mend.by, unit);
      return `The crests cannot take this taper: take ${by} off ${mend.at === 'end' ? 'at the end' : 'by the shoulder'}.`;
    }
    case 'joint':
      return recessFaultWords(calculated, unit) ?? limitWords(mend.limit, unit);
  }
};

/** The act that mends it, as its button says it. */
export const mendActWords = (mend: Mend, calculated: CalculatedBox, unit: Unit): string => {
  switch (mend.kind) {
    case 'turn-down':
      return `Turn it to ${sizeWords(mend.to, unit)}, then measure`;
    case 'new-tenon':
      return `Turn a new tenon to ${sizeWords(mend.to, unit)}`;
    case 'true':
      return 'Turn it parallel, then measure';
    case 'joint':
      return calculated.recessCutTo === null ? 'Change the plan' : 'Mend the recess';
  }
};
