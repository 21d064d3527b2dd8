import { type CutRun, cutRuns } from '../domain/findings/cut-run.ts';
import type { FoldedLog, WoodFacts } from '../domain/findings/rows-from-log.ts';
import type { Bodies, Kind } from '../domain/log/records.ts';
import { foldRun } from '../domain/setup/fold.ts';
import { listRecords } from '../storage/records.ts';
import { eachRunOfLog } from '../storage/runs-of-log.ts';

const bodies = async <K extends Kind>(logId: string, kind: K): Promise<Map<string, Bodies[K]>> =>
  new Map((await listRecords(logId, kind)).flatMap(({ id, body }) => (body ? [[id, body] as const] : [])));

/** Reads a log and folds its set-ups one by one; `onShare` hears how far it is. */
export const readLog = async (
  logId: string,
  tabled: Readonly<Record<string, WoodFacts>>,
  onShare: (share: number) => void,
): Promise<FoldedLog> => {
  const woods = await bodies(logId, 'wood');
  const runs = new Map<string, CutRun>();
  const keep = cutRuns();
  await eachRunOfLog(
    logId,
    (events) => {
      const run = foldRun(events);
      if (run) runs.set(run.runId, keep(run));
    },
    onShare,
  );
  const woodFacts = (wood: string): WoodFacts =>
    tabled[wood] ?? { group: woods.get(wood)?.group ?? 'unknown', hardness: null };
  return {
    log: logId,
    boxes: await bodies(logId, 'box'),
    rigs: await bodies(logId, 'rig'),
    runs,
    woodFacts,
  };
};
