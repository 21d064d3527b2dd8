import type { ForeignEvent, SetUpEvent } from '../domain/setup/events.ts';
import { read } from './write.ts';

type AnyEvent = SetUpEvent | ForeignEvent;

/** Events read at once. Each start of a set-up carries its whole procedure, so a large log must not lie in memory whole. */
const BATCH = 2_000;

/**
 * Hands over every set-up of a log behind `after` (all of them unless told), one after another by run id, its events in fold
 * order. `onBatch` hears the share read, and may keep what was taken: it is waited for. What is written meanwhile may or may
 * not be in it.
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
    // Asked for before the batch in hand is folded: the store reads while this thread works.
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
