/** What can move on a rig between or during set-ups. Each movement re-opens the steps that name it, and `isolate` and `clear`. */
export const MOVEMENTS = [
  'banjo-moved',
  'post-loosened',
  'chuck-off',
  'cutter-changed',
  'dial-knocked',
  'headstock-swung',
  'it-grabbed',
  'dont-know',
] as const;
export type Movement = (typeof MOVEMENTS)[number];

/** What a step guards against. */
export const GUARDS = [
  'injury',
  'dust',
  'lean',
  'tilt',
  'creep',
  'slip',
  'run-out',
  'depth',
  'lid-not-flush',
  'step-outside',
  'double-cut',
  'shoulder-or-floor-hit',
] as const;
export type Guard = (typeof GUARDS)[number];

/** What may be measured at a step: a gap over a length, the turns of a dry run, a sweep of an indicator. */
export type ReadingKind = 'gap' | 'turns' | 'sweep';

/** One step of a procedure. `key` never changes once used: runs, inheritance and findings go by it. */
export interface Step {
  readonly key: string;
  /** One sentence, at most 56 characters, imperative. */
  readonly sentence: string;
  readonly why: string;
  /** A hold point is ticked alone, shows no clock, cannot be removed, is never scored, and must be passed before a cut. */
  readonly hold: boolean;
  readonly guards: readonly Guard[];
  readonly reopenedBy: readonly Movement[];
  /** Steps that must have been done for this one to mean anything; skipping one of them closes this one. */
  readonly restsOn: readonly string[];
  /** Never carried over into the next set-up. */
  readonly everyTime: boolean;
  /** Asked only when the piece already carries a groove. */
  readonly onlyWithGroove: boolean;
  readonly reading: ReadingKind | null;
  /** Which drawing belongs to it; null for a step of the user's own. */
  readonly drawing: string | null;
}

/** A versioned checklist. Runs keep the whole procedure they were started with, so editing never rewrites history. */
export interface Procedure {
  readonly name: string;
  readonly version: number;
  readonly steps: readonly Step[];
}

/** The longest sentence that stays legible at arm's length. */
export const LONGEST_SENTENCE = 56;

/** Keys of the steps that a movement re-opens: those that name it, and always the first and the last hold point (isolate, clear). */
export const reopenedBy = (procedure: Procedure, movement: Movement): ReadonlySet<string> =>
  new Set(
    procedure.steps
      .filter((step) => isAlwaysReopened(step) || step.reopenedBy.includes(movement))
      .map((step) => step.key),
  );

/** The first and the last hold point of every procedure. */
export const isAlwaysReopened = (step: Pick<Step, 'key'>): boolean =>
  step.key === 'isolate' || step.key === 'clear';
