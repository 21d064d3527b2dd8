import type { Interval } from '../findings/statistics/counts.ts';
import { BLOCK, type Lot } from './draw-lots.ts';

/** Two looks: at half and at the end. Beyond these |z| the answer is clear (O'Brien and Fleming's bounds for two looks at 5 %, from memory: 2.797, 1.977). */
export const BOUNDS = { half: 2.8, end: 1.98 } as const;

/** One box of an experiment: its lot as drawn, whatever was then done, and what was measured of it; null if nothing was. */
export interface Drawn {
  readonly lot: Lot;
  readonly value: number | null;
}

/** One side of an experiment: its boxes, how many of them were measured, and their mean. */
export interface Arm {
  readonly boxes: number;
  readonly measured: number;
  readonly mean: number | null;
}

/** What the boxes looked at say of one measure, in the unit of their values. */
export interface Comparison {
  readonly with: Arm;
  readonly without: Arm;
  /**
   * `nothing`: no block of four holds a measured box of either lot. `alike`: every box measured the same within its block, so
   * there is no spread to compare a difference with. For both, the other numbers are zero or null.
   */
  readonly state: 'compared' | 'alike' | 'nothing';
  /** With less without, from within the blocks. */
  readonly difference: number;
  /** Every difference that the boxes do not clearly rule out at this look; null where they rule out none, or where only the lot differs. */
  readonly interval: Interval | null;
  /** The difference as drawn, against all drawings that the blocks could have given. */
  readonly z: number;
  readonly clear: boolean;
}

/**
 * With and without compared at a look with this bound on |z|. z is the sum of the with-boxes above their block's mean over its
 * standard deviation over all drawings of lots within the blocks; a box without a value drops out of its block. The interval
 * inverts the same test: all shifts d for which z, after taking d from every with-box, stays inside the bound, the roots of a
 * quadratic in d. So it excludes zero exactly where the answer is clear, and over both looks holds the true shift in 95 of 100
 * experiments.
 */
export const compare = (boxes: readonly Drawn[], bound: number): Comparison => {
  const arms = { with: armOf(boxes, 'with'), without: armOf(boxes, 'without') };
  // Sums over blocks: of the with-boxes above the mean, of what a shift of 1 adds to that, and of the terms of the variance.
  let [sum, reach, spread, cross, square] = [0, 0, 0, 0, 0];
  for (let from = 0; from < boxes.length; from += BLOCK) {
    const block = boxes.slice(from, from + BLOCK).filter(isMeasured);
    const m = block.length;
    const withs = block.filter(({ lot }) => lot === 'with');
    const q = (withs.length * (m - withs.length)) / m;
    if (!(q > 0)) continue;
    const mean = block.reduce((total, { value }) => total + value, 0) / m;
    const above = withs.reduce((total, { value }) => total + value - mean, 0);
    const share = q / (m - 1);
    sum += above;
    reach += q;
    spread += share * block.reduce((total, { value }) => total + (value - mean) ** 2, 0);
    cross += share * above;
    square += share * q;
  }
  if (reach === 0) return { ...arms, state: 'nothing', ...NO_DIFFERENCE };
  if (!(spread > NO_SPREAD)) return { ...arms, state: 'alike', ...NO_DIFFERENCE };
  const z = sum / Math.sqrt(spread);
  const b2 = bound * bound;
  return {
    ...arms,
    state: 'compared',
    difference: sum / reach,
    interval: between(reach * reach - b2 * square, sum * reach - b2 * cross, sum * sum - b2 * spread),
    z,
    clear: Math.abs(z) >= bound,
  };
};

const NO_DIFFERENCE = { difference: 0, interval: null, z: 0, clear: false } as const;
/** Below it only rounding is left. */
const NO_SPREAD = 1e-18;

/** Where a x^2 - 2 h x + c is at or below zero. */
const between = (a: number, h: number, c: number): Interval | null => {
  if (!(a > 1e-9)) return null;
  const half = Math.sqrt(Math.max(0, h * h - a * c)) / a;
  return half > 1e-9 * Math.abs(h / a) ? { low: h / a - half, high: h / a + half } : null;
};

const isMeasured = (box: Drawn): box is Drawn & { readonly value: number } => box.value !== null;

const armOf = (boxes: readonly Drawn[], lot: Lot): Arm => {
  const own = boxes.filter((box) => box.lot === lot);
  const measured = own.filter(isMeasured);
  return {
    boxes: own.length,
    measured: measured.length,
    mean:
      measured.length === 0 ? null : measured.reduce((sum, { value }) => sum + value, 0) / measured.length,
  };
};
