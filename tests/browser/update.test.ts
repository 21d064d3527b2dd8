import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { tempFolder } from '../tools/opened.mjs';
import { DIST, serve } from '../tools/serve.mjs';
import { passStep, planBox, startSetUp } from './at-the-lathe.ts';
import { isReadyForOffline } from './page-state.ts';

const MARK = 'the second version';

/** The built app in a directory of its own, and how to put a second version there. */
const host = async (port: number) => {
  const dir = tempFolder('host');
  cpSync(DIST, dir, { recursive: true });
  const change = (file: string, from: RegExp | string, to: string) => {
    const before = readFileSync(join(dir, file), 'utf8');
    const after = before.replace(from, to);
    expect(after).not.toBe(before);
    writeFileSync(join(dir, file), after);
  };
  return {
    ...(await serve({ dir, port })),
    release: () => {
      change('index.html', '</body>', `<p hidden>${MARK}</p></body>`);
      change('sw.js', /(url:\s*["'`]index\.html["'`],\s*revision:\s*["'`])[0-9a-f]+/, '$1feedfeedfeedfeed');
    },
  };
};

/** The browser looks for a new version now, and it is fetched and waits. */
const lookForUpdate = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    for (let i = 0; i < 100 && !registration.waiting; i += 1) await new Promise((r) => setTimeout(r, 100));
    return registration.waiting !== null;
  });

const isSecondVersion = async (page: Page) => (await page.content()).includes(MARK);
const offer = (page: Page) => page.getByRole('button', { name: 'Take it now' });

test('one page, nothing open: a new version is offered, and taken by one tap', async () => {
  const server = await host(5331);
  const { context, page } = await openPhone();
  await page.goto(server.url);
  await isReadyForOffline(page);
  server.release();
  expect(await lookForUpdate(page)).toBe(true);
  await offer(page).waitFor();
  expect(await isSecondVersion(page)).toBe(false);
  await offer(page).tap();
  await page.waitForFunction((mark) => document.body.innerHTML.includes(mark), MARK);
  await isReadyForOffline(page);
  expect(await offer(page).count()).toBe(0);
  await context.close();
  await server.stop();
});

test('during a set-up it is not offered; afterwards it is', async () => {
  const server = await host(5332);
  const { context, page } = await openPhone();
  await page.goto(server.url);
  await isReadyForOffline(page);
  await planBox(page);
  await startSetUp(page, server.url);
  server.release();
  expect(await lookForUpdate(page)).toBe(true);
  await page.waitForTimeout(500);
  expect(await offer(page).count()).toBe(0);
  await passStep(page);
  await page.evaluate(() => {
    location.hash = '#/boxes';
  });
  await offer(page).waitFor();
  await context.close();
  await server.stop();
});

test('with two pages open it waits, breaks neither, and takes over once all are closed', async () => {
  const server = await host(5333);
  const { context, page, profile } = await openPhone();
  await page.goto(server.url);
  await isReadyForOffline(page);
  const second = await context.newPage();
  await second.goto(server.url);
  await isReadyForOffline(second);
  server.release();
  expect(await lookForUpdate(page)).toBe(true);
  await page.waitForTimeout(500);
  for (const open of [page, second]) expect(await offer(open).count()).toBe(0);
  // A place that this page has never opened still comes, in the version the page is of.
  await second.evaluate(() => {
    location.hash = '#/woods';
  });
  await second.getByRole('heading', { name: 'Woods' }).first().waitFor();
  await context.close();

  const again = await openPhone({ profile });
  await again.page.goto(server.url);
  await isReadyForOffline(again.page);
  if (!(await isSecondVersion(again.page))) await again.page.reload();
  expect(await isSecondVersion(again.page)).toBe(true);
  await again.context.close();
  await server.stop();
});
