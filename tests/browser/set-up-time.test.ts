import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { foldRun } from '../../src/domain/setup/fold.ts';
import { openPhone } from '../tools/browser.mjs';
import { planBox, startSetUp } from './at-the-lathe.ts';
import { openRawChromium } from './raw-chromium.ts';
import { openRun, pass, plantRun, runIdOf, serveBuilt, storedEventsOf } from './set-up-in-store.ts';

const DEAF = 370;
let server: Awaited<ReturnType<typeof serveBuilt>>;
let phone: Awaited<ReturnType<typeof openPhone>>;
let page: Page;
let runId: string;

beforeAll(async () => {
  server = await serveBuilt(5374);
});
afterAll(() => server.stop());
beforeEach(async () => {
  phone = await openPhone({ timezoneId: 'Europe/London' });
  page = phone.page;
  // The wall clock alone can be moved: Date is shifted, performance.now stays what it is.
  await page.addInitScript(() => {
    const RealDate = Date;
    const shift = () => Number(document.documentElement?.dataset.shift ?? 0);
    class Shifted extends RealDate {
      constructor(...args: unknown[]) {
        if (args.length === 0) super(RealDate.now() + shift());
        else super(...(args as [number]));
      }
      static override now() {
        return RealDate.now() + shift();
      }
    }
    globalThis.Date = Shifted as DateConstructor;
  });
  await page.goto(server.url);
  await planBox(page);
  await startSetUp(page, server.url);
  runId = runIdOf(page);
  await plantRun(page, runId, [pass('isolate'), pass('protect')]);
  await openRun(page, server.url, runId);
});
afterEach(() => phone.context.close());

const until = (step: string) => page.locator(`main[data-step="${step}"]`).waitFor();
const passStep = async (next: string) => {
  await page.getByRole('button', { name: 'Pass', exact: true }).click();
  await until(next);
  await page.waitForTimeout(DEAF);
};
const spent = async (key: string) => {
  const run = foldRun(await storedEventsOf(page, runId));
  const found = run?.steps.find(({ step }) => step.key === key)?.spent;
  if (!run || !found) throw new Error(`no ${key}`);
  return { ...found, total: run.total };
};
const moveWallClock = (ms: number) =>
  page.evaluate((by) => {
    const { dataset } = document.documentElement;
    dataset.shift = String(Number(dataset.shift ?? 0) + by);
  }, ms);

const HOUR = 3_600_000;

test.each([
  ['an hour back', -HOUR],
  ['a minute and a half on', 90_000],
])('the wall clock moved %s: bounds, never negative, never absurd, and marked as such', async (_what, by) => {
  await passStep('cone');
  await moveWallClock(by);
  await passStep('square-banjo');
  const cone = await spent('cone');
  expect(cone.exact).toBe(false);
  expect(cone.min).toBeGreaterThanOrEqual(0);
  expect(cone.min).toBeLessThan(60_000);
  expect(cone.max).toBeLessThan(Math.max(by, 0) + 60_000);
  expect(cone.total.max).toBeGreaterThanOrEqual(cone.max);
  expect(await page.locator('.time').textContent()).toMatch(/^\d:\d\d/);
  // The next step is in one piece again.
  await page.getByRole('button', { name: 'Pass', exact: true }).click();
  await until('lock-post');
  expect((await spent('square-banjo')).exact).toBe(true);
});

test('summer time ends between two taps: the hands of the clock go back, the time of the step does not', async () => {
  // 02:00 in London becomes 01:00 at 01:00 UTC on the last Sunday of October.
  const change = Date.UTC(2026, 9, 25, 1);
  await moveWallClock(change - 3_000 - (await page.evaluate(() => Date.now())));
  const offset = () => page.evaluate(() => new Date().getTimezoneOffset());
  expect(await offset()).toBe(-60);
  await passStep('cone');
  await page.waitForFunction((at) => Date.now() > at + 500, change);
  expect(await offset()).toBe(0);
  await passStep('square-banjo');
  const cone = await spent('cone');
  expect(cone.exact).toBe(true);
  expect(cone.max).toBeGreaterThan(0);
  expect(cone.max).toBeLessThan(60_000);
});

