import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { flankSlope, SIXTY_DEGREES } from './profile.ts';

/**
 * Two customs of saying how much thread engages, as a percentage of a height of the sharp V:
 * 0.75 H (American National; 75 % is usual) and 0.625 H (Unified and ISO). 75 % of the first is 90 % of the second.
 */
export type EngagementOf = '0.75H' | '0.625H';

const fraction: Record<EngagementOf, number> = { '0.75H': 0.75, '0.625H': 0.625 };

/** Plain numbers, for use inside formulas: mm of radial overlap in a hundred percent. */
export const fullEngagement = (pitch: number, of: EngagementOf, slope: number): number =>
  (fraction[of] * pitch) / (2 * slope);

/** Engaged flank height he, mm radial, from a percentage (0 to 150) of the named height. Exact; the customs are defined at 60 degrees. */
export const engagedHeight = (
  percent: number,
  of: EngagementOf,
  pitch: Millimetres,
  includedAngle?: Radians,
): Result<Millimetres> => {
  const refusal = outside({ engagement: percent, pitch, includedAngle });
  return refusal
    ? refuse(refusal)
    : ok(mm((percent / 100) * fullEngagement(pitch, of, flankSlope(includedAngle))));
};

/** Percentage of the named height that an engaged flank height (mm radial) makes up. Exact. */
export const engagementPercent = (
  height: Millimetres,
  of: EngagementOf,
  pitch: Millimetres,
  includedAngle?: Radians,
): Result<number> => {
  const refusal = outside({ engagedHeight: height, pitch, includedAngle });
  return refusal
    ? refuse(refusal)
    : ok((100 * height) / fullEngagement(pitch, of, flankSlope(includedAngle)));
};

/** Length of flank in contact, mm, measured along the flank: he / cos A. Exact. */
export const flankLength = (
  height: Millimetres,
  includedAngle: Radians = SIXTY_DEGREES,
): Result<Millimetres> => {
  const refusal = outside({ engagedHeight: height, includedAngle });
  return refusal ? refuse(refusal) : ok(mm(height / Math.cos(includedAngle / 2)));
};

/**
 * Engagement usual in wood for a pitch, percent of 0.75 H: 75 at 10 to the inch, 70 at 16, a straight line through both, kept within 65
 * to 80 (common practice, no source: it gives the usual allowances of about 0.097 and 0.057 in).
 */
export const usualEngagement = (pitch: Millimetres): Result<number> => {
  const refusal = outside({ pitch });
  if (refusal) return refuse(refusal);
  return ok(Math.min(80, Math.max(65, 70 + (5 * (pitch - 1.5875)) / (2.54 - 1.5875))));
};
