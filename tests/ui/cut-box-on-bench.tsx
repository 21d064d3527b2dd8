import { render, waitFor } from '@testing-library/preact';
import { IDBFactory } from 'fake-indexeddb';
import type { ComponentType } from 'preact';
import { expect } from 'vitest';
import { type BoxOnHand, boxById, changeBox, runsOf } from '../../src/app/boxes.ts';
import { changeRig } from '../../src/app/rigs.ts';
import { changeSettings, openSession } from '../../src/app/session.ts';
import { openRun, record, run } from '../../src/app/set-up-run.ts';
import { startBox } from '../../src/app/start-box.ts';
import { startSetUp } from '../../src/app/start-set-up.ts';
import type { Box, Plan } from '../../src/domain/box/records.ts';
import { latestRun } from '../../src/domain/box/stages.ts';
import type { Part } from '../../src/domain/setup/events.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { newId } from '../../src/platform/ids.ts';
import { forget } from '../../src/storage/connection.ts';
import type { StageProps } from '../../src/ui/bench/stage-props.ts';
import { useLive } from '../../src/ui/parts/use-live.ts';

export const length = (value: number, text: string) => ({ mm: mm(value), text });

const PLAN: Plan = {
  route: 'recess-first',
  recessIn: 'lid',
  lid: { wood: 'Boxwood', grain: 'end' },
  base: { wood: 'Boxwood', grain: 'end' },
  insert: null,
  pitch: length(2.54, '10 tpi'),
  opening: length(40, '40 mm'),
  outside: length(58, '58 mm'),
  aim: { by: 'fit', clearance: null },
  threads: 3,
  passes: 'two-thirds',
};

/** A new store with one box and a rig whose dial is known: 0.05 in a turn, 50 marks. */
export const newBox = async (): Promise<string> => {
  globalThis.indexedDB = new IDBFactory();
  forget();
  location.hash = '';
  await openSession();
  await changeSettings({ sound: false, vibration: false, unit: 'in' });
  await changeRig('rig-1', (rig) => ({
    ...rig,
    travelPerTurn: length(1.27, '0.05 in'),
    marksPerTurn: 50,
    tipFlat: length(0.2, '0.2 mm'),
  }));
  const id = newId();
  await startBox(id, PLAN);
  return id;
};

export const onHandOf = async (id: string): Promise<BoxOnHand> => {
  const onHand = await boxById(id);
  if (!onHand) throw new Error('no box');
  return onHand;
};
export const boxOf = async (id: string): Promise<Box> => (await onHandOf(id)).box;
export const change = (id: string, how: (box: Box) => Box) => changeBox(id, how);

export const runOf = async (id: string, part: Part) => {
  const box = await boxOf(id);
  return latestRun(box, part, await runsOf(box));
};

/** Sets a piece up, every step passed but those named, and the dry run counted if a count is given. */
export const setUp = async (
  id: string,
  part: Part,
  { turns = 3.5 as number | null, skip = '' } = {},
): Promise<string> => {
  const runId = newId();
  await startSetUp(runId, await onHandOf(id), part);
  await openRun(runId);
  for (let now = run.value?.now; now; now = run.value?.now) {
    if (now === 'dry-run' && turns !== null)
      await record({ kind: 'read', step: now, reading: { kind: 'turns', turns } });
    await record({ kind: 'ticked', steps: [now], verdict: now === skip ? 'skip' : 'pass' });
  }
  return runId;
};

const load = async (id: string) => {
  const onHand = await onHandOf(id);
  return { onHand, runs: await runsOf(onHand.box) };
};

/** Shows a stage as the Bench does: with the box and its set-ups, drawn again whenever they change. */
export const show = async (id: string, Stage: ComponentType<StageProps>) => {
  const Host = () => {
    const shown = useLive(load, ['box', 'events'], id).value;
    return shown ? <Stage {...shown} /> : null;
  };
  const shown = render(<Host />);
  await waitFor(() => expect(shown.container.querySelector('*')).not.toBeNull());
  // Effects run after the paint: no hand is quicker.
  await new Promise((resolve) => setTimeout(resolve, 150));
  return shown;
};
