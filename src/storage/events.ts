import { unwrap } from 'idb';
import { canonical } from '../domain/log/canonical.ts';
import type { ForeignEvent, SetUpEvent } from '../domain/setup/events.ts';
import { asFailure, StorageFailure } from './failure.ts';
import { staleMarkOf } from './stale.ts';
import { read, write } from './write.ts';

type AnyEvent = SetUpEvent | ForeignEvent;

const runRange = (logId: string, runId: string): IDBKeyRange =>
  IDBKeyRange.bound([logId, runId], [logId, runId, []]);

/** All events of one run, in fold order (the key order). */
export const eventsOfRun = (logId: string, runId: string): Promise<AnyEvent[]> =>
  read(['events'], (tx) => tx.objectStore('events').getAll(runRange(logId, runId)));

/**
 * Adds one event, strictly durable when this resolves. If the key holds the same event already, an earlier attempt had worked
 * and this succeeds. If it holds another event (a double tap, a second tab), this throws StorageFailure 'taken', and the caller
 * must read the run again.
 */
export const appendEvent = async (event: SetUpEvent): Promise<void> => {
  try {
    await write(['events', 'stale'], (tx) => {
      // Bare requests: only the end of the transaction, or a refusal with its reason, has to wait for a page that is drawing.
      const bare = unwrap(tx) as IDBTransaction;
      const added = bare.objectStore('events').add(event);
      bare.objectStore('stale').put(staleMarkOf(event));
      bare.commit();
      const refused = new Promise<never>((_, reject) => {
        added.onerror = () => reject(added.error);
      });
      return Promise.race([refused, tx.done]);
    });
  } catch (error) {
    if (asFailure(error).reason !== 'taken') throw error;
    const there = await read(['events'], (tx) =>
      tx.objectStore('events').get([event.logId, event.runId, event.n, event.writer]),
    );
    if (!there || canonical(there) !== canonical(event)) throw new StorageFailure('taken', { cause: error });
  }
};
