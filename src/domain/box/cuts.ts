import type { Part } from '../setup/events.ts';
import type { RunState } from '../setup/fold.ts';
import type { Millimetres } from '../units/brands.ts';
import type { Length } from '../units/length.ts';
import { pieceAt } from './piece.ts';
import type { Cut } from './records.ts';

type Entries = Parameters<typeof pieceAt>[0];

/** Two depths nearer than this are the same to a dial and a hand, mm. */
export const SAME_DEPTH = 0.01;

/** The passes of the piece that is there now, oldest first. */
export const cutsOf = (box: Entries, part: Part): readonly Cut[] => pieceAt(box, part).cuts;

/** Whether a plain reading taken now would be of a piece turned again. */
export const isThreaded = (box: Entries, part: Part): boolean => {
  const { since, readings, cuts } = pieceAt(box, part);
  const isKnown =
    readings.some(({ overCrests }) => !overCrests) || box.trials.some(({ seq }) => seq >= since);
  return cuts.length > 0 && isKnown;
};

/** The depth of the deepest pass, or null before the first. */
export const deepestOf = (cuts: readonly Cut[]): Length | null =>
  cuts.reduce<Length | null>(
    (deepest, { depth }) => (deepest === null || depth.mm > deepest.mm ? depth : deepest),
    null,
  );

/** How deep the piece had been cut at a place in the sequence (now when none is given), or null before its first pass. */
export const depthReached = (box: Entries, part: Part, until?: number): Length | null =>
  deepestOf(pieceAt(box, part, until).cuts);

/**
 * The depth that the piece was cut to; null while passes are still to come, for between passes the depth reached is not yet the depth
 * cut. A trial fit ends them, whatever was planned.
 */
export const depthCut = (box: Entries, part: Part, planned: number): Millimetres | null => {
  const { since, cuts } = pieceAt(box, part);
  const isTried = box.trials.some(({ seq }) => seq > since);
  return isTried || cuts.length >= planned ? (deepestOf(cuts)?.mm ?? null) : null;
};

export interface NextPass<P> {
  readonly pass: P;
  /** 1, 2, 3... among those planned. */
  readonly number: number;
  readonly isLast: boolean;
}

/** The first planned pass that goes deeper than what has been cut; null when the piece is cut to its depth. */
export const nextPass = <P extends { readonly depth: Millimetres }>(
  planned: readonly P[],
  reached: Length | null,
): NextPass<P> | null => {
  const at = planned.findIndex(({ depth }) => depth > (reached?.mm ?? 0) + SAME_DEPTH);
  const pass = planned[at];
  return pass ? { pass, number: at + 1, isLast: at === planned.length - 1 } : null;
};

/** Turns to the stop as the dry run counted them last, or null when nobody noted them. */
export const turnsToStop = (run: RunState): number | null =>
  run.steps.flatMap(({ readings }) => readings).findLast((reading) => reading.kind === 'turns')?.turns ??
  null;

/** Where a tally of turns may be noted: the step that asks for it, if the procedure has one. */
export const turnsStep = (run: RunState): string | null =>
  run.steps.find(({ step }) => step.reading === 'turns')?.step.key ?? null;
