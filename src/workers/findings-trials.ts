import type { BothWaysPlan } from '../domain/box/records.ts';
import { type Standing, standingOf } from '../domain/experiment/both-ways-standing.ts';
import { type TrialBox, trialBoxOf } from '../domain/experiment/trial-box.ts';
import { foldRun } from '../domain/setup/fold.ts';
import { eventsOfRun } from '../storage/events.ts';
import { getRecord, listRecords } from '../storage/records.ts';

/** How every trial of these logs stands, by its id. Reads no more than the boxes that took a lot. */
export const readTrials = async (logIds: readonly string[]): Promise<Readonly<Record<string, Standing>>> => {
  const standings: [string, Standing][] = [];
  for (const log of logIds)
    for (const { id, body: plan } of await listRecords(log, 'both-ways')) {
      if (!plan) continue;
      const boxes: TrialBox[] = [];
      for (const boxId of plan.boxes) boxes.push(await readBox(log, plan, boxId));
      standings.push([id, standingOf(plan, boxes)]);
    }
  return Object.fromEntries(standings);
};

const readBox = async (log: string, plan: BothWaysPlan, boxId: string): Promise<TrialBox> => {
  const box = (await getRecord(log, 'box', boxId))?.body ?? null;
  const runs = await Promise.all(
    (box?.setUps ?? []).map(async ({ runId }) => foldRun(await eventsOfRun(log, runId)) ?? []),
  );
  return trialBoxOf(plan, box, runs.flat());
};
