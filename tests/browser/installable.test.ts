import { expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { isReadyForOffline } from './page-state.ts';

test('the browser finds nothing that would keep it from the home screen', async () => {
  const server = await serve({ base: '/some/shop/', port: 5323 });
  const { context, page } = await openPhone();
  await page.goto(server.url);
  await isReadyForOffline(page);
  const cdp = await context.newCDPSession(page);
  const manifest = await cdp.send('Page.getAppManifest');
  expect(manifest.errors).toEqual([]);
  expect(manifest.url).toBe(`${server.url}manifest.webmanifest`);
  const { installabilityErrors } = await cdp.send('Page.getInstallabilityErrors');
  expect(installabilityErrors).toEqual([]);
  const icons: { src: string; sizes: string; type: string }[] = JSON.parse(manifest.data ?? '').icons;
  expect(icons.length).toBeGreaterThan(0);
  for (const { src, type } of icons) {
    const answer = await fetch(new URL(src, manifest.url));
    expect([answer.status, answer.headers.get('content-type')], src).toEqual([200, type]);
  }
  await context.close();
  await server.stop();
});
