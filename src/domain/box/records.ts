import type { Field, MoveMade } from '../diagnosis/view.ts';
import type { Part } from '../setup/events.ts';
import type { Procedure } from '../setup/procedure.ts';
import type { Millimetres } from '../units/brands.ts';
import type { Length } from '../units/length.ts';
import type { GoingOn, MarksAt, MarksOn, Seated, ThreadState } from './trial-words.ts';

/** What a log keeps. Set-up events and photo bytes have stores of their own. */
export interface Bodies {
  readonly box: Box;
  readonly rig: Rig;
  readonly procedure: Procedure;
  readonly instrument: Instrument;
  readonly wood: OwnWood;
  readonly experiment: ExperimentPlan;
}
export type Kind = keyof Bodies;

/** One version of one record. Versions order by (rev, writer, content); a deletion is a version too. */
export interface Stored<K extends Kind = Kind> {
  readonly logId: string;
  readonly kind: K;
  readonly id: string;
  readonly rev: number;
  readonly writer: string;
  /** Epoch ms, for showing only: it never orders versions. */
  readonly savedAt: number;
  /** Null is a tombstone. */
  readonly body: Bodies[K] | null;
}

/** Calendar day in the user's own time zone, 'yyyy-MM-dd'. */
export type Day = string;

export type Hand = 'right' | 'left';
export type Grain = 'end' | 'side';

/** The machine, asked once; null means "don't know yet" and the app reckons with its stated default. */
export interface Rig {
  readonly name: string;
  /** Spindle axis to tooth tip. */
  readonly cutterRadius: Length | null;
  readonly teeth: number | null;
  readonly tipFlat: Length | null;
  /** How the tip flat is known. */
  readonly tipFlatFrom: 'told' | 'scrap-pair' | null;
  /** How far anything (cutter body, screw) sticks out ahead of the tooth centre. */
  readonly aheadOfTooth: Length | null;
  readonly grip: 'collet' | 'draw-bar' | null;
  /** Travel of the cross-slide for one turn of its dial. */
  readonly travelPerTurn: Length | null;
  readonly marksPerTurn: number | null;
  readonly slideTravel: Length | null;
  /** To go deeper in the recess, the dial turns the same way as for the tenon, or the other way. */
  readonly recessDial: 'same' | 'other' | null;
  readonly jigSide: 'front' | 'behind' | null;
  readonly banjos: 1 | 2 | null;
  /** Chucks that fit the jig. */
  readonly chucks: number | null;
  readonly hand: Hand;
  /** Pitch of the jig's lead screw. */
  readonly pitch: Pitch | null;
}

/** A pitch as it was given: '10 tpi' or '2.5 mm'. */
export interface Pitch {
  readonly mm: Millimetres;
  readonly text: string;
}

/** A caliper, with the offset found once on a ring: inside reading minus outside reading. */
export interface Instrument {
  readonly name: string;
  readonly insideMinusOutside: Length | null;
}

/** A wood the tables lack, or the user's own figures. */
export interface OwnWood {
  readonly name: string;
  readonly group: 'hardwood' | 'softwood' | 'tropical';
  readonly note: string;
}

/** A small experiment on one step that may be varied: lots drawn beforehand, one for each box, in the order of the set-ups. */
export interface ExperimentPlan {
  readonly step: string;
  readonly sentence: string;
  /** What is measured of each box, chosen before the lots are drawn; absent in experiments of older versions, which measure the fit. */
  readonly measure?: ExperimentMeasure;
  readonly lots: readonly ('with' | 'without')[];
  readonly drawnOn: Day;
  /** Boxes that took a lot, in order; the first took the first lot. */
  readonly boxes: readonly string[];
  readonly givenUp: boolean;
}

/**
 * What an experiment measures: the reading first taken at a later step (how far out of true, or turns), the time of the box's first
 * set-up, or whether it was right at the first trial fit.
 */
export type ExperimentMeasure =
  | {
      readonly kind: 'reading';
      readonly step: string;
      readonly sentence: string;
      readonly of: 'angle' | 'turns';
    }
  | { readonly kind: 'time' }
  | { readonly kind: 'fit' };

/** The wood of one piece: a key of the wood table or of an OwnWood, and how the piece is cut. */
export interface WoodUse {
  readonly wood: string;
  readonly grain: Grain;
}

export type PassHabit = 'two-thirds' | 'equal-area' | 'crumbly';

export interface Plan {
  readonly route: 'recess-first' | 'both-turned';
  readonly recessIn: 'lid' | 'base';
  readonly lid: WoodUse;
  readonly base: WoodUse;
  /** A ring of a third wood that carries the thread of the named piece. */
  readonly insert: (WoodUse & { readonly in: 'lid' | 'base' }) | null;
  readonly pitch: Pitch;
  /** Recess diameter before threading. */
  readonly opening: Length;
  /** Outside diameter at the joint; null until known. */
  readonly outside: Length | null;
  /** Either a wanted clearance (null: the default for the pitch), or the turner's own depth as turns of the dial. */
  readonly aim:
    | { readonly by: 'fit'; readonly clearance: Length | null }
    | { readonly by: 'depth'; readonly dialTurns: number };
  /** Threads engaged; at least three. */
  readonly threads: number;
  readonly passes: PassHabit;
}

