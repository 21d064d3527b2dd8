import type { ForeignEvent, SetUpEvent } from '../domain/setup/events.ts';
import { read } from './write.ts';

type AnyEvent = SetUpEvent | ForeignEvent;

/** Events read at once. Each start of a set-up carries its whole procedure, so a large log must not lie in memory whole. */
const BATCH = 2_000;

/**
 * Hands over every set-up of a log, one after another, its events in fold order. `onBatch` hears the share read. What is
 * written meanwhile may or may not be in it.
 */
export const eachRunOfLog = async (
  logId: string,
  take: (run: readonly AnyEvent[]) => void,
  onBatch: (share: number) => void = () => {},
): Promise<void> => {
  const whole = IDBKeyRange.bound([logId], [logId, []]);
  const all = await read(['events'], (tx) => tx.objectStore('events').count(whole));
  let done = 0;
  let run: AnyEvent[] = [];
  let range: IDBKeyRange | null = whole;
  while (range) {
    const from: IDBKeyRange = range;
    const batch = await read(['events'], (tx) => tx.objectStore('events').getAll(from, BATCH));
    for (const event of batch) {
      if (run[0] && run[0].runId !== event.runId) {
        take(run);
        run = [];
      }
      run.push(event);
    }
    const last = batch.at(-1);
    range =
      last && batch.length === BATCH
        ? IDBKeyRange.bound([logId, last.runId, last.n, last.writer], [logId, []], true)
        : null;
    done += batch.length;
    onBatch(all > 0 ? Math.min(1, done / all) : 1);
  }
  if (run.length > 0) take(run);
};
