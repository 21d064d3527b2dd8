import type { Closing, LidCheck, LidTurns, Seat } from '../domain/box/records.ts';
import { seqOf, withItem, withoutItem } from '../domain/box/with-item.ts';
import { today } from '../platform/clock.ts';
import { askToKeep } from '../platform/persist.ts';
import { type BoxOnHand, changeBox, newestBox } from './boxes.ts';

/** "In line and flush" says all of this. */
export const IN_LINE: SeatAnswers = { open: [], papers: 0, degreesToGo: 0, takenFrom: null };

type SeatAnswers = Omit<Seat, 'id' | 'seq' | 'at'>;

export const recordSeat = (boxId: string, id: string, answers: SeatAnswers): Promise<boolean> => {
  const seat = { ...answers, id, at: Date.now() };
  return changeBox(
    boxId,
    (box) => ({ ...box, seats: withItem(box.seats, { ...seat, seq: seqOf(box, id) }) }),
    'seat',
  );
};

export const takeBackSeat = (boxId: string, seatId: string): Promise<boolean> =>
  changeBox(boxId, (box) => ({ ...box, seats: withoutItem(box.seats, seatId) }), 'seat');

/** Closes a box. The first thing worth keeping is the moment to ask the browser to keep it; nothing waits for the answer. */
export const closeBox = async (boxId: string, answers: Omit<Closing, 'at'>): Promise<boolean> => {
  const closing: Closing = { ...answers, at: Date.now() };
  const saved = await changeBox(boxId, (box) => ({ ...box, closing }), 'close');
  if (saved) askToKeep();
  return saved;
};

/** Back on the lathe: what was said at the close goes. */
export const reopenBox = (boxId: string): Promise<boolean> =>
  changeBox(boxId, (box) => ({ ...box, closing: null }), 'close');

/** How the lid turns now, weeks on. */
export const recordLidCheck = (boxId: string, id: string, lid: LidTurns): Promise<boolean> => {
  const check: LidCheck = { id, at: Date.now(), on: today(), lid };
  return changeBox(boxId, (box) => ({ ...box, lidChecks: withItem(box.lidChecks, check) }), 'later');
};

export const undoLidCheck = (boxId: string, checkId: string): Promise<boolean> =>
  changeBox(boxId, (box) => ({ ...box, lidChecks: withoutItem(box.lidChecks, checkId) }), 'later');

/** Wood needs this long before a lid tells anything new. */
const WEEKS_BEFORE_ASKING = 4;
const WEEK_MS = 7 * 24 * 60 * 60 * 1000;

/** The newest box that was not scrapped, closed at least four weeks ago and not looked at since; null when there is none. */
export const boxToLookBackOn = (): Promise<BoxOnHand | null> => {
  const before = Date.now() - WEEKS_BEFORE_ASKING * WEEK_MS;
  return newestBox(
    ({ closing, lidChecks }) =>
      closing !== null && closing.outcome !== 'scrapped' && closing.at <= before && lidChecks.length === 0,
  );
};
