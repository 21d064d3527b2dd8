import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { flankSlope, SIXTY_DEGREES } from './profile.ts';

/** A disc cutter that stands upright while the work climbs past it along a helix. */
export interface DiscCut {
  readonly part: 'recess' | 'tenon';
  readonly pitch: Millimetres;
  /** Radius of the work at the height looked at. */
  readonly workRadius: Millimetres;
  /** Radius of the cutter at that same height: tip radius less the height above the tip. */
  readonly cutterRadius: Millimetres;
  readonly includedAngle?: Radians;
}

/** Climb of the helix for one unit of way round: the tangent of the lead angle. */
const climb = (pitch: number, radius: number): number => pitch / (2 * Math.PI * radius);

/** Lead angle of the helix at a work radius, rad: atan(P/(2 pi r)). Exact. */
export const leadAngle = (pitch: Millimetres, workRadius: Millimetres): Result<Radians> => {
  const refusal = outside({ pitch, workRadius });
  return refusal ? refuse(refusal) : ok(rad(Math.atan(climb(pitch, workRadius))));
};

/**
 * How far the disc cuts beyond its own profile on each flank, mm axial: L^2 / (2 tan A (1/rho +- 1/r)), L = P/(2 pi r), + tenon, - recess.
 * Both grooves widen, so it is clearance for nothing. Within 1 % of a swept-volume simulation up to a cutter of 0.9 of the recess radius,
 * 3 % at 0.95; a recess cutter beyond that rubs most of the way round and one as big as the recess is a conflict.
 */
export const flankShift = (cut: DiscCut): Result<Millimetres> => {
  const { part, pitch, workRadius, cutterRadius, includedAngle } = cut;
  const refusal = outside({ pitch, workRadius, cutterRadius, includedAngle });
  if (refusal) return refuse(refusal);
  if (part === 'recess' && cutterRadius >= workRadius)
    return refuse({
      problem: 'conflict',
      field: 'cutterRadius',
      other: 'workRadius',
      given: cutterRadius,
      otherGiven: workRadius,
      nearest: 0.95 * workRadius,
      quantity: 'length',
    });
  const curvature = 1 / cutterRadius + (part === 'tenon' ? 1 : -1) / workRadius;
  return ok(mm(climb(pitch, workRadius) ** 2 / (2 * flankSlope(includedAngle) * curvature)));
};

/** The fillet that a flank shift leaves in the corner of the root, mm. Same error as the shift. */
export const rootFillet = (
  shift: Millimetres,
  includedAngle?: Radians,
): Result<{ readonly radial: Millimetres; readonly axial: Millimetres }> => {
  const refusal = outside({ flankShift: shift, includedAngle });
  return refusal
    ? refuse(refusal)
    : ok({ radial: mm(shift / flankSlope(includedAngle)), axial: mm(2 * shift) });
};

/** Change of each half angle by the helix, rad, negative: -L^2 cos^2 A/(2 tan A), alike for both parts. A few hundredths of a degree. */
export const flankAngleChange = (
  pitch: Millimetres,
  workRadius: Millimetres,
  includedAngle: Radians = SIXTY_DEGREES,
): Result<Radians> => {
  const refusal = outside({ pitch, workRadius, includedAngle });
  if (refusal) return refuse(refusal);
  const half = includedAngle / 2;
  return ok(rad((-(climb(pitch, workRadius) ** 2) * Math.cos(half) ** 2) / (2 * Math.tan(half))));
};
