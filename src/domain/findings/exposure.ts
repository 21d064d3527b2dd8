import type { JointRow, StepMeaning, StepOutcome } from './joint-row.ts';
import { mechanism } from './mechanism.ts';

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

const outcomesOf = (row: JointRow, key: string): readonly StepOutcome[] =>
  Object.values(row.steps).flatMap((steps) => steps[key]?.outcome ?? []);

/**
 * Missed in at least one part, done in all that needed it, or nothing to say: a part whose record is missing could have
 * been either, so it silences a "done" but not a "missed".
 */
export const exposureOf = (row: JointRow, key: string): 'missed' | 'done' | SilentBecause => {
  const outcomes = outcomesOf(row, key);
  if (outcomes.some((outcome) => MISSED.has(outcome))) return 'missed';
  if (outcomes.length === 0 || outcomes.includes('not-recorded')) return 'not-recorded';
  return outcomes.includes('done') ? 'done' : 'not-needed';
};

/** How many other steps were skipped in some part: the mark of a hurried day. Fails do not count, they may follow from a step. */
export const otherSkips = (row: JointRow, key: string, steps: readonly StepMeaning[]): number =>
  steps.filter((step) => step.key !== key && outcomesOf(row, step.key).includes('skipped')).length;

/** The joints that say something of a step, in the order given, and how many do not, by reason. */
export const seenFrom = (
  rows: readonly JointRow[],
  step: StepMeaning,
): { readonly seen: readonly Seen[]; readonly silent: Readonly<Record<SilentBecause, number>> } => {
  const seen: Seen[] = [];
  const silent = { 'not-needed': 0, 'not-recorded': 0, 'never-tried': 0 };
  for (const row of rows) {
    const exposure = exposureOf(row, step.key);
    if (exposure !== 'missed' && exposure !== 'done') silent[exposure]++;
    else if (row.firstTry === 'unknown') silent['never-tried']++;
    else {
      const faults = row.firstTry === 'failed' ? row.symptoms : [];
      const kinds = faults.map((symptom) => mechanism(step.guards, symptom));
      seen.push({
        row,
        missed: exposure === 'missed',
        event: row.firstTry === 'scrapped' || kinds.includes('explains'),
        control: kinds.includes('cannot'),
      });
    }
  }
  return { seen, silent };
};

/** Joints are compared within one log, wood group and pitch. */
export const stratumOf = (row: JointRow): string =>
  `${row.log}\u0000${row.woodGroup}\u0000${row.pitch.toFixed(3)}`;
