import { mechanism, SYMPTOMS } from '../answers/mechanism.ts';
import type { JointRow, StepMeaning, StepOutcome } from './joint-row.ts';

/** Why a joint says nothing about a step. */
export type SilentBecause = 'not-needed' | 'not-recorded' | 'never-tried';

/** A joint seen from one step. */
export interface Seen {
  readonly row: JointRow;
  readonly missed: boolean;
  /** A fault that missing this step can explain, or scrapped for the thread. */
  readonly event: boolean;
  /** A fault that it can not explain. */
  readonly control: boolean;
}

const MISSED: ReadonlySet<StepOutcome> = new Set(['skipped', 'left-failing']);

/**
 * `missed` in at least one part, `done` in every part that needed it, or the reason why neither is known. A part without a record
 * could have been either, so it rules out "done" but not "missed".
 */
export const exposureOf = (row: JointRow, key: string): 'missed' | 'done' | SilentBecause => {
  const recess = row.steps.recess[key]?.outcome;
  const tenon = row.steps.tenon[key]?.outcome;
  if ((recess && MISSED.has(recess)) || (tenon && MISSED.has(tenon))) return 'missed';
  if (recess === 'not-recorded' || tenon === 'not-recorded' || !(recess ?? tenon)) return 'not-recorded';
  return recess === 'done' || tenon === 'done' ? 'done' : 'not-needed';
};

/** How many other steps were skipped in some part: the mark of a hurried day. Fails do not count, they may follow from a step. */
export const otherSkips = (row: JointRow, key: string): number => {
  const { recess, tenon } = row.steps;
  let skips = 0;
  for (const other in recess) if (other !== key && recess[other]?.outcome === 'skipped') skips++;
  for (const other in tenon)
    if (other !== key && tenon[other]?.outcome === 'skipped' && recess[other]?.outcome !== 'skipped') skips++;
  return skips;
};

/** The joints that tell something about a step, in the order given, and the number of the others by reason. */
export const seenFrom = (
  rows: readonly JointRow[],
  step: StepMeaning,
): { readonly seen: readonly Seen[]; readonly silent: Readonly<Record<SilentBecause, number>> } => {
  const seen: Seen[] = [];
  const kinds = new Map(SYMPTOMS.map((symptom) => [symptom, mechanism(step.guards, symptom)]));
  const silent = { 'not-needed': 0, 'not-recorded': 0, 'never-tried': 0 };
  for (const row of rows) {
    const exposure = exposureOf(row, step.key);
    if (exposure !== 'missed' && exposure !== 'done') silent[exposure]++;
    else if (row.firstTry === 'unknown') silent['never-tried']++;
    else {
      const faults = row.firstTry === 'failed' ? row.symptoms : [];
      seen.push({
        row,
        missed: exposure === 'missed',
        event: row.firstTry === 'scrapped' || faults.some((fault) => kinds.get(fault) === 'explains'),
        control: faults.some((fault) => kinds.get(fault) === 'cannot'),
      });
    }
  }
  return { seen, silent };
};

/** Joints are compared within one log, wood group and pitch. */
export const stratumOf = (row: JointRow): string =>
  `${row.log}\u0000${row.woodGroup}\u0000${row.pitch.toFixed(3)}`;
