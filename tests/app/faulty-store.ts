import { IDBFactory } from 'fake-indexeddb';
import { vi } from 'vitest';
import { failures } from '../../src/app/failure.ts';
import { openSession } from '../../src/app/session.ts';
import { startBox } from '../../src/app/start-box.ts';
import type { Plan } from '../../src/domain/box/records.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { forget } from '../../src/storage/connection.ts';

const length = (value: number, text = `${value} mm`) => ({ mm: mm(value), text });

export const PLAN: Plan = {
  route: 'recess-first',
  recessIn: 'lid',
  lid: { wood: 'Apple', grain: 'end' },
  base: { wood: 'Apple', grain: 'end' },
  insert: null,
  pitch: length(2.54, '10 tpi'),
  opening: length(50),
  outside: null,
  aim: { by: 'fit', clearance: null },
  threads: 3,
  passes: 'two-thirds',
};

/** An empty phone with one box on the bench. */
export const freshPhone = async (): Promise<void> => {
  vi.restoreAllMocks();
  globalThis.indexedDB = new IDBFactory();
  forget();
  failures.value = [];
  await openSession();
  await startBox('box-1', PLAN);
};

/** The store dies under the page: nothing is read or written until `restoreAllMocks`. */
export const loseStore = (): void => {
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(() => {
    throw new DOMException('the connection is closing', 'InvalidStateError');
  });
};

/** No request to open the store is ever answered, until `restoreAllMocks`. */
export const openNever = (): void => {
  vi.spyOn(indexedDB, 'open').mockImplementation(() =>
    Object.create(IDBOpenDBRequest.prototype, { addEventListener: { value: () => {} } }),
  );
};
