import { firstRefusal, ok, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { steps } from './dial.ts';
import { LEAST_FLOOR_GAP } from './least.ts';

const TURN = 2 * Math.PI;

/** Where the grain stands at the present seat, right-hand thread, seen from outside the lid; a left-hand thread reads it mirrored. */
type Misalignment =
  | { readonly toGo: Radians }
  /** Gone past: wood can only come off, so the lid goes on to the next match. */
  | { readonly past: Radians };

/**
 * Angle the lid still has to go on, rad. For the figure to match, the next full turn; for a true fit of oval parts the next half
 * turn will do.
 */
export const toGo = (at: Misalignment, match: 'figure' | 'oval'): Result<Radians> => {
  const refusal = 'toGo' in at ? outside({ toGo: at.toGo }) : outside({ overTurned: at.past });
  if (refusal) return refuse(refusal);
  const period = match === 'figure' ? TURN : Math.PI;
  const angle = 'toGo' in at ? at.toGo : TURN - at.past;
  return ok(rad(angle % period));
};

/** Wood to take off either shoulder (tenon's shoulder or recess's rim) for the lid to go on by an angle, mm: P chi/(2 pi). Exact. */
export const shoulderRemoval = (pitch: Millimetres, angle: Radians): Result<Millimetres> => {
  const refusal = outside({ pitch, toGo: angle });
  return refusal ? refuse(refusal) : ok(mm((pitch * angle) / TURN));
};

/** Room ahead of a seated lid. */
interface SeatRoom {
  /** Floor of the recess to the end of the tenon. */
  readonly bottomGap: Millimetres;
  /** Recess thread, or relief past its root, still free ahead of the tenon's thread. */
  readonly freeThread: Millimetres;
}

/** Most that may come off a shoulder, mm, and what stops it. */
export const mostRemoval = (
  room: SeatRoom,
): Result<{ readonly removal: Millimetres; readonly limitedBy: 'floor' | 'thread' }> => {
  const refusal = outside({ bottomGap: room.bottomGap, freeThread: room.freeThread });
  if (refusal) return refuse(refusal);
  const floor = Math.max(0, room.bottomGap - LEAST_FLOOR_GAP);
  return ok(
    floor <= room.freeThread
      ? { removal: mm(floor), limitedBy: 'floor' }
      : { removal: room.freeThread, limitedBy: 'thread' },
  );
};

/** Shoulders burnish and the lid goes a little further in use, so aim short by this much, rad: 5 to 10 degrees (common practice, no source). */
const SHORT = (7.5 * Math.PI) / 180;

/** How to bring the grain in line by rubbing a shoulder. */
interface SeatPlan {
  readonly toGo: Radians;
  /** To take off in all, the last few degrees left to burnishing. */
  readonly removal: Millimetres;
  /** To take off before trying again: the whole steps in half of it; nothing where half is less than a hand can measure off. */
  readonly firstStep: Millimetres;
  readonly most: Millimetres;
  readonly limitedBy: 'floor' | 'thread';
}

/** What to take off a shoulder, in steps that a hand can measure, for the grain to line up; more than the joint has room for is a conflict. */
export const planSeat = (
  pitch: Millimetres,
  at: Misalignment,
  match: 'figure' | 'oval',
  room: SeatRoom,
  step: Millimetres,
): Result<SeatPlan> => {
  const angle = toGo(at, match);
  if (!angle.ok) return angle;
  const refusal = firstRefusal(within('step', step, 0.001, 1));
  if (refusal) return refuse(refusal);
  const removal = shoulderRemoval(pitch, rad(Math.max(0, angle.value - SHORT)));
  if (!removal.ok) return removal;
  const most = mostRemoval(room);
  if (!most.ok) return most;
  if (removal.value > most.value.removal)
    return refuse({
      problem: 'conflict',
      field: 'toGo',
      other: most.value.limitedBy === 'floor' ? 'bottomGap' : 'freeThread',
      given: angle.value,
      otherGiven: most.value.limitedBy === 'floor' ? room.bottomGap : room.freeThread,
      nearest: (TURN * most.value.removal) / pitch,
      quantity: 'angle',
    });
  return ok({
    toGo: angle.value,
    removal: removal.value,
    firstStep: steps(Math.floor(removal.value / 2 / step), step),
    most: most.value.removal,
    limitedBy: most.value.limitedBy,
  });
};
