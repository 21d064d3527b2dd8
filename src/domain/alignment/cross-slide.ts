import { firstRefusal, ok, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm, type Radians } from '../units/brands.ts';
import { HALF_ANGLE, length } from './inputs.ts';

/** What one feed of a cross-slide out of square really does. */
export interface SkewFeed {
  readonly radial: Millimetres;
  readonly axial: Millimetres;
  /** Whether the groove keeps its shape: it does as long as the slide is off by less than the flank's own 30 degrees. */
  readonly absorbed: boolean;
  /** Share of the chip, 0 to 1, that the flank toward the feed takes; half when square. */
  readonly leadingFlankChip: number;
}

/**
 * Feed `dial` on a cross-slide out of square by `off`: radial = dial cos, axial = dial sin, mm. Up to 30 degrees the next pass cuts the
 * shift away, so the slide need not be squared; only depth and phase change. `off` within 60 degrees either way. Exact.
 */
export const skewFeed = (dial: Millimetres, off: Radians): Result<SkewFeed> => {
  const bad = firstRefusal(length('dial', dial, 50), within('off', off, -Math.PI / 3, Math.PI / 3, 'angle'));
  if (bad) return refuse(bad);
  const size = Math.abs(off);
  const leading = Math.sin(Math.min(HALF_ANGLE + size, Math.PI / 2));
  const trailing = Math.max(0, Math.sin(HALF_ANGLE - size));
  return ok({
    radial: mm(dial * Math.cos(off)),
    axial: mm(dial * Math.sin(off)),
    absorbed: size < HALF_ANGLE,
    leadingFlankChip: leading / (leading + trailing),
  });
};
