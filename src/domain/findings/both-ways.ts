import { normalTails } from './distributions.ts';
import { BLOCK, type Lot } from './draw-lots.ts';

/** Two looks: at half and at the end. Beyond these |z| the answer is clear (O'Brien and Fleming's bounds for two looks at 5 %, from memory: 2.797, 1.977). */
export const BOUNDS = { half: 2.8, end: 1.98 } as const;

/** One box of the trial: its lot as drawn, whatever was then done, and what was measured (right: 1, not: 0); null if nothing was. */
export interface Trialled {
  readonly lot: Lot;
  readonly value: number | null;
}

export interface BothWays {
  /** Mean with, less mean without, of the boxes looked at; null while either is empty. */
  readonly difference: number | null;
  /** Difference as drawn against all drawings that the blocks could have given. */
  readonly z: number;
  readonly p: number;
  /** Boxes looked at that have a value, by lot. */
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
  const [one, other] = [meanOf(seen, 'with'), meanOf(seen, 'without')];
  return {
    difference: one === null || other === null ? null : one - other,
    z,
    p: normalTails(z),
    with: valuesOf(seen, 'with').length,
    without: valuesOf(seen, 'without').length,
    look,
    clear: Math.abs(z) >= bound,
  };
};

const valuesOf = (boxes: readonly Trialled[], lot: Lot): readonly number[] =>
  boxes.flatMap((box) => (box.lot === lot && box.value !== null ? [box.value] : []));
const meanOf = (boxes: readonly Trialled[], lot: Lot): number | null => {
  const values = valuesOf(boxes, lot);
  return values.length === 0 ? null : values.reduce((sum, v) => sum + v, 0) / values.length;
};
