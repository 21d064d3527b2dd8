import { firstRefusal, ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import { angle, signedLength, size } from './inputs.ts';

/** Where a small turn of jig and post about the post takes the contact. */
export interface Shift {
  /** Toward the rear. */
  readonly radial: Millimetres;
  /** Along the lathe, toward the tailstock. */
  readonly axial: Millimetres;
}

/**
 * Shift of the contact when jig and post turn by `turned` about the post; `acrossFromPost` and `alongFromPost` are the contact
 * less the post, across the lathe and along it: radial = along x turned, axial = -across x turned, mm. First order: within
 * 0.5 % of the whole shift to 0.5 degrees. After any movement re-touch the depth.
 */
export const postTurned = (
  acrossFromPost: Millimetres,
  alongFromPost: Millimetres,
  turned: Radians,
): Result<Shift> => {
  const bad = firstRefusal(
    signedLength('acrossFromPost', acrossFromPost),
    signedLength('alongFromPost', alongFromPost),
    angle('turned', turned),
  );
  return bad ? refuse(bad) : ok({ radial: mm(alongFromPost * turned), axial: mm(-acrossFromPost * turned) });
};

/**
 * Taper that a post creeping by `crept` during one cut puts on the thread, rad on the radius: lever x crept / cut length.
 * The only way a jig out of line makes a taper: constant lean makes none. Within 2 % of simulation to 0.1 degrees.
 */
export const creepTaper = (lever: Millimetres, crept: Radians, cutLength: Millimetres): Result<Radians> => {
  const bad = firstRefusal(signedLength('lever', lever), angle('crept', crept), size('cutLength', cutLength));
  return bad ? refuse(bad) : ok(rad((lever * crept) / cutLength));
};
