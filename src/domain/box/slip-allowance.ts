import { slipAbsorbed } from '../alignment/slip.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { SAME_DEPTH } from './cuts.ts';

/** What the passes still to cut make good when a piece stands a little off its groove. */
export interface SlipAllowance {
  readonly passesLeft: number;
  /** Error along the thread that they cut away without a trace; nothing when the piece is at its full depth. */
  readonly absorbed: Millimetres;
}

/**
 * How far along the work a groove cut to a depth may be missed when it is picked up again, and the planned passes still cut every trace of
 * it away, mm. Depths are radial, from touch-off. Null before the first pass, where there is no groove to miss, and for depths that no joint has.
 */
export const slipAllowance = (
  reached: Millimetres | null,
  planned: readonly Millimetres[],
): SlipAllowance | null => {
  if (reached === null) return null;
  const left = planned.filter((depth) => depth > reached + SAME_DEPTH);
  const absorbed = slipAbsorbed(mm(Math.max(reached, ...left)), reached);
  return absorbed.ok ? { passesLeft: left.length, absorbed: absorbed.value } : null;
};
