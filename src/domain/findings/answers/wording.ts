/**
 * The rule by which numbers become words, all of it in this one file. The app explains the same rule.
 * Five words, from the cautious end: too few to tell, no sign of one, possible, strong, and the other way round.
 */
export type Word = 'too-few' | 'no-sign' | 'possible' | 'strong' | 'the-other-way';

/** Why the word is not stronger. */
export type Because =
  /** Fewer than five missed, done, failed or right. */
  | 'gate'
  /** The interval still reaches past what would matter. */
  | 'wide'
  /** Crude, pooled and modelled figures do not all point one way. */
  | 'disagree'
  /** Not rare enough after adjustment for all steps tested, or with the strongest other step in the model. */
  | 'several-steps'
  /** No symptom of this step is known to mechanics. */
  | 'no-mechanism'
  /** The same boxes also had faults it cannot cause. */
  | 'other-faults-too'
  /** Another step was missed in exactly the same boxes. */
  | 'same-boxes';

export interface Wording {
  readonly word: Word;
  readonly because: Because | null;
  /** The other step with which little of the link is left, where that is the reason. */
  readonly beside?: string;
}

/** What the rule looks at, for one step. */
export interface LinkEvidence {
  readonly missed: number;
  readonly done: number;
  readonly events: number;
  readonly nonEvents: number;
  /** The largest p of the three tests: exact within strata, model, clusters where boxes share a day or a set-up. */
  readonly p: number;
  /** 1 where missing goes with faults, -1 the reverse: crude, pooled, modelled. */
  readonly directions: readonly number[];
  /** Upper end of the 90 % interval of the difference, crude and modelled; null when there is none. */
  readonly upper: readonly (number | null)[];
  /** p of the same step against faults it cannot cause, where those are commoner when missed; else 1. */
  readonly controlP: number;
  readonly explainsSomething: boolean;
  readonly sameBoxesAs: readonly string[];
  /** The other step with the strongest link, and p in the model that holds both (1 if its sign is reversed there), times the number of other steps; null when there is none. */
  readonly beside: () => { readonly step: string; readonly p: number } | null;
}

/** With fewer of any of them, the word is "too few". */
export const GATE = 5;
const STRONG_P = 0.02;
const POSSIBLE_P = 0.05;
const CONTROL_P = 0.1;
/** A difference smaller than this (20 in 100) is "no sign of one". */
export const NO_SIGN_BELOW = 0.2;

/**
 * Words change only when a log has grown to one of these sizes, then at every further 250: a rule that looks
 * again at each new box would report chance results. Numbers change with every box.
 */
const CHECKPOINTS = [20, 30, 45, 60, 90, 120, 180, 250, 350, 500];
const THEN_EVERY = 250;

/** The size of the log that its words speak of (0: none yet), and the next at which they may change. */
export const checkpoint = (boxes: number): { readonly at: number; readonly next: number } => {
  if (boxes >= 500) {
    const at = Math.floor(boxes / THEN_EVERY) * THEN_EVERY;
    return { at, next: at + THEN_EVERY };
  }
  return {
    at: CHECKPOINTS.findLast((size) => size <= boxes) ?? 0,
    next: CHECKPOINTS.find((size) => size > boxes) ?? 500,
  };
};

/** Enough of everything for a word other than "too few". */
export const isGated = (e: Pick<LinkEvidence, 'missed' | 'done' | 'events' | 'nonEvents'>): boolean =>
  Math.min(e.missed, e.done, e.events, e.nonEvents) >= GATE;

/** The word for one step. `holmP` is its p after Holm's adjustment over all steps that pass the gate. */
export const wordFor = (e: LinkEvidence, holmP: number): Wording => {
  if (!isGated(e)) return { word: 'too-few', because: 'gate' };
  const harmful = e.directions.every((direction) => direction > 0);
  const protective = e.directions.every((direction) => direction < 0);
  if (harmful && e.p <= POSSIBLE_P) {
    return whyNotStrong(e, holmP) ?? { word: 'strong', because: null };
  }
  if (protective && e.p <= POSSIBLE_P) return { word: 'the-other-way', because: null };
  if (e.upper.every((upper) => upper !== null && upper < NO_SIGN_BELOW))
    return { word: 'no-sign', because: null };
  return { word: 'too-few', because: harmful || protective ? 'wide' : 'disagree' };
};

const whyNotStrong = (e: LinkEvidence, holmP: number): Wording | null => {
  const possible = (because: Because): Wording => ({ word: 'possible', because });
  if (holmP > STRONG_P) return possible('several-steps');
  if (!e.explainsSomething) return possible('no-mechanism');
  if (e.controlP <= CONTROL_P) return possible('other-faults-too');
  if (e.sameBoxesAs.length > 0) return possible('same-boxes');
  const beside = e.beside();
  return beside && beside.p > POSSIBLE_P ? { ...possible('several-steps'), beside: beside.step } : null;
};
