import type { Bodies, Kind } from '../domain/box/records.ts';
import type { FoldedLog, WoodFacts } from '../domain/findings/rows/rows-from-log.ts';
import type { LogCache } from '../storage/cache.ts';
import { listRecords } from '../storage/records.ts';
import { readRuns } from './cached-runs.ts';

/** A log as the findings need it. */
export interface ReadLog extends FoldedLog {
  /** Stamp of the cached set-ups; undefined when they could not be cached. */
  readonly runsStamp: string | undefined;
}

const bodies = async <K extends Kind>(logId: string, kind: K): Promise<Map<string, Bodies[K]>> =>
  new Map((await listRecords(logId, kind)).flatMap(({ id, body }) => (body ? [[id, body] as const] : [])));

/** Reads a log, its set-ups from the cache where that is not stale. `onShare` is called with the share read so far, 0 to 1. */
export const readLog = async (
  before: LogCache,
  tabled: Readonly<Record<string, WoodFacts>>,
  onShare: (share: number) => void,
): Promise<ReadLog> => {
  const { logId } = before;
  const ownWoods = await bodies(logId, 'wood');
  const { runs, cached } = await readRuns(before, onShare);
  const woodFacts = (wood: string): WoodFacts =>
    tabled[wood] ?? { group: ownWoods.get(wood)?.group ?? 'unknown', hardness: null };
  return {
    log: logId,
    boxes: await bodies(logId, 'box'),
    rigs: await bodies(logId, 'rig'),
    calipers: await bodies(logId, 'instrument'),
    ownWoods,
    runs,
    woodFacts,
    runsStamp: cached?.stamp,
  };
};
