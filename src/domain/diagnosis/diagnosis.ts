import type { DialTarget } from '../joint/dial.ts';
import type { Part } from '../setup/events.ts';
import type { Millimetres } from '../units/brands.ts';
import type { Cause } from './causes.ts';
import type { Why } from './limits.ts';
import type { Field, MoveKind } from './view.ts';
import type { Word } from './words-chance.ts';

/** One thing that speaks for or against a cause, and how strongly: above 1 for it, below against. */
export type Evidence = { readonly ratio: number } & (
  | { readonly kind: 'said'; readonly word: Word }
  | { readonly kind: 'not-said'; readonly word: Word }
  | { readonly kind: 'marks' }
  | { readonly kind: 'reading'; readonly field: Field }
  | { readonly kind: 'missed'; readonly step: string }
  | { readonly kind: 'moved'; readonly what: string }
);

export interface RankedCause {
  readonly cause: Cause;
  /** 0 to 1; the shares of all causes sum to 1. */
  readonly share: number;
  /** Strongest first. */
  readonly for: readonly Evidence[];
  readonly against: readonly Evidence[];
}

export type ChanceWord = 'should-do-it' | 'may-do-it' | 'step-towards';
export type Confidence = 'likely' | 'possibly' | 'hard-to-say';

/** A move to make. Lengths in mm; `size` and `depth` are those of a new tenon. */
export interface AdvisedMove {
  readonly kind: MoveKind;
  readonly part: Part | null;
  readonly by: Millimetres | null;
  readonly size: Millimetres | null;
  readonly depth: Millimetres | null;
  /** Set up and pick up the thread first: the setting does not hold. */
  readonly reset: boolean;
  /** Calibrated chance that the lid is right afterwards. */
  readonly chance: number;
  readonly chanceWord: ChanceWord;
  /** The amount on the dial, for a cut. */
  readonly dial: DialTarget | null;
  /** The cause it is against, and what speaks for that most. */
  readonly against: Cause;
  readonly because: readonly Evidence[];
}

/** A typical answer to a question. Words, or a number of mm (turns for `turnsOn`). */
export type Answer =
  | { readonly kind: 'words'; readonly words: readonly Word[] }
  | {
      readonly kind: 'marks';
      readonly on: 'crest' | 'flank';
      readonly at: 'start' | 'by-shoulder' | 'all-along';
    }
  | { readonly kind: 'number'; readonly value: number };

export interface Question {
  readonly field: Field;
  /** The piece to look at, where the field is of one. */
  readonly part: Part | null;
  /** What each typical answer would lead to. */
  readonly answers: readonly { readonly answer: Answer; readonly move: MoveKind | null }[];
}

/** How the joint likely stands: what a screen draws. Diametral clearance and the rest in mm, with one standard deviation. */
export interface PredictedJoint {
  readonly clearance: { readonly mean: number; readonly sd: number };
  /** What is left of it to run freely. */
  readonly free: { readonly mean: number; readonly sd: number };
  readonly tenonCrestGap: number;
  readonly recessCrestGap: number;
  readonly crestFlat: Readonly<Record<Part, number>>;
  /** Share of 0.75 H. */
  readonly engaged: number;
  /** Where most of the likely joints bind, and whether only toward the shoulder; null where most do not bind. */
  readonly binds: { readonly on: 'flank' | 'crest'; readonly late: boolean } | null;
}

export interface Diagnosis {
  /** Likeliest first. */
  readonly causes: readonly RankedCause[];
  readonly confidence: Confidence;
  /** Null where no legal move repairs anything, or the lid is right. */
  readonly move: AdvisedMove | null;
  /** What would come next if that does not do it. */
  readonly next: AdvisedMove | null;
  /** Worth asking before the move; null where it is not. */
  readonly ask: Question | null;
  /** What would tell the first two causes apart. */
  readonly tellsApart: Field | null;
  /** Moves that would repair more than the advised one, and the limit that bars each. */
  readonly barred: readonly { readonly kind: MoveKind; readonly why: Why }[];
  /** Likely causes that no move mends: a slip on the recess; wood that has gone oval, which may settle. */
  readonly beyondRepair: readonly Cause[];
  /** What was said fits no joint that the sizes allow. */
  readonly contradiction: boolean;
  /** Minutes of mending expected. */
  readonly minutes: number;
  readonly predicted: PredictedJoint;
}

/** A share in tenths, for words: "about 6 in 10". */
export const inTenths = (share: number): number => Math.round(10 * share);

/** From 0.6 on a first cause was a true one in more than 8 of 10 simulated boxes; from 0.55 on in fewer. */
export const confidenceOf = (share: number): Confidence =>
  share >= 0.6 ? 'likely' : share >= 0.3 ? 'possibly' : 'hard-to-say';

/** In words, after calibration. */
export const chanceWordOf = (chance: number): ChanceWord =>
  chance >= 0.7 ? 'should-do-it' : chance >= 0.4 ? 'may-do-it' : 'step-towards';

/**
 * Chance said by the likely joints against how often it came true in simulated workshops: straight lines between measured points, so
 * that a greater chance never turns into a smaller one.
 */
const CALIBRATION: readonly (readonly [said: number, true_: number])[] = [
  [0, 0],
  [0.35, 0.28],
  [0.55, 0.5],
  [0.75, 0.64],
  [1, 0.75],
];

export const calibrated = (chance: number): number => {
  for (let i = 1; i < CALIBRATION.length; i++) {
    const [from, low] = CALIBRATION[i - 1] as readonly [number, number];
    const [to, high] = CALIBRATION[i] as readonly [number, number];
    if (chance <= to) return low + ((chance - from) / (to - from)) * (high - low);
  }
  return (CALIBRATION.at(-1) as readonly [number, number])[1];
};
