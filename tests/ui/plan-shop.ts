import { fireEvent, screen, waitFor } from '@testing-library/preact';
import { IDBFactory } from 'fake-indexeddb';
import { type BoxOnHand, boxById } from '../../src/app/boxes.ts';
import type { Given } from '../../src/app/plan-of.ts';
import { changeSettings, openSession } from '../../src/app/session.ts';
import { startBox } from '../../src/app/start-box.ts';
import type { Box, Plan, Rig } from '../../src/domain/box/records.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { forget } from '../../src/storage/connection.ts';
import { sampleBox } from '../storage/sample-log.ts';

export const length = (value: number, text = `${value} mm`) => ({ mm: mm(value), text });

/** A plain box: 50 mm, 10 to the inch, cherry on end grain, a wanted clearance of 0.35 mm. */
export const PLAN: Plan = {
  route: 'recess-first',
  recessIn: 'lid',
  lid: { wood: 'Cherry, black', grain: 'end' },
  base: { wood: 'Cherry, black', grain: 'end' },
  insert: null,
  pitch: length(2.54, '10 tpi'),
  opening: length(50),
  outside: null,
  aim: { by: 'fit', clearance: length(0.35) },
  threads: 3,
  passes: 'two-thirds',
};

/** A box of that plan, in no log. */
export const plannedBox = (change: Partial<Box> = {}): Box => sampleBox({ plan: PLAN, ...change });

/** What a plan is reckoned with beside the box: this rig, a caliper of no known offset, no wood of one's own. */
export const givenOf = (rig: Rig): Given => ({
  rig,
  caliper: { name: 'Caliper', insideMinusOutside: null },
  ownWoods: new Map(),
});

/** A form takes up its draft a frame after it is drawn, and lets it go a moment after it is left; no thumb is quicker. */
const aFrame = () => new Promise((resolve) => setTimeout(resolve, 120));

/** An empty log on an empty phone. */
export const freshLog = async (unit: 'in' | 'mm' = 'mm'): Promise<void> => {
  await aFrame();
  globalThis.indexedDB = new IDBFactory();
  forget();
  location.hash = '';
  await openSession();
  await changeSettings({ unit });
};

export const boxOf = async (id: string): Promise<BoxOnHand> => {
  const found = await boxById(id);
  if (!found) throw new Error('no box');
  return found;
};

export const newBoxOf = async (plan: Plan = PLAN): Promise<BoxOnHand> => boxOf((await startBox(plan)) ?? '');

export const press = async (name: string | RegExp) => {
  await aFrame();
  fireEvent.click(await waitFor(() => screen.getByRole('button', { name })));
};
export const choose = async (name: string | RegExp, role: 'radio' | 'checkbox' = 'radio') => {
  await aFrame();
  fireEvent.click(screen.getByRole(role, { name }));
};
export const type = async (label: string | RegExp, text: string) => {
  await aFrame();
  fireEvent.input(screen.getByRole('textbox', { name: label }), { target: { value: text } });
};
export const seen = (text: string | RegExp) => waitFor(() => screen.getByText(text));
