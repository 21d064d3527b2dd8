import { normalCdf } from '../findings/statistics/distributions.ts';
import { BOUNDS } from './compare.ts';
import { BLOCK, EXPERIMENT_BOXES } from './draw-lots.ts';

/** What is measured: a reading or a time (its effect in standard deviations), or right or not (its two rates). */
export type Expected =
  | { readonly measure: 'reading'; readonly effect: number }
  | { readonly measure: 'right'; readonly withRate: number; readonly withoutRate: number };

/**
 * Chance that an experiment of so many boxes (8 to 200) gives a clear answer at either look, by normal approximation of both looks
 * together; z at half and at the end share half of their information. Within 0.03 of simulation from 24 boxes.
 */
export const experimentPower = (boxes: number, expected: Expected): number => {
  const half = lookAt(boxes / 2, BOUNDS.half, expected);
  const end = lookAt(boxes, BOUNDS.end, expected);
  const clearAtHalf = beyond(half.bound, half.shift, 1);
  // Not clear at half but at the end: z there, given z at half, has mean shift + (z - its shift)/sqrt 2 and variance 1/2.
  const reach = Math.min(half.bound, Math.abs(half.shift) + 8);
  let later = 0;
  const steps = 400;
  for (let i = 0; i < steps; i++) {
    const z = -reach + (2 * reach * (i + 0.5)) / steps;
    const density = Math.exp(-((z - half.shift) ** 2) / 2) / Math.sqrt(2 * Math.PI);
    later +=
      density *
      beyond(end.bound, end.shift + (z - half.shift) * Math.SQRT1_2, Math.SQRT1_2) *
      ((2 * reach) / steps);
  }
  return Math.min(1, clearAtHalf + later);
};

const beyond = (bound: number, mean: number, error: number): number =>
  1 - normalCdf((bound - mean) / error) + normalCdf((-bound - mean) / error);

/** Mean of z at a look, and its bound, both on the scale where z varies by 1. */
const lookAt = (boxes: number, bound: number, expected: Expected): { shift: number; bound: number } => {
  if (expected.measure === 'right') {
    const { withRate: p, withoutRate: q } = expected;
    const middle = (p + q) / 2;
    const spread = Math.sqrt((4 * middle * (1 - middle)) / boxes);
    return { shift: spread > 0 ? Math.abs(p - q) / spread : 0, bound };
  }
  // A new drawing of lots leaves the effect in the spread, so z is a bounded function of the t within blocks: z^2 = 3B t^2/(t^2 + df).
  const thrice = (3 * boxes) / BLOCK;
  const df = thrice - 1;
  if (thrice <= bound * bound) return { shift: 0, bound: Number.POSITIVE_INFINITY };
  const t = bound * Math.sqrt(df / (thrice - bound * bound));
  const error = Math.sqrt(1 + (t * t) / (2 * df));
  return {
    shift: (Math.abs(expected.effect) * Math.sqrt(boxes)) / 2 / error,
    bound: (t * (1 - 1 / (4 * df))) / error,
  };
};

/** The effect that power is computed for: a fit that falls from 85 to 65 right in 100; a reading or a time that shifts by 0.8 of its standard deviation. */
const ASSUMED = { withRate: 0.85, withoutRate: 0.65, effect: 0.8 } as const;

/** Power at one size of experiment. */
export interface PowerAt {
  readonly boxes: number;
  readonly fit: number;
  /** Of a reading or a time. */
  readonly reading: number;
}

/** Power at every size that can be drawn, so that a screen can show it while a number is typed. */
export const powerTable = (): readonly PowerAt[] => {
  const sizes: PowerAt[] = [];
  for (let boxes = EXPERIMENT_BOXES.min; boxes <= EXPERIMENT_BOXES.max; boxes += BLOCK)
    sizes.push({
      boxes,
      fit: experimentPower(boxes, { measure: 'right', ...ASSUMED }),
      reading: experimentPower(boxes, { measure: 'reading', ...ASSUMED }),
    });
  return sizes;
};
