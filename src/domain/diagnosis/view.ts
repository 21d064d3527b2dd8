import type { SetUpLog } from '../box/set-up-log.ts';
import type { GoingOn, MarksAt, MarksOn, Seated, ThreadState } from '../box/trial-words.ts';
import type { Part } from '../setup/events.ts';
import type { Millimetres } from '../units/brands.ts';

export type { SetUpLog };

/** What the diagnosis is given of one wood. */
export interface ThreadWood {
  /** Radial and tangential strain for one percent point of moisture. */
  readonly radial: number;
  readonly tangential: number;
  /** 0 (never) to 1: how readily crests crumble, and how readily the cutter leaves fuzz. */
  readonly crumbles: number;
  readonly furs: number;
}

/** The joint as its record has it: measured where it was measured, else planned. Radial unless said otherwise. */
export interface JointView {
  readonly pitch: Millimetres;
  /** Diametral clearance that was wanted. */
  readonly wanted: Millimetres;
  readonly threads: number;
  readonly cutterRadius: Millimetres;
  readonly tipFlat: Millimetres;
  /** One standard deviation of the tip flat: wide for an assumed one. */
  readonly tipFlatUncertainty: Millimetres;
  /** Turned diameters, and what a reading of each is good for (one standard deviation). */
  readonly bore: Millimetres;
  readonly boreUncertainty: Millimetres;
  readonly tenon: Millimetres;
  readonly tenonUncertainty: Millimetres;
  /** Depth cut so far, from touch-off. */
  readonly depth: Readonly<Record<Part, Millimetres>>;
  readonly plannedDepth: Millimetres;
  /** Widening of each groove a flank by the helix. */
  readonly flankShift: Readonly<Record<Part, Millimetres>>;
  /** Diametral, over the length of the thread; null where only one reading was taken. */
  readonly boreTaper: Millimetres | null;
  readonly tenonTaper: Millimetres | null;
  readonly outOfRound: Millimetres | null;
  /** Room between tenon end and floor as planned or measured. */
  readonly bottomGap: Millimetres;
  readonly wall: Millimetres | null;
  readonly leastWall: Millimetres;
  readonly wood: Readonly<Record<Part, ThreadWood>>;
  /** The clearance found to suit this turner, with its standard deviation; null before there is one. */
  readonly learned: { readonly clearance: Millimetres; readonly uncertainty: Millimetres } | null;
}

/** What the turner works with: amounts are whole steps of it. */
export interface BenchView {
  readonly unit: 'inch' | 'metric';
  readonly dial: { readonly travelPerTurn: Millimetres; readonly marksPerTurn: number | null } | null;
  /** The piece on the jig now. */
  readonly onJig: Part | null;
  /** The setting of the piece on the jig still holds. */
  readonly holds: boolean;
  /** A finish is on the thread. */
  readonly finished: boolean;
}

/** One trial fit as it was entered; null and empty are "not said". */
export interface TrialView {
  readonly right: boolean;
  readonly goingOn: readonly GoingOn[];
  readonly seated: Seated | null;
  readonly threads: readonly ThreadState[];
  readonly marks: { readonly on: MarksOn; readonly at: MarksAt } | null;
  readonly endPlay: Millimetres | null;
  readonly turnsOn: number | null;
  readonly bottomGap: Millimetres | null;
  /** Width of the crest flat of a piece, by eye beside a drawn scale. */
  readonly crestFlat: { readonly part: Part; readonly width: Millimetres } | null;
  readonly afterFinish: boolean;
  /** Moves made after this trial and before the next, in order. */
  readonly moves: readonly MoveMade[];
}

export const MOVE_KINDS = [
  'leave-it',
  'start-backwards',
  'brush-out',
  'on-and-off-by-hand',
  'wax',
  'slacken-jaws',
  'find-dent',
  'chamfer-start',
  'trim-last-thread',
  'same-setting-again',
  'deepen',
  'clear-floor',
  'deepen-relief',
  'face-shoulder',
  'ease-crests',
  'true-bore',
  'true-tenon',
  'rub-flanks',
  'harden-and-recut',
  'new-tenon',
] as const;
export type MoveKind = (typeof MOVE_KINDS)[number];

/** A move as it was done. `by` is the amount where the move has one, `size` and `depth` are those of a new tenon. */
export interface MoveMade {
  readonly kind: MoveKind;
  readonly part: Part | null;
  readonly by: Millimetres | null;
  readonly size: Millimetres | null;
  readonly depth: Millimetres | null;
}

/** What can be asked about: the fields of a trial and the readings of the pieces. */
export const FIELDS = [
  'seated',
  'threads',
  'marks',
  'endPlay',
  'turnsOn',
  'crestFlat',
  'bottomGap',
  'boreTaper',
  'tenonTaper',
  'outOfRound',
] as const;
export type Field = (typeof FIELDS)[number];

export interface DiagnosisView {
  readonly joint: JointView;
  readonly bench: BenchView;
  readonly log: SetUpLog;
  /** Oldest first; the last one is asked about. */
  readonly trials: readonly TrialView[];
  /** Asked about the last trial already, answered or not: never asked again. Two questions are enough for one trial. */
  readonly asked?: readonly Field[];
  /** 32 bit; from the box's id and the trial's place, so that a screen drawn twice says the same. */
  readonly seed: number;
}
