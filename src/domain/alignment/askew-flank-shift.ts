import type { Hand } from '../box/records.ts';
import { HALF_ANGLE } from '../joint/profile.ts';
import { firstRefusal, ok, type Result, refuse } from '../result.ts';
import type { Part } from '../setup/events.ts';
import { type Millimetres, mm, type Radians } from '../units/brands.ts';
import { angle, size } from './inputs.ts';

/** The walls of a groove: `inner` lies further into the piece, `mouth` nearer to its mouth. */
type Wall = 'inner' | 'mouth';

/** One point on a flank, and the disc of the cutter that makes it. */
interface FlankPoint {
  readonly part: Part;
  readonly wall: Wall;
  readonly pitch: Millimetres;
  readonly hand: Hand;
  /** Radius of the work at the point, r. */
  readonly radius: Millimetres;
  /** Radius of the cutter where it makes the point (tip radius less the height above the tip), rho. */
  readonly cutterRadius: Millimetres;
  readonly lean: Radians;
  readonly helixTilt: Radians;
}

/** Climb of the helix per unit of way round, the tangent of its lead angle; negative for a left-hand thread. */
const climb = (pitch: number, radius: number, hand: Hand): number =>
  ((hand === 'right' ? 1 : -1) * pitch) / (2 * Math.PI * radius);

/**
 * How far the disc of the cutter, standing askew to the helix, cuts a flank wider than its own section, mm:
 * r (lambda - tau)^2 / (2 [(r/rho) sin A / cos g +- tan g]), g the angle of this flank, + for a tenon, - for a recess.
 * Within 1 % of simulation untilted to rho = 0.8 r; within 10 % or 5 um to 3 degrees of tilt.
 * Refuses a cutter so large in its recess that its heel would rub: rho must be under r sin A / sin g.
 */
export const askewFlankShift = (point: FlankPoint): Result<Millimetres> => {
  const { part, wall, pitch, hand, radius, cutterRadius, lean, helixTilt } = point;
  const bad = firstRefusal(
    size('pitch', pitch, 12.7),
    size('radius', radius),
    size('cutterRadius', cutterRadius),
    angle('lean', lean),
    angle('helixTilt', helixTilt),
  );
  if (bad) return refuse(bad);
  const external = part === 'tenon';
  const flank = HALF_ANGLE + (wall === 'inner' ? 1 : -1) * (external ? lean : -lean);
  const bend =
    (radius / cutterRadius) * (Math.sin(HALF_ANGLE) / Math.cos(flank)) +
    (external ? 1 : -1) * Math.tan(flank);
  if (bend <= 1e-9)
    return refuse({
      problem: 'conflict',
      field: 'cutterRadius',
      other: 'radius',
      given: cutterRadius,
      otherGiven: radius,
      nearest: (radius * Math.sin(HALF_ANGLE)) / Math.sin(flank),
      quantity: 'length',
    });
  return ok(mm((radius * (climb(pitch, radius, hand) - helixTilt) ** 2) / (2 * bend)));
};
