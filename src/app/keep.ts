import type { Bodies, Kind } from '../domain/box/records.ts';
import { type Alongside, changeRecord, getRecord, listRecords } from '../storage/records.ts';
import { announce } from './changes.ts';
import { type Act, attempt } from './failure.ts';
import { author, logId } from './session.ts';

/** A record that is there, with its id. */
interface OnHand<K extends Kind> {
  readonly id: string;
  readonly body: Bodies[K];
}

/** Every record of one kind in the log on screen, deleted ones left out. */
export const listBodies = async <K extends Kind>(kind: K): Promise<OnHand<K>[]> =>
  (await listRecords(logId.value, kind)).flatMap(({ id, body }) => (body ? [{ id, body }] : []));

/** One record of the log on screen; null when there is none or it was deleted. */
export const bodyOf = async <K extends Kind>(kind: K, id: string): Promise<Bodies[K] | null> =>
  (await getRecord(logId.value, kind, id))?.body ?? null;

/** What a change is given and gives: null stands for no record. */
type Change<K extends Kind> = (now: Bodies[K] | null) => Bodies[K] | null;

/**
 * Changes a record of the log on screen and announces it, with what goes together with it. For use cases that read first and
 * guard the whole with `attempt`; throws a StorageFailure. `change` is as in `changeRecord`: pure, and it may run twice.
 */
export const put = async <K extends Kind>(
  kind: K,
  id: string,
  change: Change<K>,
  alongside: Alongside = {},
): Promise<true> => {
  await changeRecord(logId.value, kind, id, author(), change, alongside);
  announce(kind);
  if (alongside.event) announce('events');
  if (alongside.photo) announce('photos');
  return true;
};

/** The same, guarded: true once it is durable, false when it failed, which is on screen then. `act` names it there. */
export const keep = async <K extends Kind>(
  kind: K,
  id: string,
  change: Change<K>,
  alongside?: Alongside,
  act: Act = kind,
): Promise<boolean> => (await attempt(act, () => put(kind, id, change, alongside), id)) ?? false;
