import type { Bodies, Kind } from '../domain/box/records.ts';
import type { FoldedLog, WoodFacts } from '../domain/findings/rows/rows-from-log.ts';
import type { KeptOfLog } from '../storage/kept.ts';
import { listRecords } from '../storage/records.ts';
import { readRuns } from './kept-runs.ts';

/** A log as the findings need it. */
export interface ReadLog extends FoldedLog {
  /** Names what is now kept of its set-ups; undefined when nothing could be. */
  readonly runsKept: string | undefined;
}

const bodies = async <K extends Kind>(logId: string, kind: K): Promise<Map<string, Bodies[K]>> =>
  new Map((await listRecords(logId, kind)).flatMap(({ id, body }) => (body ? [[id, body] as const] : [])));

/** Reads a log, its set-ups from what is kept of them where that still holds; `onShare` hears how far it is. */
export const readLog = async (
  before: KeptOfLog,
  tabled: Readonly<Record<string, WoodFacts>>,
  onShare: (share: number) => void,
): Promise<ReadLog> => {
  const { logId } = before;
  const ownWoods = await bodies(logId, 'wood');
  const { runs, kept } = await readRuns(before, onShare);
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
    runsKept: kept?.stamp,
  };
};
