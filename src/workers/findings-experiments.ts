import type { ExperimentPlan } from '../domain/box/records.ts';
import { type ExperimentBox, experimentBoxOf } from '../domain/experiment/experiment-box.ts';
import { type ExperimentStatus, experimentStatus } from '../domain/experiment/experiment-status.ts';
import { foldRun } from '../domain/setup/fold.ts';
import { eventsOfRun } from '../storage/events.ts';
import { getRecord, listRecords } from '../storage/records.ts';

/** The status of every experiment of these logs, by its id. Reads only the boxes that took a lot. */
export const readExperiments = async (
  logIds: readonly string[],
): Promise<Readonly<Record<string, ExperimentStatus>>> => {
  const statuses: [string, ExperimentStatus][] = [];
  for (const log of logIds)
    for (const { id, body: plan } of await listRecords(log, 'experiment')) {
      if (!plan) continue;
      const boxes: ExperimentBox[] = [];
      for (const boxId of plan.boxes) boxes.push(await readBox(log, plan, boxId));
      statuses.push([id, experimentStatus(plan, boxes)]);
    }
  return Object.fromEntries(statuses);
};

const readBox = async (log: string, plan: ExperimentPlan, boxId: string): Promise<ExperimentBox> => {
  const box = (await getRecord(log, 'box', boxId))?.body ?? null;
  const runs = await Promise.all(
    (box?.setUps ?? []).map(async ({ runId }) => foldRun(await eventsOfRun(log, runId)) ?? []),
  );
  return experimentBoxOf(plan, box, runs.flat());
};
