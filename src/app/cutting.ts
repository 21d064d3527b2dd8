import type { Cut } from '../domain/box/records.ts';
import { nextSeq } from '../domain/box/sequence.ts';
import type { Happening, Part, SetUpEvent } from '../domain/setup/events.ts';
import type { RunState } from '../domain/setup/fold.ts';
import type { Millimetres } from '../domain/units/brands.ts';
import type { Length } from '../domain/units/length.ts';
import { stamp } from '../platform/clock.ts';
import { newId } from '../platform/ids.ts';
import { changeBox } from './boxes.ts';
import { announce } from './changes.ts';
import { logId, writer } from './session.ts';

/** Two depths nearer than this are the same to a dial and a hand, mm. */
const SAME_DEPTH = 0.01;

/** The passes of one piece, oldest first. */
export const cutsOf = (cuts: readonly Cut[], part: Part): readonly Cut[] =>
  cuts.filter((cut) => cut.part === part);

/** How deep a piece has been cut, or null before its first pass. */
export const depthReached = (cuts: readonly Cut[], part: Part): Length | null =>
  cutsOf(cuts, part).reduce<Length | null>(
    (deepest, { depth }) => (deepest === null || depth.mm > deepest.mm ? depth : deepest),
    null,
  );

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

/** What a pass is recorded with. `run` is closed with it when it was the last. */
export interface PassCut {
  readonly part: Part;
  readonly run: RunState;
  readonly depth: Length;
  readonly correction: boolean;
  readonly isLast: boolean;
}

/** Records a pass; the last one and the close of its set-up are on disk together or not at all. */
export const recordPass = async (
  boxId: string,
  { part, run, depth, correction, isLast }: PassCut,
): Promise<boolean> => {
  const cut = { id: newId(), part, runId: run.runId, at: Date.now(), depth, correction };
  const closes = isLast && run.closed === null;
  const saved = await changeBox(
    boxId,
    (box) => ({ ...box, cuts: [...box.cuts, { ...cut, seq: nextSeq(box) }] }),
    closes ? { event: nextEvent(run, { kind: 'closed', how: 'cut' }) } : {},
  );
  if (saved && closes) announce('events');
  return saved;
};

/** What was really cut, put right afterwards. */
export const changeDepth = (boxId: string, cutId: string, depth: Length): Promise<boolean> =>
  changeBox(boxId, (box) => ({
    ...box,
    cuts: box.cuts.map((cut) => (cut.id === cutId ? { ...cut, depth } : cut)),
  }));

/** Takes back the newest pass, that was not cut after all; the set-up that it closed is open again. */
export const takeBackPass = async (
  boxId: string,
  cuts: readonly Cut[],
  cut: Cut,
  run: RunState,
): Promise<boolean> => {
  const othersOfRun = cuts.some(({ id, runId }) => id !== cut.id && runId === run.runId);
  // A correction in a set-up that was closed before leaves it closed.
  const closedIt = !cut.correction || !othersOfRun;
  const close = closedIt ? run.timeline.findLast(isLiveClose)?.event : undefined;
  const saved = await changeBox(
    boxId,
    (box) => ({ ...box, cuts: box.cuts.filter(({ id }) => id !== cut.id) }),
    close ? { event: nextEvent(run, { kind: 'undone', target: { n: close.n, writer: close.writer } }) } : {},
  );
  if (saved && close) announce('events');
  return saved;
};

const isLiveClose = ({ event, undone }: RunState['timeline'][number]): boolean =>
  event.kind === 'closed' && !undone;

const nextEvent = (run: RunState, happening: Happening): SetUpEvent => ({
  ...stamp(),
  ...happening,
  logId: logId.value,
  runId: run.runId,
  n: run.nextN,
  writer: writer.value,
});

/** Turns to the stop as the dry run counted them last, or null when nobody noted them. */
export const turnsToStop = (run: RunState): number | null =>
  run.steps.flatMap(({ readings }) => readings).findLast((reading) => reading.kind === 'turns')?.turns ??
  null;

/** Where a tally of turns may be noted: the step that asks for it, if the procedure has one. */
export const turnsStep = (run: RunState): string | null =>
  run.steps.find(({ step }) => step.reading === 'turns')?.step.key ?? null;
