import type { Millimetres } from '../../units/brands.ts';
import type { Interval } from '../statistics/counts.ts';

/** Held share of crests to expect of a wood never tried, at one hardness; 90 % interval. */
interface AtHardness extends Interval {
  /** Side hardness, newton. */
  readonly hardness: number;
  readonly value: number;
}

/** One pitch along the hardness. */
interface HardnessLine {
  readonly pitch: Millimetres;
  /** Joints of this pitch. Those of other pitches are pooled into the curve too. */
  readonly joints: number;
  /** From soft to hard. */
  readonly points: readonly AtHardness[];
}

/** The hardness curve at every pitch of the log, the most tried pitch first. */
export interface ByHardness {
  readonly lines: readonly HardnessLine[];
  readonly joints: number;
  readonly woods: number;
  /** Joints never tried, or whose wood's hardness no table has. */
  readonly silent: number;
}

/** What a line says at a hardness (newton), between its points by straight lines; beyond its ends, its ends. */
export const onLine = ({ points }: HardnessLine, hardness: number): AtHardness | null => {
  const after = points.findIndex((point) => point.hardness >= hardness);
  const [above, below] = after < 0 ? [points.at(-1), points.at(-1)] : [points[after], points[after - 1]];
  if (!above) return null;
  if (!below || below === above) return { ...above, hardness };
  const way = (hardness - below.hardness) / (above.hardness - below.hardness);
  const at = (of: 'value' | 'low' | 'high') => below[of] + way * (above[of] - below[of]);
  return { hardness, value: at('value'), low: at('low'), high: at('high') };
};
