import type { EventRef } from '../domain/setup/events.ts';
import type { Touched } from './schema.ts';
import type { WriteTx } from './write.ts';

type Written = Pick<EventRef, 'writer'> & { readonly logId: string };

/** What goes into `touched` with an event: what is kept of its set-up no longer holds. Every way events come in goes by this. */
export const touchOf = ({
  logId,
  runId: id,
  n,
  writer,
}: Written & { runId: string; n: number }): Touched => ({ logId, what: 'run', id, stamp: `${n} ${writer}` });

/** The same in a transaction that adds an event among other things. */
export const touchRun = async (tx: WriteTx, event: Parameters<typeof touchOf>[0]) =>
  tx.objectStore('touched').put(touchOf(event));

/** In the transaction that writes a record: what was found before it may no longer hold. */
export const touchRecords = async (
  tx: WriteTx,
  { logId, id, rev, writer }: Written & { id: string; rev: number },
) => tx.objectStore('touched').put({ logId, what: 'records', id: '', stamp: `${id} ${rev} ${writer}` });
