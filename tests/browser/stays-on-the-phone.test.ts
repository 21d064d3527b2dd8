import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { startProxy } from './logging-proxy.ts';
import { isReadyForOffline } from './page-state.ts';

/** Chromium's own calls, made with no page open too. Whatever a page could ask for (fonts, analytics) is not among them. */
const BROWSER_ITSELF =
  /^(CONNECT|GET|POST) (https?:\/\/)?((update|optimizationguide-pa|content-autofill|safebrowsing)\.googleapis|accounts\.google|clients\d\.google)\.com[:/]/;

test('no request of page, workers or service worker leaves the origin', async () => {
  const server = await serve({ port: 5324 });
  const proxy = await startProxy();
  const { context, page } = await openPhone({ proxy: proxy.proxy });
  await page.goto(server.url);
  await isReadyForOffline(page);
  await page.reload();
  await isReadyForOffline(page);
  await context.close();
  const ours = proxy.seen.filter((line) => line.startsWith(`GET ${server.url}`));
  expect(ours).toContain(`GET ${server.url}sw.js`);
  expect(ours.some((line) => line.endsWith('.js') && line.includes('/assets/'))).toBe(true);
  expect(proxy.seen.filter((line) => !ours.includes(line) && !BROWSER_ITSELF.test(line))).toEqual([]);
  await proxy.stop();
  await server.stop();
});

test('the policy lets nothing in or out, in the page and in a worker', async () => {
  const server = await serve({ port: 5325 });
  const asked: string[] = [];
  const stranger = createServer((request, response) => {
    asked.push(request.url ?? '');
    response
      .writeHead(200, { 'Access-Control-Allow-Origin': '*', 'Content-Type': 'text/javascript' })
      .end('1');
  });
  await new Promise<void>((resolve) => stranger.listen(0, 'localhost', resolve));
  const away = `http://localhost:${(stranger.address() as AddressInfo).port}/`;
  const { context, page } = await openPhone();
  await page.goto(server.url);
  await isReadyForOffline(page);
  const tries = await page.evaluate(async (url) => {
    const fails = (work: Promise<unknown>) => work.then(() => false).catch(() => true);
    const loads = (element: HTMLScriptElement | HTMLImageElement, src: string) =>
      new Promise((resolve, reject) => {
        element.onload = resolve;
        element.onerror = reject;
        element.src = src;
        document.body.append(element);
      });
    const inline = document.createElement('script');
    inline.textContent = 'window.ranInline = true';
    document.body.append(inline);
    return {
      fetch: await fails(fetch(`${url}fetch`)),
      script: await fails(loads(document.createElement('script'), `${url}script`)),
      image: await fails(loads(document.createElement('img'), `${url}image`)),
      beacon: navigator.sendBeacon(`${url}beacon`),
      inline: 'ranInline' in window,
    };
  }, away);
  expect(tries).toMatchObject({ fetch: true, script: true, image: true, inline: false });
  expect(asked).toEqual([]);
  await context.close();
  stranger.close();
  await server.stop();
});

test('the header binds workers too', async () => {
  const server = await serve({ port: 5326 });
  const answer = await fetch(`${server.url}sw.js`);
  expect(answer.headers.get('content-security-policy')).toMatch(/default-src 'none'.*connect-src 'self'/);
  await server.stop();
});
