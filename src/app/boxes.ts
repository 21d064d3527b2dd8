import type { Box } from '../domain/box/records.ts';
import { foldRun, type RunState } from '../domain/setup/fold.ts';
import { boxesFromNewest } from '../storage/boxes.ts';
import { eventsOfRun } from '../storage/events.ts';
import type { Alongside } from '../storage/records.ts';
import type { Act } from './failure.ts';
import { bodyOf, keep, listBodies } from './keep.ts';
import { logId } from './session.ts';

/** A box with its id, as screens use it. */
export interface BoxOnHand {
  readonly id: string;
  readonly box: Box;
}

/** Every box of the log on screen, newest first: for lists of them all. A large log takes seconds to read. */
export const allBoxes = async (): Promise<BoxOnHand[]> =>
  (await listBodies('box'))
    .map(({ id, body }) => ({ id, box: body }))
    .sort((a, b) => b.box.number - a.box.number);

/** Boxes looked through from the newest on until so many fit; reads no further. */
export const newestBoxes = async (
  most = NEWEST,
  fits: (box: Box) => boolean = () => true,
): Promise<BoxOnHand[]> =>
  (await boxesFromNewest(logId.value, most, ({ body }) => body !== null && fits(body))).flatMap(
    ({ id, body }) => (body ? [{ id, box: body }] : []),
  );

/** Enough to know a habit from, few enough to read their set-ups in a moment from a log of any size. */
const NEWEST = 40;

/** The newest box of all, or of those that fit; null when there is none. */
export const newestBox = async (fits?: (box: Box) => boolean): Promise<BoxOnHand | null> =>
  (await newestBoxes(1, fits))[0] ?? null;

export const boxById = async (id: string): Promise<BoxOnHand | null> => {
  const box = await bodyOf('box', id);
  return box && { id, box };
};

/** The box's set-ups, folded, by run id. */
export const runsOf = async (box: Box): Promise<ReadonlyMap<string, RunState>> => {
  const folded = await Promise.all(
    box.setUps.map(async ({ runId }) => foldRun(await eventsOfRun(logId.value, runId))),
  );
  return new Map(folded.flatMap((run) => (run ? [[run.runId, run] as const] : [])));
};

/** A box with its set-ups; null stays null. */
export const withRuns = async (onHand: BoxOnHand | null) =>
  onHand && { onHand, runs: await runsOf(onHand.box) };

/**
 * Changes a box on the newest version there is; durable when it resolves to true. `change` must be pure: it may run against
 * a version newer than the one on screen, and twice.
 */
export const changeBox = (
  id: string,
  change: (box: Box) => Box,
  act?: Act,
  alongside?: Alongside,
): Promise<boolean> => keep('box', id, (box) => (box ? change(box) : null), alongside, act);
