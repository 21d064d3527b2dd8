import type { Page } from 'playwright-core';
import type { Kind, Stored } from '../../src/domain/box/records.ts';
import type { Settings } from '../../src/domain/log/settings.ts';
import type { Happening, SetUpEvent } from '../../src/domain/setup/events.ts';
import { serve } from '../tools/serve.mjs';
import { hasStarted } from './page-state.ts';

/** The built app: dist/, or what $DIST names. */
export const serveBuilt = (port: number) =>
  serve({ port, ...(process.env.DIST ? { dir: process.env.DIST } : {}) });

const allOf = <T>(page: Page, store: string): Promise<T[]> =>
  page.evaluate(
    (store) =>
      new Promise<T[]>((resolve, reject) => {
        const open = indexedDB.open('lidwright');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const all = open.result.transaction(store).objectStore(store).getAll();
          all.onsuccess = () => {
            open.result.close();
            resolve(all.result);
          };
        };
      }),
    store,
  );

/** Every set-up event in the store, in key order. */
export const storedEvents = (page: Page): Promise<SetUpEvent[]> => allOf(page, 'events');

/** Every record of one kind in the store, deleted ones too. */
export const storedRecords = async <K extends Kind>(page: Page, kind: K): Promise<Stored<K>[]> =>
  (await allOf<Stored>(page, 'records')).filter((record): record is Stored<K> => record.kind === kind);

export const storedEventsOf = async (page: Page, runId: string): Promise<SetUpEvent[]> =>
  (await storedEvents(page)).filter((event) => event.runId === runId);

const put = (page: Page, store: string, values: readonly { value: unknown; key?: string }[]): Promise<void> =>
  page.evaluate(
    ({ store, values }) =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('lidwright');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const tx = open.result.transaction(store, 'readwrite');
          for (const { value, key } of values) tx.objectStore(store).put(value, key);
          tx.oncomplete = () => {
            open.result.close();
            resolve();
          };
          tx.onabort = () => reject(tx.error);
        };
      }),
    { store, values },
  );

/** Replaces what came after the start of a run by these happenings, a minute apart, as if they had been tapped. */
export const plantRun = async (
  page: Page,
  runId: string,
  happenings: readonly Happening[],
): Promise<void> => {
  const [started] = await storedEventsOf(page, runId);
  if (!started) throw new Error(`no run ${runId}`);
  await page.evaluate(
    ([logId, runId]) =>
      new Promise<void>((resolve) => {
        const open = indexedDB.open('lidwright');
        open.onsuccess = () => {
          const tx = open.result.transaction('events', 'readwrite');
          tx.objectStore('events').delete(IDBKeyRange.bound([logId, runId, 2], [logId, runId, []]));
          tx.oncomplete = () => {
            open.result.close();
            resolve();
          };
        };
      }),
    [started.logId, runId] as const,
  );
  const { logId, writer, session, at, mono, hid } = started;
  await put(
    page,
    'events',
    happenings.map((happening, i) => ({
      value: {
        ...{ logId, runId, writer, session, hid, n: i + 2 },
        ...{ at: at + (i + 1) * 60_000, mono: mono + (i + 1) * 60_000 },
        ...happening,
      },
    })),
  );
};

export const keepSettings = (page: Page, settings: Partial<Settings>): Promise<void> =>
  put(page, 'device', [{ key: 'settings', value: settings }]);

export const runIdOf = (page: Page): string => {
  const id = /#\/set-up\/([^/]+)/.exec(page.url())?.[1];
  if (!id) throw new Error(`no set-up at ${page.url()}`);
  return id;
};

/** Loads a run afresh from the store. */
export const openRun = async (page: Page, url: string, runId: string): Promise<void> => {
  await page.goto('about:blank');
  await page.goto(`${url}#/set-up/${runId}`);
  await hasStarted(page);
  await page.locator('main.set-up:not([aria-busy])').waitFor();
  await page.evaluate(() => document.fonts.ready);
};

export const pass = (...steps: readonly string[]): Happening => ({ kind: 'ticked', steps, verdict: 'pass' });
