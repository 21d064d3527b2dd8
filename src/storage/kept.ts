import type { Kept, Touched } from './schema.ts';
import { wholeLog } from './whole-log.ts';
import { read, write } from './write.ts';

/** What the findings kept of a log, and what was written since. */
export interface KeptOfLog {
  readonly logId: string;
  readonly runs: Kept | undefined;
  readonly findings: Kept | undefined;
  readonly touched: readonly Touched[];
}

/** Read before the log itself: what is written from then on is touched anew. */
export const readKept = (logId: string): Promise<KeptOfLog> =>
  read(['kept', 'touched'], async (tx) => {
    const [runs, findings, touched] = await Promise.all([
      tx.objectStore('kept').get([logId, 'runs']),
      tx.objectStore('kept').get([logId, 'findings']),
      tx.objectStore('touched').getAll(wholeLog(logId)),
    ]);
    return { logId, runs, findings, touched };
  });

/**
 * Keeps what was made of the log that `before` was read of, and forgets the touches it has taken in; one that came meanwhile
 * stays. Does nothing, and answers null, when another reading kept its own meanwhile or the log is gone. Relaxed: it can
 * always be made anew.
 */
export const keep = (
  before: KeptOfLog,
  what: Kept['what'],
  made: Pick<Kept, 'rule' | 'stamp' | 'value'>,
  takenIn: readonly Touched[] = [],
): Promise<Kept | null> =>
  write(
    ['records', 'events', 'kept', 'touched'],
    async (tx) => {
      const { logId } = before;
      const kept = tx.objectStore('kept');
      const there = await kept.get([logId, what]);
      if (there?.stamp !== before[what]?.stamp) return null;
      const [records, events] = await Promise.all(
        (['records', 'events'] as const).map((name) => tx.objectStore(name).getKey(wholeLog(logId))),
      );
      if (records === undefined && events === undefined) return null;
      const next: Kept = { logId, what, ...made };
      await kept.put(next);
      const touched = tx.objectStore('touched');
      await Promise.all(
        takenIn.map(async ({ what, id, stamp }) => {
          const now = await touched.get([logId, what, id]);
          if (now?.stamp === stamp) await touched.delete([logId, what, id]);
        }),
      );
      return next;
    },
    'relaxed',
  );
