import type { Cached, StaleMark } from './schema.ts';
import { wholeLog } from './whole-log.ts';
import { read, write } from './write.ts';

/** What the findings have cached of a log, and the marks of what was written since. */
export interface LogCache {
  readonly logId: string;
  readonly runs: Cached | undefined;
  readonly findings: Cached | undefined;
  readonly stale: readonly StaleMark[];
}

/** Call this before reading the log itself: whatever is written after it leaves a mark that `saveCache` does not remove. */
export const readCache = (logId: string): Promise<LogCache> =>
  read(['cache', 'stale'], async (tx) => {
    const [runs, findings, stale] = await Promise.all([
      tx.objectStore('cache').get([logId, 'runs']),
      tx.objectStore('cache').get([logId, 'findings']),
      tx.objectStore('stale').getAll(wholeLog(logId)),
    ]);
    return { logId, runs, findings, stale };
  });

/**
 * Caches what was computed from the log as `before` describes it, and removes the stale marks that it covers; a mark written
 * again meanwhile stays. Does nothing, and answers null, when another reading saved its own cache meanwhile or the log was
 * deleted. Durability is relaxed, because a cache that is lost is computed again.
 */
export const saveCache = (
  before: LogCache,
  what: Cached['what'],
  made: Pick<Cached, 'rule' | 'stamp' | 'value'>,
  covered: readonly StaleMark[] = [],
): Promise<Cached | null> =>
  write(
    ['records', 'events', 'cache', 'stale'],
    async (tx) => {
      const { logId } = before;
      const cache = tx.objectStore('cache');
      const current = await cache.get([logId, what]);
      if (current?.stamp !== before[what]?.stamp) return null;
      const [records, events] = await Promise.all(
        (['records', 'events'] as const).map((name) => tx.objectStore(name).getKey(wholeLog(logId))),
      );
      if (records === undefined && events === undefined) return null;
      const next: Cached = { logId, what, ...made };
      await cache.put(next);
      const stale = tx.objectStore('stale');
      await Promise.all(
        covered.map(async ({ what, id, stamp }) => {
          const mark = await stale.get([logId, what, id]);
          if (mark?.stamp === stamp) await stale.delete([logId, what, id]);
        }),
      );
      return next;
    },
    'relaxed',
  );
