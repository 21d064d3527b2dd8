import type { Quantity, Refusal } from '../../domain/result.ts';
import { degreesFromRad, type Millimetres, rad } from '../../domain/units/brands.ts';
import { writeLength } from '../../domain/units/write-quantity.ts';

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
    case 'out-of-range':
      return `${label}: ${say(refusal.given, refusal.quantity)} is outside ${say(refusal.min, refusal.quantity)} to ${say(refusal.max, refusal.quantity)}.`;
    case 'conflict':
      return refusal.nearest === null
        ? `${label}: ${say(refusal.given, refusal.quantity)} cannot go with this ${plainName(refusal.other)}.`
        : `${label}: ${say(refusal.given, refusal.quantity)} cannot go with this ${plainName(refusal.other)}. The nearest that can: ${say(refusal.nearest, refusal.quantity)}.`;
  }
};

const quantityWords = (value: number, quantity: Quantity, unit: Unit): string => {
  switch (quantity) {
    case 'length':
      return writeLength(value as Millimetres, unit);
    case 'angle':
      return `${Number(degreesFromRad(rad(value)).toFixed(1))}°`;
    case 'percent':
      return `${Number(value.toFixed(1))} %`;
    case 'turns':
      return `${Number(value.toFixed(2))} turns`;
    case 'speed':
      return `${Math.round(value)} rpm`;
    default:
      return String(Number(value.toFixed(2)));
  }
};

const plainName = (field: string): string => field.replace(/([A-Z])/g, ' $1').toLowerCase();
