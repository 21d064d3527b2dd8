import { newId } from '../platform/ids.ts';
import { type LogCache, saveCache } from '../storage/cache.ts';
import type { ReadLog } from './findings-log.ts';
import type { Found } from './findings-message.ts';

/** The last answer as the store holds it, with the stamp of the cached set-ups that it was computed from. */
interface CachedAnswer {
  readonly found: Found;
  readonly at: number;
  readonly runs: string;
}

interface CachedFindings {
  readonly found: Found;
  /** When it was computed, epoch ms. */
  readonly at: number;
  /** Nothing was written since. */
  readonly fresh: boolean;
}

/** The last answer by the same rule, or null. Only the findings of a single log are cached. */
export const cachedFindings = (before: readonly LogCache[], rule: string): CachedFindings | null => {
  const [log] = before;
  if (before.length !== 1 || log?.findings?.rule !== rule) return null;
  const { found, at, runs } = log.findings.value as CachedAnswer;
  return { found, at, fresh: log.stale.length === 0 && runs === log.runs?.stamp };
};

/** Caches an answer. A failure is ignored, because the answer can be computed again. */
export const cacheFindings = async (
  before: readonly LogCache[],
  logs: readonly ReadLog[],
  rule: string,
  found: Found,
): Promise<void> => {
  const [log, runs] = [before[0], logs[0]?.runsStamp];
  if (before.length !== 1 || !log || runs === undefined) return;
  const value: CachedAnswer = { found, at: Date.now(), runs };
  await saveCache(log, 'findings', { rule, stamp: newId(), value }, log.stale).catch(() => {});
};
