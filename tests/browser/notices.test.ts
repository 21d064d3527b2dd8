import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { passStep, planBox, startSetUp } from './at-the-lathe.ts';
import { hasStarted } from './page-state.ts';

let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  server = await serve({ port: 0 });
});
afterAll(() => server.stop());

test('at the cut a pass that was not saved is said above everything, closed by a finger, and hides no number', async () => {
  const { context, page } = await openPhone();
  await page.goto(server.url);
  await hasStarted(page);
  await planBox(page);
  await startSetUp(page, server.url);
  for (let i = 0; i < 20 && (await page.locator('main[data-step]').count()) > 0; i += 1) await passStep(page);
  await page.getByRole('link', { name: 'To the cut' }).tap();
  const act = page.getByRole('button', { name: 'Cutter stopped: pass 1 cut' });
  await act.waitFor();
  // The store dies under the page.
  await page.evaluate(() => {
    const real = IDBDatabase.prototype.transaction;
    Object.assign(window, { mend: () => Object.assign(IDBDatabase.prototype, { transaction: real }) });
    IDBDatabase.prototype.transaction = () => {
      throw new DOMException('the connection is closing', 'InvalidStateError');
    };
  });
  await act.tap();
  const note = page.getByRole('alert');
  await note.waitFor();
  expect(await note.textContent()).toMatch(/^Not saved: pass\./);

  // What a finger meets at the middle of each is the thing itself.
  const isOnTop = (name: string) =>
    page.getByRole('button', { name, exact: true }).evaluate((button) => {
      const { x, y, width, height } = button.getBoundingClientRect();
      return button.contains(document.elementFromPoint(x + width / 2, y + height / 2));
    });
  for (const name of ['Close', 'Undo', 'Cutter stopped: pass 1 cut', 'Something moved'])
    expect(await isOnTop(name), name).toBe(true);
  const [above, below] = [await note.boundingBox(), await page.locator('.cutting').boundingBox()];
  expect((below?.y ?? 0) + 1).toBeGreaterThan((above?.y ?? 0) + (above?.height ?? 0));

  await page.getByRole('button', { name: 'Close', exact: true }).tap();
  await note.waitFor({ state: 'detached' });
  expect((await page.locator('.cutting').boundingBox())?.y).toBe(0);
  await page.evaluate(() => (window as unknown as { mend: () => void }).mend());
  await act.tap();
  await page.getByRole('button', { name: 'Cutter stopped: pass 2 cut' }).waitFor();
  await context.close();
});
