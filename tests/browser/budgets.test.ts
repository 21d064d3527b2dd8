import { readdirSync } from 'node:fs';
import type { IncomingMessage } from 'node:http';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { freshProfile, openPhone } from '../tools/browser.mjs';
import { BUDGETS, precached, weigh, weighAll } from '../tools/budgets.mjs';
import { DIST, serve } from '../tools/serve.mjs';
import { passStep, planBox, startSetUp } from './at-the-lathe.ts';
import { hasStarted } from './page-state.ts';

/** Paths below the base, in the order the browser asked for them: by pages, and by or for workers. */
let asked: string[] = [];
let askedForWorkers: string[] = [];
let server: Awaited<ReturnType<typeof serve>>;
const profile = freshProfile();

/** Without a service worker, so that only what the page itself needs is counted, and with nothing in the cache. */
const openCold = async () => {
  const phone = await openPhone({ profile, serviceWorkers: 'block' });
  const cdp = await phone.context.newCDPSession(phone.page);
  await cdp.send('Network.setCacheDisabled', { cacheDisabled: true });
  return phone;
};

const ofKind = (paths: readonly string[], ...endings: string[]) =>
  paths.filter((path) => path === '' || endings.some((ending) => path.endsWith(ending)));
const pageAndCode = (paths: readonly string[]) => ofKind(paths, '.html', '.css', '.js');

/** The heaviest first, for whoever has to find out what grew. */
const weighedList = (paths: readonly string[]): string =>
  [...new Set(paths)]
    .map((path) => [weigh(path), path] as const)
    .sort(([a], [b]) => b - a)
    .map(([bytes, path]) => `${bytes} ${path || 'index.html'}`)
    .join('\n');

/** Every file asked for by or for a worker, so that what such a file imports counts as the worker's too. */
const workerFiles = new Set<string>();

const onRequest = ({ url = '', headers }: IncomingMessage): void => {
  const path = url.slice(1);
  const from = headers.referer ? new URL(headers.referer).pathname.slice(1) : '';
  const isWorkers = headers['sec-fetch-dest'] === 'worker' || workerFiles.has(from);
  if (isWorkers) workerFiles.add(path);
  (isWorkers ? askedForWorkers : asked).push(path);
};

beforeAll(async () => {
  server = await serve({ port: 5328, onRequest });
  const { context, page } = await openCold();
  await page.goto(server.url);
  await planBox(page);
  await context.close();
});
afterAll(() => server.stop());

describe('the way to the first tick', () => {
  test(`weighs at most ${BUDGETS.firstTick} bytes of page, style and code`, async () => {
    asked = [];
    const { context, page } = await openCold();
    await startSetUp(page, server.url);
    await passStep(page);
    const code = pageAndCode(asked);
    const fonts = asked.filter((path) => path.endsWith('.woff2'));
    await context.close();
    expect(code.some((path) => path.endsWith('.css'))).toBe(true);
    expect(code.some((path) => path.endsWith('.js'))).toBe(true);
    const weight = weighAll(code);
    console.log(`first tick: ${weight} bytes in ${new Set(code).size} files`);
    expect(weight, weighedList(code)).toBeLessThanOrEqual(BUDGETS.firstTick);
    expect(weighAll(fonts)).toBeLessThanOrEqual(BUDGETS.fonts);
  });
});

