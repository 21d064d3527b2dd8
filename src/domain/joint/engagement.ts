import { ok, type Result, refuse } from '../result.ts';
import type { Millimetres } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { SLOPE } from './profile.ts';

/**
 * Two customs of saying how much thread engages, as a percentage of a height of the sharp V:
 * 0.75 H (American National; 75 % is usual) and 0.625 H (Unified and ISO). 75 % of the first is 90 % of the second.
 */
export type EngagementOf = '0.75H' | '0.625H';

const fraction: Record<EngagementOf, number> = { '0.75H': 0.75, '0.625H': 0.625 };

/** Plain numbers, for use inside formulas: mm of radial overlap in a hundred percent. */
export const fullEngagement = (pitch: number, of: EngagementOf): number =>
  (fraction[of] * pitch) / (2 * SLOPE);

/** Percentage of the named height that an engaged flank height (mm radial) makes up. Exact. */
export const engagementPercent = (
  height: Millimetres,
  of: EngagementOf,
  pitch: Millimetres,
): Result<number> => {
  const refusal = outside({ engagedHeight: height, pitch });
  return refusal ? refuse(refusal) : ok((100 * height) / fullEngagement(pitch, of));
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
