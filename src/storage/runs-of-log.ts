import type { ForeignEvent, SetUpEvent } from '../domain/setup/events.ts';
import { read } from './write.ts';

type AnyEvent = SetUpEvent | ForeignEvent;

/** Events read at once. Each start of a set-up carries its whole procedure, so a large log must not be in memory as a whole. */
const BATCH = 2_000;

/**
 * Calls `take` with the events of each set-up of a log, in fold order, one set-up after another by run id, beginning behind the
 * run id `after`. `onBatch` is called with the share read (0 to 1) and awaited, so that it may save what was read. An event
 * written meanwhile may be included or not.
 */
export const eachRunOfLog = async (
  logId: string,
  take: (run: readonly AnyEvent[]) => void,
  onBatch: (share: number) => unknown = () => {},
  after = '',
): Promise<void> => {
  const end = [logId, []];
  // A run's keys all sort before [logId, runId, []].
  const rest = IDBKeyRange.bound(after === '' ? [logId] : [logId, after, []], end);
  const batchOf = (range: IDBKeyRange): Promise<AnyEvent[]> =>
    read(['events'], (tx) => tx.objectStore('events').getAll(range, BATCH));
  const all = await read(['events'], (tx) => tx.objectStore('events').count(rest));
  let done = 0;
  let run: AnyEvent[] = [];
  let next: Promise<AnyEvent[]> | null = batchOf(rest);
  while (next) {
    const batch: AnyEvent[] = await next;
    const last = batch.at(-1);
    // Requested before this batch is folded, so that the store reads while this thread works.
    next =
      last && batch.length === BATCH
        ? batchOf(IDBKeyRange.bound([logId, last.runId, last.n, last.writer], end, true))
        : null;
    next?.catch(() => {});
    for (const event of batch) {
      if (run[0] && run[0].runId !== event.runId) {
        take(run);
        run = [];
      }
      run.push(event);
    }
    done += batch.length;
    await onBatch(all > 0 ? Math.min(1, done / all) : 1);
  }
  if (run.length > 0) take(run);
};
