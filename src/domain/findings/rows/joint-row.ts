import type { Day, Hardener } from '../../box/records.ts';
import type { GoingOn, Seated, ThreadState } from '../../box/trial-words.ts';
import type { Part } from '../../setup/events.ts';
import type { Guard } from '../../setup/procedure.ts';
import type { Millimetres } from '../../units/brands.ts';

/**
 * The outcome of a step when its part was cut, after every re-opening, also between passes. A step that was carried over counts
 * as what it was in the earlier set-up.
 */
export type StepOutcome = 'done' | 'skipped' | 'left-failing' | 'not-needed' | 'not-recorded';

export interface StepAtCut {
  readonly outcome: StepOutcome;
  readonly carriedOver: boolean;
  /** Time it took in ms, only where the clocks allow an exact one. */
  readonly exactMs: number | null;
}

/** Everything a trial fit can show that is not as it should be. */
export type Symptom = Exclude<GoingOn, 'free'> | Exclude<Seated, 'flush'> | Exclude<ThreadState, 'sound'>;

/**
 * How the first trial fit went. `eased`: tight, then right after a single easing, which is good practice and no failure.
 * `scrapped`: given up for the thread before any trial. `unknown`: never tried.
 */
export type FirstTry = 'right' | 'eased' | 'failed' | 'scrapped' | 'unknown';

/** One trial fit that tells something about size: the clearance computed for that depth, and how the fit felt. */
export interface ClearanceTrial {
  /** Diametral flank clearance, mm; negative is interference. */
  readonly clearance: Millimetres;
  readonly felt: 'tight' | 'right' | 'slack';
  /** Trials of one fit share a number; finish or drying starts a new one. */
  readonly fit: number;
}

/** One joint as the findings see it. Hold points are not in it. */
export interface JointRow {
  readonly id: string;
  /** The log it came from, when several are pooled. */
  readonly log: string;
  readonly boxNumber: number;
  readonly day: Day;
  /** Joints that share a set-up run or a day carry the same one. */
  readonly cluster: string;
  readonly rig: string;
  /** How many joints this turner had cut before, plus one. */
  readonly experience: number;
  /** Wood of the piece or ring that is the weaker carrier of the thread. */
  readonly wood: string;
  readonly woodGroup: string;
  /** Side hardness, newton; null when no table has it. */
  readonly hardness: number | null;
  readonly pitch: Millimetres;
  readonly hardener: Hardener;
  readonly insertRing: boolean;
  readonly steps: Readonly<Record<Part, Readonly<Record<string, StepAtCut>>>>;
  readonly firstTry: FirstTry;
  /** Of the first trial; for a joint scrapped for its thread, whatever was noted. */
  readonly symptoms: readonly Symptom[];
  readonly clearanceTrials: readonly ClearanceTrial[];
  /** False: the clearances were worked out with an assumed tip flat, alike for all joints of this rig. */
  readonly tipFlatKnown: boolean;
}

/** A step that can be scored: what it says, in its newest wording, and what it guards against. */
export interface StepMeaning {
  readonly key: string;
  readonly sentence: string;
  readonly guards: readonly Guard[];
}

/** The rows, the steps they may speak of, and how many boxes gave no row, by reason. */
export interface JointTable {
  readonly rows: readonly JointRow[];
  readonly steps: readonly StepMeaning[];
  readonly leftOut: Readonly<Record<string, number>>;
}

/** Symptoms of crests that broke: a failure of the wood, not of size or alignment. */
const CRUMBLED: ReadonlySet<Symptom> = new Set(['chipped', 'furry', 'torn']);

/** Did the crests come out whole? A joint given up for its thread did not. */
export const crestsHeld = (row: JointRow): boolean =>
  row.firstTry !== 'scrapped' && !row.symptoms.some((symptom) => CRUMBLED.has(symptom));

/** Time order, then box, log and id: the same whatever order the rows came in. */
export const inTimeOrder = (rows: readonly JointRow[]): readonly JointRow[] =>
  [...rows].sort(
    (a, b) =>
      compare(a.day, b.day) || a.boxNumber - b.boxNumber || compare(a.log, b.log) || compare(a.id, b.id),
  );

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
