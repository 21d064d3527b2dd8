import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readBackup } from '../../src/storage/backup/read-backup.ts';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { passStep, planBox, startSetUp } from './at-the-lathe.ts';
import { hasStarted, watchForErrors } from './page-state.ts';

let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  server = await serve({ port: 0 });
});
afterAll(() => server.stop());

const NOTHING_KEPT =
  'This browser keeps nothing: what you enter is lost when you close it. Export before you do.';

const blocks = {
  'has no IndexedDB': () => {
    Object.defineProperty(window, 'indexedDB', { value: undefined, configurable: true });
  },
  'refuses to open it': () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('storage is switched off', 'SecurityError');
    };
  },
};

test.each(Object.entries(blocks))(
  'a browser that %s: the app runs in memory, says so, and exports',
  async (_, block) => {
    const { context, page } = await openPhone({ serviceWorkers: 'block' });
    await context.addInitScript(block);
    // A file that is shared cannot be looked at here; one that is downloaded can.
    await context.addInitScript(() => {
      Object.defineProperty(navigator, 'canShare', { value: () => false });
    });
    const errors = watchForErrors(context);
    await page.goto(server.url);
    await hasStarted(page);
    await page.getByText(NOTHING_KEPT).waitFor();
    await planBox(page);
    await startSetUp(page, server.url);
    await passStep(page);
    expect(await page.getByText(NOTHING_KEPT).isVisible()).toBe(true);

    await page.goto(`${server.url}#/findings`);
    await page.getByText(/^Not available here/).waitFor();

    await page.goto(`${server.url}#/shop/backups`);
    await page.getByRole('button', { name: 'Make a backup' }).tap();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Share or save it' }).tap();
    const bytes = readFileSync(await (await download).path());
    const backup = await readBackup(new Blob([new Uint8Array(bytes)]));
    if (!backup.ok) throw new Error(JSON.stringify(backup.error));
    expect(backup.value.log.records.filter(({ kind }) => kind === 'box')).toHaveLength(1);
    expect(backup.value.log.events.map(({ kind }) => kind)).toEqual(['started', 'ticked']);
    expect(errors).toEqual([]);

    // Nothing was kept.
    await page.reload();
    await hasStarted(page);
    await page.goto(server.url);
    await page.getByRole('button', { name: 'New box' }).waitFor();
    await context.close();
  },
);
