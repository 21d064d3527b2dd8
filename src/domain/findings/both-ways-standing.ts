import type { BothWaysPlan } from '../log/records.ts';
import { type BothWays, bothWays } from './both-ways.ts';
import type { JointRow } from './joint-row.ts';

/** Right at the first trial counts 1, eased once to right too; nothing tried, nothing counted. */
const VALUE: Readonly<Record<JointRow['firstTry'], number | null>> = {
  right: 1,
  eased: 1,
  failed: 0,
  scrapped: 0,
  unknown: null,
};

/** A trial so far, every box by its lot as drawn, whatever was then done. */
export const standingOf = (plan: BothWaysPlan, rows: readonly JointRow[]): BothWays => {
  const wanted = new Set(plan.boxes);
  const rowOf = new Map(rows.flatMap((row) => (wanted.has(row.id) ? [[row.id, row] as const] : [])));
  return bothWays(
    plan.boxes.map((id, i) => {
      const row = rowOf.get(id);
      return { lot: plan.lots[i] ?? 'with', value: row ? VALUE[row.firstTry] : null };
    }),
    plan.lots.length,
  );
};
