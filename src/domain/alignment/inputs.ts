import { type Result, within } from '../result.ts';

/** A jig further off than this is not out of line but in the wrong place. The formulas are checked by simulation to 3 degrees. */
const LARGEST_ANGLE = Math.PI / 12;
const LONGEST = 1000;

/** A length of zero or more, mm. */
export const length = (field: string, value: number, max = LONGEST): Result<number> =>
  within(field, value, 0, max);

/** A length that something is divided by: at least a hundredth of a millimetre. */
export const size = (field: string, value: number, max = LONGEST): Result<number> =>
  within(field, value, 0.01, max);

/** A length that may be negative, mm. */
export const signedLength = (field: string, value: number, most = LONGEST): Result<number> =>
  within(field, value, -most, most);

/** An angle of misalignment, rad, within 15 degrees either way. */
export const angle = (field: string, value: number): Result<number> =>
  within(field, value, -LARGEST_ANGLE, LARGEST_ANGLE, 'angle');

/** A standard uncertainty of an angle, rad. */
export const doubt = (field: string, value: number): Result<number> =>
  within(field, value, 0, LARGEST_ANGLE, 'angle');