/**
 * Where an entry stands in its box's one sequence of readings, set-ups, cuts, trials and seats: 1 + the greatest there was when it
 * was written. A wall clock orders none of them.
 */
export interface InSequence {
  readonly seq: number;
}

export interface BoreReading extends InSequence {
  readonly id: string;
  readonly where: 'mouth' | 'relief';
  /** Along the rings (radial lines lie across them). */
  readonly along: Length;
  readonly across: Length | null;
  readonly overCrests: boolean;
}

export interface TenonReading extends InSequence {
  readonly id: string;
  readonly where: 'end' | 'shoulder';
  readonly diameter: Length;
  readonly overCrests: boolean;
}

/** One pass as it was really cut. */
export interface Cut extends InSequence {
  readonly id: string;
  readonly part: Part;
  readonly runId: string | null;
  /** Epoch ms, for showing only. */
  readonly at: number;
  /** Depth on the dial from touch-off after this pass, radial. */
  readonly depth: Length;
  /** A correction or spring pass after a trial fit. */
  readonly correction: boolean;
}

export interface Marks {
  readonly on: MarksOn;
  readonly at: MarksAt;
}

export interface Trial extends InSequence {
  readonly id: string;
  /** Epoch ms, for showing only. */
  readonly at: number;
  readonly right: boolean;
  readonly goingOn: readonly GoingOn[];
  readonly seated: Seated | null;
  readonly threads: readonly ThreadState[];
  readonly marks: Marks | null;
  /** Measured end play, when it was taken. */
  readonly endPlay: Length | null;
  /** What follows was not asked in older versions. Recess depth less tenon length as measured. */
  readonly bottomGap?: Length | null;
  /** Width of a crest flat, by eye beside a drawn scale. */
  readonly crestFlat?: { readonly part: Part; readonly width: Length } | null;
  /** By how much the bore narrows toward its floor, the tenon thickens toward its shoulder, the bore differs between two directions. */
  readonly boreTaper?: Length | null;
  readonly tenonTaper?: Length | null;
  readonly outOfRound?: Length | null;
  /** What the advice asked about and was answered, or could not be. */
  readonly asked?: readonly Field[];
  /** Moves made after this trial and before the next, in order; what the cutter did is in the cuts as well. */
  readonly moves?: readonly MoveMade[];
  /** Turns it went on before it stopped. */
  readonly turnsOn: number | null;
  /** Made after finish or drying: a new fit, not another try at the old one. */
  readonly afterFinish: boolean;
}

/** How the lid seats: where it is open (hours of a clock face, 12 = the mark), by how many papers, and what is still to turn. */
export interface Seat extends InSequence {
  readonly id: string;
  /** Epoch ms, for showing only. */
  readonly at: number;
  readonly open: readonly number[];
  readonly papers: number;
  /** Degrees still to go, clockwise seen from outside the lid; 0 to 360. */
  readonly degreesToGo: number | null;
  readonly takenFrom: 'tenon-shoulder' | 'rim' | null;
}

type Outcome = 'kept' | 'second' | 'scrapped';
type ScrapReason = 'thread' | 'wood' | 'turning' | 'other';
export type Hardener = 'none' | 'thin-ca' | 'sealer' | 'wax';

export interface Closing {
  readonly at: number;
  readonly outcome: Outcome;
  readonly scrapReason: ScrapReason | null;
  readonly hardener: Hardener;
  /** Before which pass it went on, 1-based; null when none. */
  readonly hardenerBeforePass: number | null;
  readonly outsideTurned: 'before' | 'after' | null;
  readonly note: string;
}

export type LidTurns = 'free' | 'stiff' | 'stuck' | 'loose';

export interface LidCheck {
  readonly id: string;
  readonly at: number;
  readonly on: Day;
  readonly lid: LidTurns;
}

/** A photo of the box; its bytes are in the photo store under the same id. */
export interface PhotoRef {
  readonly id: string;
  readonly at: number;
  readonly of: 'set-up' | 'recess' | 'tenon' | 'fit' | 'box';
}

export interface SetUpRef extends InSequence {
  readonly runId: string;
  readonly part: Part;
}

/** One box from blank to shelf. Its stages are lists that only grow, so that nothing entered is overwritten. */
export interface Box {
  /** 1, 2, 3... in its log. */
  readonly number: number;
  readonly name: string;
  readonly startedOn: Day;
  readonly rigId: string;
  readonly procedureId: string;
  readonly plan: Plan;
  readonly bore: readonly BoreReading[];
  readonly tenon: readonly TenonReading[];
  readonly instrumentId: string | null;
  readonly setUps: readonly SetUpRef[];
  readonly cuts: readonly Cut[];
  readonly trials: readonly Trial[];
  readonly seats: readonly Seat[];
  readonly closing: Closing | null;
  readonly lidChecks: readonly LidCheck[];
  readonly photos: readonly PhotoRef[];
}
