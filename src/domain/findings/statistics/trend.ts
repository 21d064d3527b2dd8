import type { Proportion } from './counts.ts';
import { chiSquareTail } from './distributions.ts';

/** One step on a scale: its score, and how often the event fell there. */
export interface Dose extends Proportion {
  readonly score: number;
}

export interface Trend {
  readonly chiSquare: number;
  /** Positive when the event grows commoner along the scale. */
  readonly z: number;
  readonly p: number;
}

/**
 * The Cochran-Armitage test that the event's rate rises or falls along a scale. Null when it cannot be said: fewer than
 * two different scores with joints in them, or the event always or never there.
 */
export const trend = (doses: readonly Dose[]): Trend | null => {
  const total = doses.reduce((sum, dose) => sum + dose.total, 0);
  const events = doses.reduce((sum, dose) => sum + dose.events, 0);
  if (total === 0 || events === 0 || events === total) return null;
  const rate = events / total;
  const mean = doses.reduce((sum, { score, total: n }) => sum + n * score, 0) / total;
  const spread = doses.reduce((sum, { score, total: n }) => sum + n * (score - mean) ** 2, 0);
  if (!(spread > 1e-12 * Math.max(1, mean * mean))) return null;
  const slope = doses.reduce(
    (sum, { score, events: e, total: n }) => sum + (e - n * rate) * (score - mean),
    0,
  );
  const z = slope / Math.sqrt(rate * (1 - rate) * spread);
  return { chiSquare: z * z, z, p: chiSquareTail(z * z, 1) };
};
