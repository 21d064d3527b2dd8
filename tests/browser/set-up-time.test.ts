import type { CDPSession, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { foldRun } from '../../src/domain/setup/fold.ts';
import { openPhone } from '../tools/browser.mjs';
import { planBox, startSetUp } from './at-the-lathe.ts';
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
  ['over the end of summer time, which moves no epoch clock, and a correction of 90 s', 90_000],
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

/** Raw: Playwright's own page stays visible, whatever is done to it. */
const freeze = async (cdp: CDPSession) => {
  await cdp.send('Page.setWebLifecycleState', { state: 'frozen' });
};

test('a page hidden and frozen by the system: no timer ran, and the time away is not counted as hurried or slow', async () => {
  await passStep('cone');
  await page.evaluate(() => {
    const seen = { frozen: 0, ticks: 0 };
    Object.assign(globalThis, { seen });
    document.addEventListener('freeze', () => {
      seen.frozen += 1;
    });
    setInterval(() => {
      seen.ticks += 1;
    }, 100);
  });
  const cdp = await phone.context.newCDPSession(page);
  // Another tab to the front, as the system does when the phone is put away.
  await freeze(cdp);
  const read = async () =>
    (
      await cdp.send('Runtime.evaluate', {
        expression: 'JSON.stringify({ ...seen, state: document.visibilityState })',
      })
    ).result.value as string;
  const first = JSON.parse(await read());
  await new Promise((resolve) => setTimeout(resolve, 1500));
  const second = JSON.parse(await read());
  expect(second.frozen).toBe(1);
  expect(second.state).toBe('hidden');
  expect(second.ticks).toBe(first.ticks);
  await cdp.send('Page.setWebLifecycleState', { state: 'active' });
  await passStep('square-banjo');
  const cone = await spent('cone');
  expect(cone.min).toBeGreaterThanOrEqual(0);
  expect(cone.max).toBeLessThan(60_000);
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
