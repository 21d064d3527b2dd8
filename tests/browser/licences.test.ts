import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { openPhone } from '../tools/browser.mjs';
import { DIST, serve } from '../tools/serve.mjs';
import { isReadyForOffline } from './page-state.ts';

let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  server = await serve({ port: 5341 });
});
afterAll(() => server.stop());

test('the licences of all that is inside are in the app, and can be read offline', async () => {
  const { context, page } = await openPhone();
  await page.goto(`${server.url}#/shop/sources`);
  await isReadyForOffline(page);
  await context.setOffline(true);
  const [opened] = await Promise.all([
    context.waitForEvent('page'),
    page.getByRole('link', { name: 'Licences of the software inside' }).tap(),
  ]);
  const text = await opened.locator('body').textContent();
  await context.close();
  if (text === null) throw new Error('nothing to read');
  const named = text
    .split(/^={72}$/m)
    .flatMap((part) => part.trim().split('\n', 1))
    .flatMap((line) => line.split(', '));
  expect(named).toEqual(expect.arrayContaining(Object.keys(manifest.dependencies)));
  // What came along with those, and is only in a worker.
  expect(named).toContain('@stdlib/math-base-special-betainc');
  for (const words of ['Permission is hereby granted', 'Apache License', 'SIL OPEN FONT LICENSE'])
    expect(text).toContain(words);
});

test('they stand there once, not in the code as well', () => {
  const assets = join(DIST, 'assets');
  const withNotices = readdirSync(assets).filter(
    (file) =>
      file.endsWith('.js') && /@license|Apache License/.test(readFileSync(join(assets, file), 'utf8')),
  );
  expect(withNotices).toEqual([]);
});
