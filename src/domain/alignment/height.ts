import { firstRefusal, ok, type Result, refuse } from '../result.ts';
import type { Part } from '../setup/events.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { length, signedLength, size } from './inputs.ts';

/**
 * Radial depth really cut when the jig's axis stands `height` above or below the cutter's and the dial was zeroed at touch-off, mm:
 * |sqrt(a1^2 + v^2) - sqrt(a0^2 + v^2)|, a0 and a1 the horizontal distance of the axes at touch-off and at full depth. Exact.
 */
export const depthAtHeight = (
  atTouchOff: Millimetres,
  atDepth: Millimetres,
  height: Millimetres,
): Result<Millimetres> => {
  const bad = firstRefusal(
    signedLength('atTouchOff', atTouchOff),
    signedLength('atDepth', atDepth),
    signedLength('height', height),
  );
  return bad ? refuse(bad) : ok(mm(Math.abs(Math.hypot(atDepth, height) - Math.hypot(atTouchOff, height))));
};

/**
 * Root radius when the axes stand `across` apart horizontally and `height` apart vertically, mm: their distance less the
 * cutter's radius for a tenon, plus it for a recess. Exact. A position reckoned without touching off makes a tenon
 * shallower and a recess deeper by v^2/(2a).
 */
export const rootRadius = (
  part: Part,
  across: Millimetres,
  height: Millimetres,
  cutterRadius: Millimetres,
): Result<Millimetres> => {
  const bad = firstRefusal(
    signedLength('across', across),
    signedLength('height', height),
    size('cutterRadius', cutterRadius),
  );
  if (bad) return refuse(bad);
  return ok(mm(Math.hypot(across, height) + (part === 'recess' ? cutterRadius : -cutterRadius)));
};

/** A cut touched off on the turned piece, with the axes level. */
export interface LevelCut {
  readonly part: Part;
  /** Of the turned piece before threading. */
  readonly radius: Millimetres;
  readonly cutterRadius: Millimetres;
  readonly depth: Millimetres;
}

/**
 * The height at which a cut touched off on the work comes out `short` too shallow, mm, solved exactly from the distances of the axes.
 * Refuses a recess that the cutter cannot enter, and a `short` that is not under the depth. Zero for none.
 */
export const heightForShortfall = (cut: LevelCut, short: Millimetres): Result<Millimetres> => {
  const { part, radius, cutterRadius, depth } = cut;
  const bad = firstRefusal(
    size('radius', radius),
    size('cutterRadius', cutterRadius),
    size('depth', depth, 24),
    length('short', short, depth),
  );
  if (bad) return refuse(bad);
  const external = part === 'tenon';
  if (!external && cutterRadius >= radius)
    return refuse({
      problem: 'conflict',
      field: 'cutterRadius',
      other: 'radius',
      given: cutterRadius,
      otherGiven: radius,
      nearest: null,
      quantity: 'length',
    });
  const touching = external ? radius + cutterRadius : radius - cutterRadius;
  const moved = external ? -depth : depth;
  const reached = touching + moved + (external ? short : -short);
  const across = (reached ** 2 - touching ** 2 - depth ** 2) / (2 * moved);
  return ok(mm(Math.sqrt(Math.max(0, touching ** 2 - across ** 2))));
};
