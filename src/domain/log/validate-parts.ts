import * as v from 'valibot';
import type { Millimetres } from '../units/brands.ts';

/**
 * The parts that foreign records are made of, with bounds. They are wider than what the app's own fields accept, so that
 * whatever was saved here comes back in, and narrow enough that no figure or text can hurt the app.
 */

const LONGEST_LENGTH_MM = 3_000;
/** Last millisecond that a Date can hold. */
const LAST_MOMENT = 8.64e15;

export const text = (longest: number) => v.pipe(v.string(), v.maxLength(longest));
export const name = text(500);
export const note = text(20_000);
export const id = v.pipe(v.string(), v.minLength(1), v.maxLength(200));

export const number = (least: number, most: number) =>
  v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most));
export const whole = (least: number, most: number) => v.pipe(number(least, most), v.integer());
export const moment = number(0, LAST_MOMENT);
export const list = <const S extends v.GenericSchema>(item: S, longest = 2_000) =>
  v.pipe(v.array(item), v.maxLength(longest));

const mm = (least: number) =>
  v.pipe(
    number(least, LONGEST_LENGTH_MM),
    v.transform((value) => value as Millimetres),
  );
export const length = v.strictObject({ mm: mm(0), text: text(100) });
/** A difference, which may be below zero. */
export const signedLength = v.strictObject({ mm: mm(-LONGEST_LENGTH_MM), text: text(100) });
export const pitch = v.strictObject({ mm: mm(0.05), text: text(100) });

/** A day of the calendar as 'yyyy-MM-dd'. */
export const day = v.pipe(v.string(), v.isoDate());
export const part = v.picklist(['recess', 'tenon']);
