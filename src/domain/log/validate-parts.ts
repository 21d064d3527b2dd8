import * as v from 'valibot';
import type { Millimetres } from '../units/brands.ts';
import { LONGEST, MOST_ITEMS } from './bounds.ts';

/**
 * The parts that foreign records are made of, with bounds: those of bounds.ts, and others wider than what the app's own fields
 * accept, so that whatever was saved here comes back in; narrow enough that no figure or text can hurt the app.
 */

const LONGEST_LENGTH_MM = 3_000;
/** Last millisecond that a Date can hold. */
const LAST_MOMENT = 8.64e15;

export const text = (longest: number) => v.pipe(v.string(), v.maxLength(longest));
export const name = text(LONGEST.name);
export const note = text(LONGEST.note);
export const id = v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST.id));

export const number = (least: number, most: number) =>
  v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most));
export const whole = (least: number, most: number) => v.pipe(number(least, most), v.integer());
export const moment = number(0, LAST_MOMENT);
export const list = <const S extends v.GenericSchema>(item: S, longest: number = MOST_ITEMS.list) =>
  v.pipe(v.array(item), v.maxLength(longest));

const mm = (least: number) =>
  v.pipe(
    number(least, LONGEST_LENGTH_MM),
    v.transform((value) => value as Millimetres),
  );
/** A length that was worked out, not typed. */
export const millimetres = mm(0);
export const length = v.strictObject({ mm: mm(0), text: text(LONGEST.length) });
/** A difference, which may be below zero. */
export const signedLength = v.strictObject({ mm: mm(-LONGEST_LENGTH_MM), text: text(LONGEST.length) });
export const pitch = v.strictObject({ mm: mm(0.05), text: text(LONGEST.length) });

/** A day of the calendar as 'yyyy-MM-dd'. */
export const day = v.pipe(v.string(), v.isoDate());
export const part = v.picklist(['recess', 'tenon']);
