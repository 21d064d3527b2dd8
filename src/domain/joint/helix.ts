import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { SLOPE } from './profile.ts';

/** A disc cutter that stands upright while the work climbs past it along a helix. */
interface DiscCut {
  readonly part: 'recess' | 'tenon';
  readonly pitch: Millimetres;
  /** Radius of the work at the height looked at. */
  readonly workRadius: Millimetres;
  /** Radius of the cutter at that same height: tip radius less the height above the tip. */
  readonly cutterRadius: Millimetres;
}

/** Climb of the helix for one unit of way round: the tangent of the lead angle. */
const climb = (pitch: number, radius: number): number => pitch / (2 * Math.PI * radius);

/**
 * How far the disc cuts beyond its own profile on each flank, mm axial: L^2 / (2 tan A (1/rho +- 1/r)), L = P/(2 pi r), + tenon, - recess.
 * Both grooves widen, so it is clearance for nothing. Within 1 % of a swept-volume simulation up to a cutter of 0.9 of the recess radius,
 * 3 % at 0.95; a recess cutter beyond that rubs most of the way round and one as big as the recess is a conflict.
 */
export const flankShift = (cut: DiscCut): Result<Millimetres> => {
  const { part, pitch, workRadius, cutterRadius } = cut;
  const refusal = outside({ pitch, workRadius, cutterRadius });
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
  return ok(mm(climb(pitch, workRadius) ** 2 / (2 * SLOPE * curvature)));
};
