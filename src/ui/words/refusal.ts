import type { Quantity, Refusal } from '../../domain/result.ts';
import {
  degreesFromRad,
  inches,
  inchesFromMm,
  type Millimetres,
  mm,
  mmFromInches,
  rad,
  tpiFromPitch,
} from '../../domain/units/brands.ts';
import { writeLength, writePitch } from '../../domain/units/write-quantity.ts';

type Unit = 'in' | 'mm';

/** Why a field was refused, naming it and its allowed range in the user's unit. */
export const refusalWords = (refusal: Refusal, label: string, unit: Unit): string => {
  const say = (value: number, quantity: Quantity) => quantityWords(value, quantity, unit);
  switch (refusal.problem) {
    case 'empty':
      return `${label}: still empty.`;
    case 'not-a-number':
      return `${label}: “${refusal.typed}” cannot be read as a number. Nothing was lost.`;
    case 'unknown-unit':
      return `${label}: “${refusal.typed}” has a unit that is not known here. Inches and millimetres are.`;
    case 'too-long':
      return `${label}: ${refusal.length} characters is too long. It can be ${refusal.most} at most.`;
    case 'ambiguous':
      return `${label}: “${refusal.typed}” can be ${refusal.readings.join(' or ')}. Type the one you mean.`;
    case 'out-of-range':
      return `${label}: ${outOfRange(refusal, unit)}`;
    case 'conflict':
      if (refusal.field === 'clearance' && refusal.nearest !== null)
        return `${label}: with this ${plainName(refusal.other)} at ${refusal.nearest < refusal.given ? 'most' : 'least'} ${say(refusal.nearest, refusal.quantity)}.`;
      return refusal.nearest === null
        ? `${label}: ${say(refusal.given, refusal.quantity)} cannot go with this ${plainName(refusal.other)}.`
        : `${label}: ${say(refusal.given, refusal.quantity)} cannot go with this ${plainName(refusal.other)}. The nearest that can: ${say(refusal.nearest, refusal.quantity)}.`;
  }
};

type OutOfRange = Refusal & { readonly problem: 'out-of-range' };

const outOfRange = ({ given, min, max, quantity }: OutOfRange, unit: Unit): string => {
  const isPitch = quantity === 'pitch';
  const limits = [limit(min, quantity, unit, Math.ceil), limit(max, quantity, unit, Math.floor)];
  // The finer the pitch, the more threads to the inch.
  if (isPitch && unit === 'in') limits.reverse();
  const range = `It can be ${limits.join(' to ')}.`;
  if (isPitch && given <= 0) return range;
  const [tooMuch, tooLittle] = isPitch ? ['coarse', 'fine'] : ['large', 'small'];
  return `${quantityWords(given, quantity, unit)} is too ${given > max ? tooMuch : tooLittle}. ${range}`;
};

/** Steps that a person names a limit in, inches, for limits from so much on. */
const SPOKEN_STEPS = [
  [10, 1 / 2],
  [1, 1 / 4],
  [0.2, 1 / 16],
  [0.02, 0.005],
  [0.001, 0.001],
] as const;

/** A limit as a person would say it, rounded inwards so that it is itself allowed. */
const limit = (value: number, quantity: Quantity, unit: Unit, inwards: (value: number) => number): string => {
  if (unit === 'mm' || !Number.isFinite(value)) return quantityWords(value, quantity, unit);
  // Inwards for a pitch is outwards for its threads to the inch.
  if (quantity === 'pitch') return `${-inwards(-tpiFromPitch(mm(value)))} tpi`;
  if (quantity !== 'length') return quantityWords(value, quantity, unit);
  const given = inchesFromMm(mm(value));
  const step = SPOKEN_STEPS.find(([from]) => Math.abs(given) >= from)?.[1] ?? 1;
  // Twelve digits: 2 mm and back is not 2 mm to the last bit.
  const rounded = mmFromInches(inches(inwards(Number((given / step).toPrecision(12))) * step));
  return writeLength(rounded, 'in', { smallest: step });
};

const quantityWords = (value: number, quantity: Quantity, unit: Unit): string => {
  if (!Number.isFinite(value)) return '—';
  switch (quantity) {
    case 'length':
      return writeLength(value as Millimetres, unit).replace(/\.?0+ /, ' ');
    case 'pitch':
      return writePitch(mm(value), unit === 'in' ? 'tpi' : 'mm');
    case 'angle':
      return `${Number(degreesFromRad(rad(value)).toFixed(1))}°`;
    case 'percent':
      return `${Number(value.toFixed(1))} %`;
    case 'turns':
      return `${Number(value.toFixed(2))} turns`;
    default:
      return String(Number(value.toFixed(2)));
  }
};

const plainName = (field: string): string =>
  field === 'tipFlat' ? 'cutter tip' : field.replace(/([A-Z])/g, ' $1').toLowerCase();