/** The app's own store, read by the page itself. */
const READ_EVENTS = `new Promise((resolve) => {
  const open = indexedDB.open('lidwright');
  open.onsuccess = () => {
    const all = open.result.transaction('events').objectStore('events').getAll();
    all.onsuccess = () => { open.result.close(); resolve(all.result); };
  };
})`;

test('put away and frozen by the system: no timer ran, and the time away is neither hurried nor slow', async () => {
  const chromium = await openRawChromium();
  try {
    const tab = await chromium.openTab(server.url);
    const until = async (expression: string) => {
      for (let i = 0; !(await tab.run<boolean>(`Boolean(${expression})`)); i += 1) {
        if (i > 200) throw new Error(`never: ${expression}`);
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
    };
    const press = async (name: string) => {
      const found = `[...document.querySelectorAll('button')].find((b) => b.textContent.trim() === '${name}')`;
      await until(found);
      await tab.run(`${found}.click()`);
    };
    const type = async (label: string, text: string) => {
      const input = `[...document.querySelectorAll('label')].find((l) => l.textContent.trim() === '${label}')?.control`;
      await until(input);
      await tab.run(
        `{ const i = ${input}; i.value = '${text}'; i.dispatchEvent(new Event('input', { bubbles: true })); }`,
      );
    };
    await press('New box');
    await type('Opening', '2');
    await type('Wood', 'Boxwood');
    await press('Plan it');
    await until(`document.querySelector('h1')?.textContent.startsWith('Box 1')`);
    await tab.run(`location.hash = '#/bench/set-up-recess'`);
    await press('Start the set-up');
    await until(`document.querySelector('main[data-step="isolate"]')`);
    await tab.run(`{
      const seen = { frozen: 0, ticks: 0 };
      globalThis.seen = seen;
      document.addEventListener('freeze', () => { seen.frozen += 1; });
      setInterval(() => { seen.ticks += 1; }, 100);
    }`);
    await until('seen.ticks > 2');
    await tab.hide();
    await until(`document.visibilityState === 'hidden'`);
    await tab.tell('Page.setWebLifecycleState', { state: 'frozen' });
    await until('seen.frozen === 1');
    const before = await tab.run<number>('seen.ticks');
    await new Promise((resolve) => setTimeout(resolve, 3_000));
    expect(await tab.run('document.visibilityState')).toBe('hidden');
    expect(await tab.run('seen.ticks')).toBe(before);
    await tab.tell('Page.setWebLifecycleState', { state: 'active' });
    await tab.show();
    await until(`document.visibilityState === 'visible'`);
    await press('Pass');
    await until(`document.querySelector('main[data-step="protect"]')`);
    const events = await tab.run<SetUpEvent[]>(READ_EVENTS);
    expect(events.map(({ kind }) => kind)).toEqual(['started', 'ticked']);
    // The page knows how long it was out of sight.
    expect((events[1]?.hid ?? 0) - (events[0]?.hid ?? 0)).toBeGreaterThanOrEqual(2_900);
    const { min, max } = foldRun(events)?.total ?? { min: -1, max: -1 };
    expect(min).toBeGreaterThan(0);
    expect(max).toBeGreaterThanOrEqual(min);
    expect(max).toBeLessThan(120_000);
  } finally {
    await chromium.close();
  }
});

test('the wake lock is held, said, lost with the page out of sight and asked for again on return', async () => {
  const opened = await openPhone();
  const tab = opened.page;
  await tab.addInitScript(() => {
    const locks: { released: boolean; drop: () => void }[] = [];
    Object.assign(globalThis, { locks });
    Object.defineProperty(navigator, 'wakeLock', {
      value: {
        request: async () => {
          const lock = Object.assign(new EventTarget(), {
            released: false,
            release: async () => {},
            drop: () => {},
          });
          lock.drop = () => {
            lock.released = true;
            lock.dispatchEvent(new Event('release'));
          };
          locks.push(lock);
          return lock;
        },
      },
    });
  });
  await tab.goto(server.url);
  await planBox(tab);
  await startSetUp(tab, server.url);
  await tab.getByRole('button', { name: /All steps/ }).click();
  await tab.getByText('The screen stays on.').waitFor();
  await tab.evaluate('locks.at(-1).drop()');
  await tab.getByText('The screen may sleep; touch it now and then.').waitFor();
  await tab.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await tab.getByText('The screen stays on.').waitFor();
  expect(await tab.evaluate('locks.length')).toBe(2);
  await opened.context.close();
});
