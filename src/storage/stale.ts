import type { EventRef } from '../domain/setup/events.ts';
import type { StaleMark } from './schema.ts';
import type { WriteTx } from './write.ts';

type Written = Pick<EventRef, 'writer'> & { readonly logId: string };

/** The mark that makes the cached copy of an event's set-up stale. Every way to add an event must write it too. */
export const staleMarkOf = ({
  logId,
  runId: id,
  n,
  writer,
}: Written & { runId: string; n: number }): StaleMark => ({
  logId,
  what: 'run',
  id,
  stamp: `${n} ${writer}`,
});

/** Marks the set-up of an event stale, in the transaction that adds the event. */
export const markRunStale = async (tx: WriteTx, event: Parameters<typeof staleMarkOf>[0]) =>
  tx.objectStore('stale').put(staleMarkOf(event));

/** Marks the cached findings of a log stale, in the transaction that writes one of its records. */
export const markRecordsStale = async (
  tx: WriteTx,
  { logId, id, rev, writer }: Written & { id: string; rev: number },
) => tx.objectStore('stale').put({ logId, what: 'records', id: '', stamp: `${id} ${rev} ${writer}` });
