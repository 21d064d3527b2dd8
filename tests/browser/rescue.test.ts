import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { STORES } from '../../src/storage/names.ts';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { passStep, planBox, startSetUp } from './at-the-lathe.ts';
import { hasStarted } from './page-state.ts';

let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  server = await serve({ port: 5329 });
});
afterAll(() => server.stop());

interface Rescued {
  readonly version: number;
  readonly stores: Readonly<
    Record<string, readonly { readonly key: unknown; readonly value: Record<string, unknown> }[]>
  >;
}

const save = async (page: Page): Promise<Rescued> => {
  await page.goto(`${server.url}rescue.html`);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make the file' }).tap();
  const saved = await download;
  expect(saved.suggestedFilename()).toBe('lidwright-rescue.json');
  await page.getByText('The file is in your downloads').waitFor();
  return JSON.parse(readFileSync(await saved.path(), 'utf8'));
};

/** The app cannot load: its code never arrives. */
const breakTheApp = (page: Page) => page.route(/first-load.*\.js$/, (route) => route.abort());

test('with the app broken, the page still writes out every store, pictures included', async () => {
  const { context, page } = await openPhone({ serviceWorkers: 'block' });
  await page.goto(server.url);
  await planBox(page);
  await startSetUp(page, server.url);
  const passed = [await passStep(page), await passStep(page)];
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('lidwright');
        open.onerror = reject;
        open.onsuccess = () => {
          const tx = open.result.transaction('thumbnails', 'readwrite');
          tx.objectStore('thumbnails').put({
            logId: 'mine',
            id: 'p',
            type: 'image/jpeg',
            bytes: new Uint8Array([255, 216, 255]).buffer,
          });
          tx.oncomplete = () => resolve();
        };
      }),
  );
  await breakTheApp(page);
  const { stores } = await save(page);
  const { stale: _, cache: __, ...facts } = STORES;
  expect(Object.keys(stores).sort()).toEqual(Object.values(facts).sort());
  const box = stores.records?.find(({ value }) => value.kind === 'box');
  expect(box?.value).toMatchObject({
    logId: 'mine',
    body: { number: 1, plan: { opening: { text: '2 in' } } },
  });
  const ticks = stores.events?.filter(({ value }) => value.kind === 'ticked');
  expect(ticks?.map(({ value }) => value.steps)).toEqual(passed.map((step) => [step]));
  expect(stores.thumbnails?.[0]?.value.bytes).toEqual({ base64: '/9j/' });
  await context.close();
});

test('where there is no log it says so, and makes none', async () => {
  const { context, page } = await openPhone({ serviceWorkers: 'block' });
  await page.goto(`${server.url}rescue.html`);
  await page.getByRole('button', { name: 'Make the file' }).tap();
  await page.getByText('There is no log in this browser').waitFor();
  expect(await page.evaluate(() => indexedDB.databases())).toEqual([]);
  await context.close();
});

test('when the app does not start in ten seconds, the page says so and leads there', async () => {
  const { context, page } = await openPhone({ serviceWorkers: 'block' });
  await page.clock.install({ time: 0 });
  await page.clock.pauseAt(1_000);
  await breakTheApp(page);
  await page.goto(server.url);
  const note = page.getByRole('complementary');
  await page.clock.runFor(8_000);
  expect(await note.count()).toBe(0);
  await page.clock.runFor(3_000);
  await note.getByText('Nothing you saved is lost').waitFor();
  await note.getByRole('link', { name: 'save a copy of everything' }).tap();
  await page.getByRole('button', { name: 'Make the file' }).waitFor();
  await context.close();
});

test('when it starts, nobody hears of that', async () => {
  const { context, page } = await openPhone({ serviceWorkers: 'block' });
  await page.clock.install();
  await page.goto(server.url);
  await hasStarted(page);
  await page.clock.runFor(15_000);
  expect(await page.getByText('has not started').isVisible()).toBe(false);
  await context.close();
});
