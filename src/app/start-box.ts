import type { Box, Plan } from '../domain/box/records.ts';
import { today } from '../platform/clock.ts';
import { newId } from '../platform/ids.ts';
import { isAnyOpen } from '../storage/boxes.ts';
import { changeRecord } from '../storage/records.ts';
import { type BoxOnHand, newestBox } from './boxes.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { FIRST_RIG_ID } from './rigs.ts';
import { author, logId } from './session.ts';

const DEFAULT_PROCEDURE_ID = 'board-and-cone';

/** Puts a new box on the bench; its id, or undefined when it could not be saved. */
export const startBox = async (
  plan: Plan,
  like?: Box,
  name = '',
  rigId = like?.rigId ?? FIRST_RIG_ID,
): Promise<string | undefined> => {
  const id = newId();
  const number = ((await newestBox())?.box.number ?? 0) + 1;
  const box: Box = {
    number,
    name,
    startedOn: today(),
    rigId,
    procedureId: like?.procedureId ?? DEFAULT_PROCEDURE_ID,
    plan,
    bore: [],
    tenon: [],
    instrumentId: like?.instrumentId ?? null,
    setUps: [],
    cuts: [],
    trials: [],
    seats: [],
    closing: null,
    later: [],
    photos: [],
  };
  const saved = await attempt(() => changeRecord(logId.value, 'box', id, author(), () => box));
  if (!saved) return undefined;
  announce('box');
  return id;
};

/** "Like the last one": the plan, rig and procedure of the newest box; its sizes are measured anew. */
export const startLikeLast = async (last: BoxOnHand): Promise<string | undefined> =>
  startBox(last.box.plan, last.box, last.box.name);

/** The box on the lathe: the newest that is not closed. */
export const currentBox = async (): Promise<BoxOnHand | null> =>
  (await isAnyOpen(logId.value)) ? newestBox(({ closing }) => closing === null) : null;
