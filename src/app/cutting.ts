import type { Cut } from '../domain/box/records.ts';
import { seqOf, withItem, withoutItem } from '../domain/box/with-item.ts';
import type { Happening, Part, SetUpEvent } from '../domain/setup/events.ts';
import type { RunState } from '../domain/setup/fold.ts';
import type { Length } from '../domain/units/length.ts';
import { stamp } from '../platform/clock.ts';
import { changeBox } from './boxes.ts';
import { attempt } from './failure.ts';
import { bodyOf, put } from './keep.ts';
import { logId, writer } from './session.ts';

/** What a pass is recorded with. `run` is closed with it when it was the last. */
interface PassCut {
  /** Of the pass: a retry of one that was saved unheard adds no other. */
  readonly id: string;
  readonly part: Part;
  readonly run: RunState;
  readonly depth: Length;
  readonly correction: boolean;
  readonly isLast: boolean;
}

/** Records a pass; the last one and the close of its set-up are on disk together or not at all. */
export const recordPass = async (
  boxId: string,
  { id, part, run, depth, correction, isLast }: PassCut,
): Promise<boolean> =>
  (await attempt(
    'pass',
    async () => {
      const cut = { id, part, runId: run.runId, at: Date.now(), depth, correction };
      const isThere = (await bodyOf('box', boxId))?.cuts.some((each) => each.id === id);
      const closes = isLast && run.closed === null && !run.readOnly && !isThere;
      return put(
        'box',
        boxId,
        (box) => box && { ...box, cuts: withItem(box.cuts, { ...cut, seq: seqOf(box, id) }) },
        closes ? { event: nextEvent(run, { kind: 'closed', how: 'cut' }) } : {},
      );
    },
    boxId,
  )) ?? false;

/** What was really cut, put right afterwards. */
export const changeDepth = (boxId: string, cutId: string, depth: Length): Promise<boolean> =>
  changeBox(
    boxId,
    (box) => ({ ...box, cuts: box.cuts.map((cut) => (cut.id === cutId ? { ...cut, depth } : cut)) }),
    'pass',
  );

/** Takes back the newest pass, that was not cut after all; the set-up that it closed is open again. */
export const takeBackPass = (
  boxId: string,
  cuts: readonly Cut[],
  cut: Cut,
  run: RunState,
): Promise<boolean> => {
  const othersOfRun = cuts.some(({ id, runId }) => id !== cut.id && runId === run.runId);
  // A correction in a set-up that was closed before leaves it closed.
  const closedIt = !cut.correction || !othersOfRun;
  const close = closedIt && !run.readOnly ? run.timeline.findLast(isLiveClose)?.event : undefined;
  return changeBox(
    boxId,
    (box) => ({ ...box, cuts: withoutItem(box.cuts, cut.id) }),
    'pass',
    close ? { event: nextEvent(run, { kind: 'undone', target: { n: close.n, writer: close.writer } }) } : {},
  );
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