describe('a place opened later', () => {
  let phone: Awaited<ReturnType<typeof openCold>>;
  beforeAll(async () => {
    phone = await openCold();
  });
  afterAll(() => phone.context.close());

  test.each(['boxes', 'woods', 'findings', 'shop', 'shop/backups', 'bench/new', 'bench/trial', 'bench/seat'])(
    `%s weighs at most ${BUDGETS.place} bytes`,
    async (place) => {
      asked = [];
      const { page } = phone;
      await page.goto('about:blank');
      await page.goto(server.url);
      await hasStarted(page);
      await page.waitForLoadState('networkidle');
      const before = new Set(asked);
      asked = [];
      askedForWorkers = [];
      await page.evaluate((hash) => {
        location.hash = hash;
      }, `#/${place}`);
      await page.getByRole('heading').first().waitFor();
      await page.waitForLoadState('networkidle');
      await page.waitForTimeout(300);
      const code = pageAndCode(asked).filter((path) => !before.has(path));
      const weight = weighAll(code);
      console.log(`${place}: ${weight} bytes in ${code.length} files`);
      expect(weight, weighedList(code)).toBeLessThanOrEqual(BUDGETS.place);
      if (askedForWorkers.length === 0) return;
      console.log(`${place}, its worker: ${weighAll(askedForWorkers)} bytes`);
      expect(weighAll(askedForWorkers), weighedList(askedForWorkers)).toBeLessThanOrEqual(BUDGETS.worker);
    },
  );
});

describe('the findings of a log', () => {
  test(`weigh at most ${BUDGETS.place} bytes until the first screen stands, and so much again for the figures below`, async () => {
    const { context, page } = await openCold();
    await page.goto(`${server.url}#/shop/backups`);
    await page.getByRole('button', { name: 'Open the demo' }).tap();
    await page.getByRole('button', { name: 'Leave it' }).waitFor();
    await page.goto('about:blank');
    await page.goto(server.url);
    await hasStarted(page);
    await page.waitForLoadState('networkidle');
    const before = new Set(asked);
    await page.evaluate((text) => {
      const seen = Object.assign(window, { standsAt: 0 });
      new MutationObserver(() => {
        if (!seen.standsAt && document.body.textContent?.includes(text)) seen.standsAt = performance.now();
      }).observe(document.body, { childList: true, subtree: true });
      location.hash = '#/findings';
    }, 'What to change tomorrow');
    await page
      .getByRole('heading', { name: 'The clearance that works for you' })
      .waitFor({ timeout: 60_000 });
    await page.waitForLoadState('networkidle');
    const { standsAt, files } = await page.evaluate(() => ({
      standsAt: (window as unknown as { standsAt: number }).standsAt,
      files: performance
        .getEntriesByType('resource')
        .map(({ name, startTime }) => ({ path: new URL(name).pathname.slice(1), startTime })),
    }));
    await context.close();
    const fresh = files.filter(
      ({ path }) => asked.includes(path) && !before.has(path) && pageAndCode([path]).length > 0,
    );
    const first = fresh.filter(({ startTime }) => startTime < standsAt).map(({ path }) => path);
    const below = fresh.filter(({ startTime }) => startTime >= standsAt).map(({ path }) => path);
    console.log(`findings of a log: ${weighAll(first)} bytes, then ${weighAll(below)}`);
    expect(weighAll(first), weighedList(first)).toBeLessThanOrEqual(BUDGETS.place);
    expect(weighAll(below), weighedList(below)).toBeLessThanOrEqual(BUDGETS.place);
  });
});

describe('what is kept for offline', () => {
  test(`weighs at most ${BUDGETS.precached} bytes`, () => {
    const weight = weighAll(precached());
    console.log(`precached: ${weight} bytes in ${precached().length} files`);
    expect(weight).toBeLessThanOrEqual(BUDGETS.precached);
  });

  test(`leaves out the demo, which weighs at most ${BUDGETS.demo} bytes`, () => {
    const demo = readdirSync(join(DIST, 'assets')).filter((name) => name.startsWith('demo-log-'));
    expect(demo).toHaveLength(1);
    expect(precached().filter((path) => path?.includes('demo-log'))).toEqual([]);
    expect(weighAll(demo.map((name) => `assets/${name}`))).toBeLessThanOrEqual(BUDGETS.demo);
  });
});

describe('the scales', () => {
  test('refuse to weigh nothing, or what is not there', () => {
    expect(() => weighAll([])).toThrow();
    expect(() => weighAll(['assets/gone.js'])).toThrow(/gone\.js/);
  });
});
