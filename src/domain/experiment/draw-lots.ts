import type { Random } from '../random.ts';
import { ok, type Result, within } from '../result.ts';

/** What an experiment on a step asks of one box. Lots are drawn beforehand in blocks of four. */
export type Lot = 'with' | 'without';

export const BLOCK = 4;
/** Fewest and most boxes of an experiment. */
export const EXPERIMENT_BOXES = { min: 2 * BLOCK, max: 200 } as const;

/** Lots for `boxes` boxes (8 to 200, a multiple of 4): two and two in every block of four, order drawn. */
export const drawLots = (boxes: number, random: Random): Result<readonly Lot[]> => {
  const checked = within('boxes', boxes, EXPERIMENT_BOXES.min, EXPERIMENT_BOXES.max, 'count');
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
