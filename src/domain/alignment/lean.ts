import { firstRefusal, ok, type Result, refuse } from '../result.ts';
import type { Part } from '../setup/events.ts';
import { type Millimetres, type Radians, rad } from '../units/brands.ts';
import { angle, HALF_ANGLE, signedLength } from './inputs.ts';

/**
 * How the jig's axis stands to the lathe's. z runs along the lathe to the tailstock, y up, x to the rear.
 * The work's axis passes the cutter's mid-plane at (x, y) from the cutter's axis.
 */
export interface JigPose {
  readonly x: Millimetres;
  readonly y: Millimetres;
  /** Positive: tailstock end of the jig's axis to the rear. */
  readonly yaw: Radians;
  /** Positive: tailstock end of the jig's axis up. */
  readonly tilt: Radians;
}

/** What a pose does to the groove. */
export interface Skew {
  /** Slope ds/dr of the groove's centre line, s from the mouth into the piece, r outward. */
  readonly lean: Radians;
  /** The part that acts as a tilt of the cutter against the helix. */
  readonly helixTilt: Radians;
}

/** Which side of the work the cutter touches: +1 the rear, -1 the front. */
export type Side = 1 | -1;

/** The walls of a groove: `inner` lies further into the piece, `mouth` nearer to its mouth. */
export type Wall = 'inner' | 'mouth';

/**
 * Lean and helix tilt from the pose of the jig: l = nx yaw + ny tilt, tau = nx tilt - ny yaw, with n the direction
 * from the work's axis to the cutter's. With the axes level, lean is yaw and tilt is tilt, signed by the side touched.
 * Lengths to 1 m, angles to 15 degrees; first order: flank angles within 0.06 degrees to 3 degrees of yaw (simulated).
 * Refuses a jig whose axis coincides with the cutter's, where there is no side.
 */
export const skewOf = ({ x, y, yaw, tilt }: JigPose): Result<Skew> => {
  const distance = Math.hypot(x, y);
  const bad = firstRefusal(
    signedLength('x', x),
    signedLength('y', y),
    angle('yaw', yaw),
    angle('tilt', tilt),
  );
  if (bad) return refuse(bad);
  if (distance < 1e-6)
    return refuse({
      problem: 'out-of-range',
      field: 'x',
      given: x,
      min: 1e-6,
      max: 1000,
      quantity: 'length',
    });
  const [nx, ny] = [-x / distance, -y / distance];
  return ok({ lean: rad(nx * yaw + ny * tilt), helixTilt: rad(nx * tilt - ny * yaw) });
};

/**
 * Half angles of the two walls of a groove that leans: 30 degrees plus and minus the lean, the other way round
 * in a recess, where the groove opens inward. The helix flattens both by a few hundredths of a degree more (`flankAngleChange`).
 * Lean to 15 degrees; with that, within 0.06 degrees of simulation to 3 degrees.
 */
export const flankAngles = (part: Part, lean: Radians): Result<Readonly<Record<Wall, Radians>>> => {
  const bad = firstRefusal(angle('lean', lean));
  if (bad) return refuse(bad);
  const fromRoot = part === 'tenon' ? lean : -lean;
  return ok({ inner: rad(HALF_ANGLE + fromRoot), mouth: rad(HALF_ANGLE - fromRoot) });
};

/**
 * Mismatch of the flanks of a mated pair, signed: the sum of both leans, because assembly turns one piece end for
 * end. Exact to first order in the leans; both flanks are off by it, in opposite senses.
 */
export const mismatch = (tenonLean: Radians, recessLean: Radians): Result<Radians> => {
  const bad = firstRefusal(angle('tenonLean', tenonLean), angle('recessLean', recessLean));
  return bad ? refuse(bad) : ok(rad(tenonLean + recessLean));
};
