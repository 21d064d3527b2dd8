import { firstRefusal, ok, type Result, refuse, within } from '../result.ts';
import { type Millimetres, type Radians, rad } from '../units/brands.ts';
import { angle, doubt, length, signedLength, size } from './inputs.ts';

/** An angle with its standard uncertainty. */
export interface MeasuredAngle {
  readonly angle: Radians;
  readonly uncertainty: Radians;
}

/** A measured length and its standard uncertainty. */
export interface MeasuredLength {
  readonly value: Millimetres;
  readonly uncertainty: Millimetres;
}

const badMeasured = (field: string, { angle: value, uncertainty }: MeasuredAngle) => [
  angle(field, value),
  doubt(`${field}Uncertainty`, uncertainty),
];

/** Uncertainties of independent sources, combined as a root sum of squares. */
const combined = (...parts: readonly number[]): number => Math.hypot(...parts);

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
    uncertainty: rad(combined(b * gap.uncertainty, g * over.uncertainty) / (b * b + g * g)),
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

/** Two readings of one thing with the bar, plate or board turned half a turn between: their mean is free of its own error. */
export const turnedMean = (one: MeasuredAngle, other: MeasuredAngle): Result<MeasuredAngle> => {
  const bad = firstRefusal(...badMeasured('one', one), ...badMeasured('other', other));
  if (bad) return refuse(bad);
  return ok({
    angle: rad((one.angle + other.angle) / 2),
    uncertainty: rad(combined(one.uncertainty, other.uncertainty) / 2),
  });
};

/** A square's own error, rad, from scribing both ways along one edge: gap between the two lines over twice the length. Small angles, exact to 1e-4. */
export const squareError = (between: Millimetres, blade: Millimetres): Result<Radians> => {
  const bad = firstRefusal(signedLength('between', between, 20), size('blade', blade));
  return bad ? refuse(bad) : ok(rad(between / (2 * blade)));
};

/** A reading against a reference that has errors of its own (square, faceplate, board): u^2 = sum of squares. The angle is unchanged. */
export const againstReference = (
  reading: MeasuredAngle,
  ...errors: readonly Radians[]
): Result<MeasuredAngle> => {
  const bad = firstRefusal(
    ...badMeasured('reading', reading),
    ...errors.map((error) => angle('reference', error)),
  );
  return bad
    ? refuse(bad)
    : ok({ angle: reading.angle, uncertainty: rad(combined(reading.uncertainty, ...errors)) });
};

/** Lean of a test groove seen in section: half the difference of its two flank angles, rad. Each flank 0 to 60 degrees from the radius. */
export const leanFromSection = (oneFlank: Radians, otherFlank: Radians): Result<Radians> => {
  const flank = (value: number) => within('flank', value, 0, Math.PI / 3, 'angle');
  const bad = firstRefusal(flank(oneFlank), flank(otherFlank));
  return bad ? refuse(bad) : ok(rad((oneFlank - otherFlank) / 2));
};
