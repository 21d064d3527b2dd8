import type { Cut } from '../domain/box/records.ts';
import { nextSeq } from '../domain/box/sequence.ts';
import type { Happening, Part, SetUpEvent } from '../domain/setup/events.ts';
import type { RunState } from '../domain/setup/fold.ts';
import type { Length } from '../domain/units/length.ts';
import { stamp } from '../platform/clock.ts';
import { newId } from '../platform/ids.ts';
import { changeBox } from './boxes.ts';
import { announce } from './changes.ts';
import { logId, writer } from './session.ts';

/** What a pass is recorded with. `run` is closed with it when it was the last. */
interface PassCut {
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
