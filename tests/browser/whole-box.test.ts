import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Box, Stored } from '../../src/domain/box/records.ts';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { CAMERA, withExif } from './exif-jpeg.ts';
import { callInPage, isReadyForOffline, watchForErrors } from './page-state.ts';
import { lookInPage, redAndBlueInPage } from './photo-in-page.ts';

/** The most taps a plain box may take, both set-ups included. */
const MOST_TAPS = 60;

/** Counts what a finger did: only clicks the browser itself vouches for. */
const countTaps = (page: Page) =>
  page.addInitScript(() => {
    const counted = { taps: 0, keys: 0 };
    Object.assign(window, { counted });
    addEventListener('click', (event) => event.isTrusted && event.detail > 0 && counted.taps++, true);
    addEventListener('keydown', (event) => event.isTrusted && counted.keys++, true);
  });

const counted = (page: Page) =>
  page.evaluate(() => (window as unknown as { counted: { taps: number; keys: number } }).counted);

const tap = async (page: Page, role: 'button' | 'link', name: string | RegExp): Promise<void> => {
  await page.getByRole(role, { name }).first().tap();
};

const type = async (page: Page, field: string, text: string): Promise<void> => {
  await page.getByRole('textbox', { name: field, exact: true }).tap();
  await page.keyboard.type(text);
};

/** Every hold point by itself, the steps between them at one go, to the end. */
const setUp = async (page: Page): Promise<void> => {
  await tap(page, 'button', 'Start the set-up');
  const step = page.locator('main[data-step]');
  await step.waitFor();
  for (let i = 0; i < 20 && (await step.count()) > 0; i += 1) {
    const key = await step.getAttribute('data-step');
    const stretch = page.getByRole('button', { name: /^\d+ steps done$/ });
    if (await stretch.count()) await stretch.tap();
    else await page.getByRole('button', { name: 'Pass', exact: true }).tap();
    await page.locator(`main:not([data-step="${key}"])`).waitFor();
    await page.waitForTimeout(400);
  }
  await page.getByRole('heading', { name: 'Set. Nothing more to check.' }).waitFor();
};

/** Two passes. The screen is deaf for two seconds after each: no pass is cut so soon. */
const cut = async (page: Page): Promise<void> => {
  await tap(page, 'link', 'To the cut');
  await tap(page, 'button', 'Cutter stopped: pass 1 cut');
  await page.getByRole('button', { name: 'Cutter stopped: pass 2 cut' }).waitFor();
  await page.waitForTimeout(2_100);
  await tap(page, 'button', 'Cutter stopped: pass 2 cut');
};

const entries = <T>(page: Page, store: string): Promise<T[]> =>
  page.evaluate(
    (name) =>
      new Promise<T[]>((resolve, reject) => {
        const open = indexedDB.open('lidwright');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const all = open.result.transaction(name).objectStore(name).getAll();
          all.onsuccess = () => {
            open.result.close();
            const text = (buffer: ArrayBuffer) =>
              btoa(Array.from(new Uint8Array(buffer), (byte) => String.fromCharCode(byte)).join(''));
            resolve(all.result.map((e) => (e.bytes ? { ...e, bytes: text(e.bytes) } : e)));
          };
        };
      }),
    store,
  );

test('one box from blank to shelf, by touch, with no network from beginning to end', async () => {
  const server = await serve({ port: 5335 });
  const { context, page } = await openPhone();
  const errors = watchForErrors(context);
  await countTaps(page);
  await page.goto(server.url);
  await isReadyForOffline(page);
  await server.stop();
  await page.reload();
  await isReadyForOffline(page);

  await tap(page, 'button', 'New box');
  await type(page, 'Opening', '2');
  await type(page, 'Wood', 'Boxwood');
  await tap(page, 'button', 'Plan it');
  await tap(page, 'link', 'Bored? Measure it');
  await type(page, 'Along the rings', '2.003');
  await tap(page, 'button', 'Save');
  await tap(page, 'link', 'To the set-up');
  await setUp(page);
  await cut(page);
  await type(page, 'Diameter of the tenon', '2.1');
  await tap(page, 'button', 'Save');
  await page.getByText('On size').waitFor();
  await tap(page, 'link', 'To the set-up');
  await setUp(page);
  await cut(page);
  await tap(page, 'button', 'Good: runs on freely, pulls up firm');
  await tap(page, 'button', 'In line and flush: close the box');

  // A broken picture is refused in words, and nothing is lost; then a real one, as a phone takes it.
  const library = page.locator('input[type=file]:not([capture])');
  await library.setInputFiles({
    name: 'x.jpg',
    mimeType: 'image/jpeg',
    buffer: Buffer.from('not a picture'),
  });
  await page
    .getByRole('region', { name: 'Photos' })
    .getByText(/not a (picture|photo)|cannot be read/i)
    .waitFor();
  const picture = Buffer.from(await callInPage(page, redAndBlueInPage, 3000, 1500), 'base64');
  const camera = page.locator('input[type=file][capture]');
  await camera.setInputFiles({ name: 'photo.jpg', mimeType: 'image/jpeg', buffer: withExif(picture, 6) });
  await page.getByRole('region', { name: 'Photos' }).getByRole('img').first().waitFor();

  await tap(page, 'button', 'Keep it: close');
  await page.getByRole('heading', { name: 'Nothing on the lathe.' }).waitFor();
  const { taps, keys } = await counted(page);
  console.log(`one plain box: ${taps} taps, ${keys} keys`);
  expect(taps).toBeGreaterThan(20);
  expect(taps).toBeLessThanOrEqual(MOST_TAPS);

  const [box, ...others] = (await entries<Stored<'box'>>(page, 'records')).filter((r) => r.kind === 'box');
  expect(others).toEqual([]);
  const body = box?.body as Box;
  expect(body).toMatchObject({
    number: 1,
    plan: { pitch: { text: '10 tpi' }, opening: { text: '2 in', mm: 50.8 } },
    bore: [{ where: 'mouth', along: { mm: 2.003 * 25.4 } }],
    tenon: [{ where: 'end' }],
    setUps: [{ part: 'recess' }, { part: 'tenon' }],
    trials: [{ right: true }],
    closing: { outcome: 'kept' },
    photos: [{ of: 'box' }],
  });
  expect(body.cuts.map((c) => c.part)).toEqual(['recess', 'recess', 'tenon', 'tenon']);

  const [photo, ...morePhotos] = await entries<{ bytes: string; width: number; height: number }>(
    page,
    'photos',
  );
  expect(morePhotos).toEqual([]);
  expect(photo).toMatchObject({ width: 1024, height: 2048 });
  const kept = Buffer.from(photo?.bytes ?? '', 'base64');
  for (const trace of ['Exif', CAMERA]) expect(kept.includes(trace)).toBe(false);
  expect(await callInPage(page, lookInPage, photo?.bytes ?? '')).toMatchObject({
    top: 'red',
    bottom: 'blue',
  });

  // Places that this phone has never opened come without a network.
  for (const place of ['Boxes', 'Woods', 'Findings', 'Shop']) {
    await tap(page, 'link', place);
    await page.getByRole('heading', { name: place, level: 1 }).waitFor();
  }
  expect(errors).toEqual([]);
  await context.close();
});
