import type { Millimetres } from '../units/brands.ts';
import type { Interval } from './counts.ts';
import { hardnessCurve, heldAt } from './hardness-curve.ts';
import type { JointTable } from './joint-row.ts';

/** Held share of crests to expect of a wood never tried, at one hardness; 90 % interval. */
export interface AtHardness extends Interval {
  /** Side hardness, newton. */
  readonly hardness: number;
  readonly value: number;
}

/** One pitch along the hardness. */
export interface HardnessLine {
  readonly pitch: Millimetres;
  /** Joints of this pitch behind it; the others lend to it. */
  readonly joints: number;
  /** From soft to hard. */
  readonly points: readonly AtHardness[];
}

/** The curve of hardness, reckoned out at every pitch of the log, the most tried first. */
export interface ByHardness {
  readonly lines: readonly HardnessLine[];
  readonly joints: number;
  readonly woods: number;
  /** Joints never tried, or whose wood's hardness no table has. */
  readonly silent: number;
}

/** From softer than any wood that is threaded to the hardest there are. */
export const HARDNESS = { from: 1000, to: 20_000 } as const;
const POINTS = 31;
/** Fewer would show what was believed beforehand and no more. */
const FEWEST = { woods: 3, joints: 20 } as const;

/** Null until twenty joints in three woods of known hardness were tried. */
export const byHardness = (table: JointTable): ByHardness | null => {
  const curve = hardnessCurve(table);
  if (!curve || curve.woods < FEWEST.woods || curve.joints < FEWEST.joints) return null;
  const tried = new Map<string, { pitch: Millimetres; joints: number }>();
  for (const { firstTry, hardness, pitch } of table.rows) {
    if (firstTry === 'unknown' || hardness === null) continue;
    const key = pitch.toFixed(3);
    tried.set(key, { pitch, joints: (tried.get(key)?.joints ?? 0) + 1 });
  }
  const lines = [...tried.values()]
    .sort((a, b) => b.joints - a.joints || b.pitch - a.pitch)
    .map(({ pitch, joints }) => ({
      pitch,
      joints,
      points: Array.from({ length: POINTS }, (_, i) => {
        const hardness = HARDNESS.from * (HARDNESS.to / HARDNESS.from) ** (i / (POINTS - 1));
        const held = heldAt(curve, hardness, pitch);
        return held.ok ? { hardness, ...held.value } : [];
      }).flat(),
    }));
  return { lines, joints: curve.joints, woods: curve.woods, silent: curve.silent };
};

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
