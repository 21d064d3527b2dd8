import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { watchForErrors } from './page-state.ts';

let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  server = await serve({ port: 0 });
});
afterAll(() => server.stop());

test('the demo opens with photos to look at, and leaves with one tap', async () => {
  const { context, page } = await openPhone();
  const errors = watchForErrors(context);
  await page.goto(server.url);
  await page.getByRole('button', { name: 'Open the demo' }).tap();
  await page.getByRole('button', { name: 'Leave it' }).waitFor();
  const photos = await page.evaluate(
    () =>
      new Promise<{ box: string; photos: number }[]>((resolve, reject) => {
        const opened = indexedDB.open('lidwright');
        opened.onerror = () => reject(opened.error);
        opened.onsuccess = () => {
          const all = opened.result.transaction('records').objectStore('records').getAll();
          all.onsuccess = () =>
            resolve(
              all.result
                .filter(({ kind, body }) => kind === 'box' && body.photos.length > 0)
                .map(({ id, body }) => ({ box: id, photos: body.photos.length })),
            );
        };
      }),
  );
  expect(photos.length).toBeGreaterThan(4);
  for (const { box, photos: count } of photos) {
    await page.goto(`${server.url}#/boxes/${box}`);
    const pictures = page.getByRole('img', { name: /^Photo/ });
    await expect.poll(() => pictures.count()).toBe(count);
    const widths = () =>
      pictures.evaluateAll((all) => all.map((each) => (each as HTMLImageElement).naturalWidth));
    await expect.poll(widths).toEqual(Array(count).fill(480));
  }
  await page
    .getByRole('button', { name: /^Look at it/ })
    .first()
    .tap();
  await page.getByRole('button', { name: 'Close' }).tap();
  await page.getByRole('button', { name: 'Leave it' }).tap();
  await page.getByRole('button', { name: 'Open the demo' }).waitFor();
  expect(errors).toEqual([]);
  await context.close();
});
