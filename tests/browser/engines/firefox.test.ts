import { expect, test } from 'vitest';
import { openFirefox } from '../../tools/browser.mjs';
import { serve } from '../../tools/serve.mjs';
import { passStep, planBox, startSetUp } from '../at-the-lathe.ts';
import { CAMERA, withExif } from '../exif-jpeg.ts';
import { callInPage, hasStarted, isReadyForOffline, watchForErrors } from '../page-state.ts';
import { lookInPage, photoWorker, redAndBlueInPage, shrinkInPage } from '../photo-in-page.ts';

test('Firefox: plan, set up, a photo; with the server dead all is still there', async () => {
  const server = await serve({ port: 5337 });
  const { browser, context, page } = await openFirefox();
  const errors = watchForErrors(context);
  await page.goto(server.url);
  await isReadyForOffline(page);
  await planBox(page);
  await startSetUp(page, server.url);
  await passStep(page);
  await passStep(page);
  const set = page.url();

  const taken = withExif(Buffer.from(await callInPage(page, redAndBlueInPage, 300, 150), 'base64'), 6);
  const kept = await callInPage(page, shrinkInPage, photoWorker(), taken.toString('base64'));
  if ('refused' in kept) throw new Error(kept.refused);
  expect(Buffer.from(kept.bytes, 'base64').includes(CAMERA)).toBe(false);
  expect(await callInPage(page, lookInPage, kept.bytes)).toEqual({
    width: 150,
    height: 300,
    top: 'red',
    bottom: 'blue',
  });

  await server.stop();
  await page.goto(set);
  await page.reload();
  await hasStarted(page);
  await page.locator('main[data-step="board"]').waitFor();
  await page.goto(`${server.url}#/boxes`);
  await page.getByRole('heading', { name: 'Boxes' }).first().waitFor();
  expect(errors).toEqual([]);
  await browser.close();
});
