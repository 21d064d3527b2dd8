import { IDBFactory } from 'fake-indexeddb';
import { expect, test } from 'vitest';
import type { ExperimentPlan } from '../../src/domain/box/records.ts';
import { makeBackup } from '../../src/storage/backup/make-backup.ts';
import { readBackup } from '../../src/storage/backup/read-backup.ts';
import { takeIn } from '../../src/storage/backup/take-in.ts';
import { disconnect } from '../../src/storage/connection.ts';
import { changeRecord, getRecord } from '../../src/storage/records.ts';
import { addLog } from '../../src/storage/whole-log.ts';
import { readExperiments } from '../../src/workers/findings-experiments.ts';
import { inventedExperiment } from '../domain/experiment/invented-experiment.ts';
import { withFreshDatabase } from './fresh-database.ts';
import { storedBox } from './sample-log.ts';

withFreshDatabase();

const author = { writer: 'phone-a', now: 1 };
const { measure: _, ...old } = inventedExperiment({ boxes: 8 }).plan;
const plans: readonly (readonly [string, ExperimentPlan])[] = [
  ['by a reading', inventedExperiment({ boxes: 8 }).plan],
  ['by the time', { ...old, measure: { kind: 'time' } }],
  ['of an older version, by the fit', old],
];

test.each(plans)('an experiment %s goes through a backup to another phone as it is', async (_name, plan) => {
  const { boxes } = inventedExperiment({ boxes: 8 });
  await addLog(
    boxes.map(({ id, box }) => storedBox({ id, body: box })),
    boxes.flatMap(({ events }) => events),
  );
  await changeRecord('mine', 'experiment', 'experiment', author, () => plan);
  const before = await readExperiments(['mine']);
  const file = await makeBackup(2, []);

  await disconnect();
  globalThis.indexedDB = new IDBFactory();
  const backup = await readBackup(file);
  if (!backup.ok) throw new Error(JSON.stringify(backup.error));
  const taken = await takeIn(backup.value, 3, 'phone-b');
  expect(taken.ok).toBe(true);
  expect((await getRecord('mine', 'experiment', 'experiment'))?.body).toEqual(plan);
  expect(await readExperiments(['mine'])).toEqual(before);
  expect(before.experiment).toMatchObject({ look: 'end', measured: { state: 'compared' } });
});
