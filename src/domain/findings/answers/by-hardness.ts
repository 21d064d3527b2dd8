import type { Millimetres } from '../../units/brands.ts';
import type { JointTable } from '../rows/joint-row.ts';
import { hardnessCurve, heldAt } from './hardness-curve.ts';
import type { ByHardness } from './hardness-lines.ts';

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
