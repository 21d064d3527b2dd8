import { type CutRun, cutRuns } from '../domain/findings/rows/cut-run.ts';
import { FOLD_RULE, packRuns, unpackRuns } from '../domain/findings/rows/packed-runs.ts';
import { foldRun } from '../domain/setup/fold.ts';
import { newId } from '../platform/ids.ts';
import { type LogCache, saveCache } from '../storage/cache.ts';
import { eventsOfRun } from '../storage/events.ts';
import { eachRunOfLog } from '../storage/runs-of-log.ts';
import type { Cached } from '../storage/schema.ts';

/** The cached set-ups: up to one run id while the first reading is still going on, then all of them (`upTo` null). */
interface CachedRuns {
  readonly upTo: string | null;
  readonly packed: string;
}

/** The folded set-ups of a log, and their cache as it now is. */
interface RunsOfLog {
  readonly runs: ReadonlyMap<string, CutRun>;
  readonly cached: Cached | undefined;
}

/** How often a first reading saves what it has, so that a phone put away halfway need not begin again. */
const SAVE_EVERY_MS = 10_000;
/** Set-ups read at once. */
const BATCH = 50;

const NOTHING: CachedRuns = { upTo: '', packed: packRuns([]) };

/**
 * The set-ups of a log: from the cache where it holds, folded again where they are marked stale, and the rest read for the
 * first time. `onShare` is called with the share read so far, 0 to 1.
 */
export const readRuns = async (before: LogCache, onShare: (share: number) => void): Promise<RunsOfLog> => {
  const { logId } = before;
  const stale = before.stale.filter(({ what }) => what === 'run');
  const usable = before.runs?.rule === FOLD_RULE ? (before.runs.value as CachedRuns) : NOTHING;
  const runs = unpackRuns(usable.packed);
  // After an import most set-ups may be stale: reading the whole log takes less time than reading them one by one.
  const isMany = stale.length > BATCH && stale.length > runs.size;
  const upTo = isMany ? '' : usable.upTo;
  if (isMany) runs.clear();
  if (upTo === null && stale.length === 0) return { runs, cached: before.runs };

  const small = cutRuns(runs.values());
  const take = (events: Parameters<typeof foldRun>[0]): void => {
    const run = foldRun(events);
    if (run) runs.set(run.runId, small(run));
  };
  let held: LogCache | null = before;
  const save = async (upTo: string | null): Promise<void> => {
    const value: CachedRuns = { upTo, packed: packRuns(runs.values()) };
    const cached: Cached | null =
      held &&
      (await saveCache(
        held,
        'runs',
        { rule: FOLD_RULE, stamp: newId(), value },
        upTo === null ? stale : [],
      ).catch(() => null));
    held = held && cached && { ...held, runs: cached };
  };

  for (let i = 0; i < stale.length && !isMany; i += BATCH) {
    const ids = stale.slice(i, i + BATCH).map(({ id }) => id);
    for (const events of await Promise.all(ids.map((id) => eventsOfRun(logId, id)))) take(events);
    if (upTo === null) onShare(Math.min(1, (i + BATCH) / stale.length));
  }
  if (upTo !== null) await readOn(logId, upTo, take, save, onShare);
  await save(null);
  return { runs, cached: held?.runs };
};

const readOn = async (
  logId: string,
  upTo: string,
  take: (events: Parameters<typeof foldRun>[0]) => void,
  save: (upTo: string) => Promise<void>,
  onShare: (share: number) => void,
): Promise<void> => {
  let last = upTo;
  let savedAt = performance.now();
  await eachRunOfLog(
    logId,
    (events) => {
      take(events);
      last = events[0]?.runId ?? last;
    },
    async (share) => {
      onShare(share);
      if (share === 1 || performance.now() - savedAt < SAVE_EVERY_MS) return;
      await save(last);
      savedAt = performance.now();
    },
    upTo,
  );
};
