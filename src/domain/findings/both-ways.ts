import type { Random } from '../log/random.ts';
import { ok, type Result, within } from '../result.ts';
import { normalCdf, normalTails } from './distributions.ts';

/** "Try it both ways": a small trial of a step that may be varied, its lots drawn beforehand in blocks of four. */
export type Lot = 'with' | 'without';

/** Two looks: at half and at the end. Beyond these |z| the answer is clear (O'Brien and Fleming's bounds for two looks at 5 %, from memory: 2.797, 1.977). */
export const BOUNDS = { half: 2.8, end: 1.98 } as const;

/** What is measured: a reading or a time (its effect in standard deviations), or right or not (its two rates). */
export type Expected =
  | { readonly measure: 'reading'; readonly effect: number }
  | { readonly measure: 'right'; readonly withRate: number; readonly withoutRate: number };

export const BLOCK = 4;

/** Lots for `boxes` boxes (8 to 200, a multiple of 4): two and two in every block of four, order drawn. */
export const drawLots = (boxes: number, random: Random): Result<readonly Lot[]> => {
  const checked = within('boxes', boxes, 2 * BLOCK, 200, 'count');
  if (!checked.ok) return checked;
  const blocks = Math.round(boxes / BLOCK);
  return ok(
    Array.from({ length: blocks }, () => {
      const block: Lot[] = ['with', 'with', 'without', 'without'];
      for (let i = block.length - 1; i > 0; i--) {
        const j = random.whole(0, i);
        [block[i], block[j]] = [block[j] as Lot, block[i] as Lot];
      }
      return block;
    }).flat(),
  );
};

/**
 * Chance that a trial of so many boxes (8 to 200) gives a clear answer at either look, by normal approximation of both looks
 * together; z at half and at the end share half of their information. Within 0.03 of simulation from 24 boxes.
 */
export const trialPower = (boxes: number, expected: Expected): number => {
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
  // Drawing anew keeps the effect in the spread, so z is a bounded function of the t within blocks: z^2 = 3B t^2/(t^2 + df).
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

/** One box of the trial: its lot as drawn, whatever was then done, and what was measured (right: 1, not: 0); null if nothing was. */
export interface Trialled {
  readonly lot: Lot;
  readonly value: number | null;
}

export interface BothWays {
  /** Mean with, less mean without; null while either is empty. */
  readonly difference: number | null;
  /** Difference as drawn against all drawings that the blocks could have given. */
  readonly z: number;
  readonly p: number;
  readonly with: number;
  readonly without: number;
  /** 'clear' only at a look: at half of the planned boxes or at the end. */
  readonly look: 'none-yet' | 'half' | 'end';
  readonly clear: boolean;
}

/**
 * The trial so far, as drawn. z is the sum of the with-boxes above their block's mean over its standard deviation when lots
 * are drawn anew within each block; boxes without a value drop out of their block. Between looks nothing is called clear.
 */
export const bothWays = (boxes: readonly Trialled[], planned: number): BothWays => {
  const done = boxes.filter(({ value }) => value !== null).length;
  const look = boxes.length >= planned ? 'end' : boxes.length >= planned / 2 ? 'half' : 'none-yet';
  const seen = look === 'half' ? boxes.slice(0, Math.ceil(planned / 2)) : boxes.slice(0, planned);
  let [sum, variance] = [0, 0];
  for (let from = 0; from < seen.length; from += BLOCK) {
    const block = seen.slice(from, from + BLOCK).filter(({ value }) => value !== null);
    const m = block.length;
    const k = block.filter(({ lot }) => lot === 'with').length;
    if (m < 2 || k === 0 || k === m) continue;
    const mean = block.reduce((total, { value }) => total + (value as number), 0) / m;
    const squares = block.reduce((total, { value }) => total + ((value as number) - mean) ** 2, 0);
    for (const { lot, value } of block) if (lot === 'with') sum += (value as number) - mean;
    variance += ((k * (m - k)) / (m * (m - 1))) * squares;
  }
  const z = variance > 1e-18 ? sum / Math.sqrt(variance) : 0;
  const bound = look === 'none-yet' ? Number.POSITIVE_INFINITY : BOUNDS[look];
  const means = (['with', 'without'] as const).map((lot) => meanOf(boxes, lot));
  const [one, other] = means;
  return {
    difference: one == null || other == null ? null : one - other,
    z,
    p: normalTails(z),
    with: countOf(boxes, 'with'),
    without: done - countOf(boxes, 'with'),
    look,
    clear: Math.abs(z) >= bound,
  };
};

const valuesOf = (boxes: readonly Trialled[], lot: Lot): readonly number[] =>
  boxes.flatMap((box) => (box.lot === lot && box.value !== null ? [box.value] : []));
const countOf = (boxes: readonly Trialled[], lot: Lot): number => valuesOf(boxes, lot).length;
const meanOf = (boxes: readonly Trialled[], lot: Lot): number | null => {
  const values = valuesOf(boxes, lot);
  return values.length === 0 ? null : values.reduce((sum, v) => sum + v, 0) / values.length;
};
