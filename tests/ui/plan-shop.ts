import { fireEvent, screen, waitFor } from '@testing-library/preact';
import { IDBFactory } from 'fake-indexeddb';
import { type BoxOnHand, boxById } from '../../src/app/boxes.ts';
import { changeSettings, openSession } from '../../src/app/session.ts';
import { startBox } from '../../src/app/start-box.ts';
import type { Plan } from '../../src/domain/box/records.ts';
import { newId } from '../../src/platform/ids.ts';
import { forget } from '../../src/storage/connection.ts';
import { PLAN } from '../domain/box/planned-box.ts';

export { givenOf, length, PLAN, plannedBox } from '../domain/box/planned-box.ts';

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

export const newBoxOf = async (plan: Plan = PLAN): Promise<BoxOnHand> => {
  const id = newId();
  await startBox(id, plan);
  return boxOf(id);
};

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
