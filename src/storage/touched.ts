import type { EventRef } from '../domain/setup/events.ts';
import type { WriteTx } from './write.ts';

type Written = Pick<EventRef, 'writer'> & { readonly logId: string };

/** In the transaction that adds an event: what is kept of its set-up no longer holds. Every way events come in goes by this. */
export const touchRun = async (
  tx: WriteTx,
  { logId, runId: id, n, writer }: Written & { runId: string; n: number },
) => tx.objectStore('touched').put({ logId, what: 'run', id, stamp: `${n} ${writer}` });

/** In the transaction that writes a record: what was found before it may no longer hold. */
export const touchRecords = async (
  tx: WriteTx,
  { logId, id, rev, writer }: Written & { id: string; rev: number },
) => tx.objectStore('touched').put({ logId, what: 'records', id: '', stamp: `${id} ${rev} ${writer}` });
