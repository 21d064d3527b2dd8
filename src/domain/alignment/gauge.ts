import { firstRefusal, ok, type Result, refuse, within } from '../result.ts';
import { type Millimetres, type Radians, rad } from '../units/brands.ts';
import { length, signedLength } from './inputs.ts';

/** An angle with its standard uncertainty. */
export interface MeasuredAngle {
  readonly angle: Radians;
  readonly uncertainty: Radians;
}

/** A measured length and its standard uncertainty. */
interface MeasuredLength {
  readonly value: Millimetres;
  readonly uncertainty: Millimetres;
}

/**
 * Angle of a gap over a length: atan(g/b), u = sqrt((b ug)^2 + (g ub)^2)/(b^2 + g^2), rad; the law of propagation of uncertainty
 * (JCGM 100, GUM, clause 5.1.2) for independent readings. Gap within 50 mm either way, length 1 mm to 1 m. Exact; the
 * uncertainty to first order.
 */
export const angleFromGap = (gap: MeasuredLength, over: MeasuredLength): Result<MeasuredAngle> => {
  const bad = firstRefusal(
    signedLength('gap', gap.value, 50),
    length('gapUncertainty', gap.uncertainty, 50),
    within('over', over.value, 1, 1000),
    length('overUncertainty', over.uncertainty, 50),
  );
  if (bad) return refuse(bad);
  const [g, b] = [gap.value, over.value];
  return ok({
    angle: rad(Math.atan2(g, b)),
    uncertainty: rad(Math.hypot(b * gap.uncertainty, g * over.uncertainty) / (b * b + g * g)),
  });
};

/**
 * Angle from an indicator on an arm of the given radius swept half a turn over a face: atan(difference/(2 R)). Bounds and error as
 * for `angleFromGap`. A horizontal sweep gives lean, a vertical one tilt.
 */
export const angleFromSweep = (difference: MeasuredLength, radius: MeasuredLength): Result<MeasuredAngle> => {
  const twice = (value: number) => (2 * value) as Millimetres;
  return angleFromGap(difference, { value: twice(radius.value), uncertainty: twice(radius.uncertainty) });
};
