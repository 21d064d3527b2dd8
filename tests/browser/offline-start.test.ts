import { expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { hasStarted, isReadyForOffline, watchForErrors } from './page-state.ts';

/** Loads once, then kills the server and the browser and starts a new browser on the same profile. */
const restartWithoutServer = async (base: string, port: number) => {
  const server = await serve({ base, port });
  const first = await openPhone();
  await first.page.goto(server.url);
  await isReadyForOffline(first.page);
  await first.context.close();
  await server.stop();
  await expect(fetch(server.url)).rejects.toThrow();
  return { url: server.url, ...(await openPhone({ profile: first.profile })) };
};

test('the app starts in a fresh browser with the server dead', async () => {
  const { url, context, page } = await restartWithoutServer('/', 5320);
  const errors = watchForErrors(context);
  await page.goto(url);
  await hasStarted(page);
  expect(await page.locator('#app').textContent()).not.toBe('');
  expect(errors).toEqual([]);
  await context.close();
});

test('it works from a sub-path, deep links and the rescue page included, and touches nothing outside', async () => {
  const { url, context, page } = await restartWithoutServer('/some/shop/', 5321);
  const errors = watchForErrors(context);
  await page.goto(`${url}#/bench`);
  await hasStarted(page);
  expect(await page.evaluate(async () => (await navigator.serviceWorker.ready).scope)).toBe(url);
  await page.goto(`${url}rescue.html`);
  await page.getByRole('button', { name: 'Make the file' }).waitFor();
  expect(errors).toEqual([]);
  await expect(page.goto(`${url}not-a-file`)).rejects.toThrow();
  await expect(page.goto(new URL('/', url).href)).rejects.toThrow();
  await context.close();
});

test('what is not part of the app is asked of the server, never answered with the app', async () => {
  const server = await serve({ base: '/some/shop/', port: 5322 });
  const { context, page } = await openPhone();
  await page.goto(server.url);
  await isReadyForOffline(page);
  for (const path of ['missing.js', 'missing', 'photos/missing.png']) {
    expect((await page.goto(`${server.url}${path}`))?.status(), path).toBe(404);
  }
  await context.close();
  await server.stop();
});

test('the demo, which is not kept for offline, asks for a connection and the app goes on', async () => {
  const { url, context, page } = await restartWithoutServer('/', 0);
  await page.goto(url);
  await page.getByRole('button', { name: 'Open the demo' }).tap();
  expect(await page.getByRole('alert').textContent()).toContain(
    'Sample workshop not opened or closed. It needs a connection the first time.',
  );
  await page.getByRole('button', { name: 'New box' }).tap();
  await page.waitForURL(/bench\/new/);
  await context.close();
});
