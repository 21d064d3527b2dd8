// Reads the logs, folds their set-ups and reckons the findings. In a worker: a large log takes a while.
import { type Findings, findingsOf } from '../domain/findings/findings.ts';
import { type FoldedLog, rowsFromLogs, type WoodFacts } from '../domain/findings/rows-from-log.ts';
import { groupBy } from '../domain/log/group-by.ts';
import type { Bodies, Kind } from '../domain/log/records.ts';
import { foldRun, type RunState } from '../domain/setup/fold.ts';
import { speciesTable } from '../domain/wood/species-table.ts';
import { disconnect } from '../storage/connection.ts';
import { eventsOfLog } from '../storage/events.ts';
import { asFailure } from '../storage/failure.ts';
import { listRecords } from '../storage/records.ts';
import type { FindingsAnswer, FindingsQuestion } from './findings-message.ts';

declare const self: DedicatedWorkerGlobalScope;

const answer = (message: FindingsAnswer): void => self.postMessage(message);

const bodies = async <K extends Kind>(logId: string, kind: K): Promise<Map<string, Bodies[K]>> =>
  new Map((await listRecords(logId, kind)).flatMap(({ id, body }) => (body ? [[id, body] as const] : [])));

const foldLog = async (logId: string): Promise<FoldedLog> => {
  const woods = await bodies(logId, 'wood');
  const events = groupBy(await eventsOfLog(logId), (event) => event.runId);
  const runs = new Map<string, RunState>();
  for (const [runId, list] of events) {
    const run = foldRun(list);
    if (run) runs.set(runId, run);
  }
  const tabled = new Map(speciesTable.map((species) => [species.key, species]));
  const woodFacts = (wood: string): WoodFacts => ({
    group: tabled.get(wood)?.group ?? woods.get(wood)?.group ?? 'unknown',
    hardness: tabled.get(wood)?.hardness?.newton ?? null,
  });
  return { log: logId, boxes: await bodies(logId, 'box'), rigs: await bodies(logId, 'rig'), runs, woodFacts };
};

/** Of the whole, so much is reading and folding the logs. */
const READING = 0.2;

const find = async ({ logIds }: FindingsQuestion): Promise<Findings> => {
  const logs: FoldedLog[] = [];
  for (const logId of logIds) {
    logs.push(await foldLog(logId));
    answer({ kind: 'progress', share: (READING * logs.length) / logIds.length });
  }
  return findingsOf(rowsFromLogs(logs), (share) => answer({ kind: 'progress', share }));
};

self.addEventListener('message', async (event: MessageEvent<FindingsQuestion>) => {
  try {
    answer({ kind: 'found', findings: await find(event.data) });
  } catch (error) {
    answer({ kind: 'failed', reason: asFailure(error).reason });
  } finally {
    await disconnect().catch(() => {});
  }
});
