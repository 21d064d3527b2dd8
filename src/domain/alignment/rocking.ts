import { SLOPE } from '../joint/profile.ts';
import { firstRefusal, ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import { angle, length, signedLength, size } from './inputs.ts';

/** The engaged thread that a lid rocks in. */
export interface EngagedThread {
  /** Free axial play B, with what lean has taken already off; zero or less cannot rock. */
  readonly play: Millimetres;
  readonly pitchDiameter: Millimetres;
  /** Axial length of thread engaged. */
  readonly engaged: Millimetres;
}

/**
 * Angle by which a lid can rock in its play to lie flush: beta = B/(Dp + L tan A), rad. Zero without play.
 * First order, about the middle of two turns or more engaged. When the model was made, linear programmes over all rigid poses agreed
 * within 3.3 %; the tests do not repeat them.
 */
export const rockingFreedom = ({ play, pitchDiameter, engaged }: EngagedThread): Result<Radians> => {
  const bad = firstRefusal(
    signedLength('play', play, 6),
    size('pitchDiameter', pitchDiameter),
    length('engaged', engaged),
  );
  return bad ? refuse(bad) : ok(rad(Math.max(0, play) / (pitchDiameter + engaged * SLOPE)));
};

/**
 * Gap left at the rim when shoulder and thread are out of square by `outOfSquare` in all, mm: Ds max(0, tau - beta).
 * Lean alone never opens it. Exact to first order.
 */
export const shoulderGap = (
  shoulderDiameter: Millimetres,
  outOfSquare: Radians,
  thread: EngagedThread,
): Result<Millimetres> => {
  const bad = firstRefusal(size('shoulderDiameter', shoulderDiameter), angle('outOfSquare', outOfSquare));
  if (bad) return refuse(bad);
  const freedom = rockingFreedom(thread);
  return freedom.ok ? ok(mm(shoulderDiameter * Math.max(0, Math.abs(outOfSquare) - freedom.value))) : freedom;
};
