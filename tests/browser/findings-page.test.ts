import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { backupOfBoxes } from './findings-backup.ts';
import { hasStarted, watchForErrors } from './page-state.ts';
import { serveBuilt, storedRecords } from './set-up-in-store.ts';

/** With LIDWRIGHT_SLOW=1 the large log has 10,000 boxes; it takes minutes to put in. */
const LARGE = process.env.LIDWRIGHT_SLOW === '1' ? 10_000 : 720;
const COPIED = 120;
const MINUTES = 60_000;
/** At a quarter of this machine's speed, with other work on it. */
const LONGEST_TASK_MS = 1_500;

let server: Awaited<ReturnType<typeof serveBuilt>>;
beforeAll(async () => {
  server = await serveBuilt(5511);
});
afterAll(() => server.stop());

/** A phone with so many boxes in it, taken in from a backup by hand. */
const phoneWith = async (boxes: number) => {
  const phone = await openPhone({ serviceWorkers: 'block' });
  const { page } = phone;
  await page.addInitScript(() => {
    const tasks: number[] = [];
    const asked: string[] = [];
    Object.assign(globalThis, { tasks, asked });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ type: 'longtask' });
    const Plain = globalThis.Worker;
    globalThis.Worker = class extends Plain {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        asked.push(String(url));
      }
    };
  });
  await page.goto(`${server.url}#/shop/backups`);
  await hasStarted(page);
  if (boxes > 0) await takeIn(page, boxes);
  return phone;
};

const takeIn = async (page: Page, boxes: number): Promise<void> => {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Import a backup' }).click();
  await (await chooser).setFiles({
    name: 'workshop.zip',
    mimeType: 'application/zip',
    buffer: Buffer.from(backupOfBoxes(20260701, boxes)),
  });
  await page.getByRole('button', { name: 'Take this in' }).click({ timeout: 2 * MINUTES });
  await page.getByText('Taken in.').waitFor({ timeout: 2 * MINUTES });
};

const openFindings = async (page: Page): Promise<void> => {
  await page.getByRole('link', { name: 'Findings' }).click();
  await page.getByRole('heading', { name: 'Findings', level: 1 }).waitFor();
};
const lead = (page: Page) => page.getByRole('heading', { name: 'What to change tomorrow' });
const findingsWorkers = (page: Page): Promise<number> =>
  page.evaluate(() => (globalThis as unknown as { asked: string[] }).asked.length);

/** Nothing sticks out to the right, and no picture is without a name. */
const expectTidy = async (page: Page): Promise<void> => {
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  const nameless = page.locator('main svg[role="img"]:not([aria-label])');
  expect(await nameless.count()).toBe(0);
  expect(await page.locator('main').textContent()).not.toMatch(/NaN|undefined|null|Infinity/);
};

describe('the findings on a phone', () => {
  test('of no box say what starts them', async () => {
    const { context, page } = await phoneWith(0);
    const errors = watchForErrors(context);
    await openFindings(page);
    await page.getByText(/No box has been tried yet/).waitFor();
    await expectTidy(page);
    expect(errors).toEqual([]);
    await context.close();
  });

  test.each([3, 20])(
    'of %i boxes say there is nothing to change yet, and are not empty',
    async (boxes) => {
      const { context, page } = await phoneWith(boxes);
      const errors = watchForErrors(context);
      await openFindings(page);
      await lead(page).waitFor();
      await page.getByText(/^Nothing yet\./).waitFor();
      await page.getByRole('heading', { name: /^Your last boxes in / }).waitFor();
      await page.getByText('says nothing for or against them').waitFor();
      expect(await page.getByText(/^(Never missed|Missed) in .*it can show as: /).count()).toBeGreaterThan(3);
      await page.getByRole('heading', { name: 'Where set-up time goes' }).waitFor();
      await expectTidy(page);
      expect(errors).toEqual([]);
      await context.close();
    },
    3 * MINUTES,
  );

  test(
    'of 120 boxes name the steps worth keeping, with everything one tap away, and are reckoned once',
    async () => {
      const { context, page } = await phoneWith(120);
      const errors = watchForErrors(context);
      await openFindings(page);
      await lead(page).waitFor();
      expect(await page.getByText(/^Don’t miss this one: “/).count()).toBeGreaterThan(0);
      await page.getByText('They go together; the log cannot say why.').first().waitFor();
      await expectTidy(page);
      for (const details of await page.locator('main details > summary').all()) await details.click();
      await page
        .getByRole('row', { name: /^Exact test within wood group and pitch/ })
        .first()
        .waitFor();
      await expectTidy(page);

      const reckonings = await findingsWorkers(page);
      expect(reckonings).toBe(1);
      await page.getByRole('link', { name: 'Woods', exact: true }).click();
      await page.getByRole('heading', { name: 'In your log' }).waitFor();
      await page.getByRole('link', { name: 'Findings' }).click();
      await lead(page).waitFor();
      expect(await findingsWorkers(page)).toBe(reckonings);

      const rows = page.waitForEvent('download');
      await page.getByRole('button', { name: 'The rows as a table (CSV)' }).click();
      expect((await rows).suggestedFilename()).toBe('lidwright-joints.csv');
      expect(errors).toEqual([]);
      await context.close();
    },
    3 * MINUTES,
  );
});

/** The app opened anew, at the findings. */
const reopen = async (page: Page): Promise<void> => {
  await page.goto('about:blank');
  await page.goto(`${server.url}#/findings`);
  await lead(page).waitFor();
  await page.locator('main[aria-busy="false"]').waitFor();
};
const tried = async (page: Page): Promise<number> =>
  Number(/(\d+) boxes tried/.exec((await page.locator('.lead').textContent()) ?? '')?.[1]);
/** What the page keeps of the log for the findings, by kinds. */
const cacheOf = (page: Page): Promise<{ cache: string[]; stale: string[] }> =>
  page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await done(indexedDB.open('lidwright'));
    const whats = async (store: string) =>
      (await done<{ what: string }[]>(db.transaction(store).objectStore(store).getAll())).map(
        ({ what }) => what,
      );
    const there = { cache: await whats('cache'), stale: await whats('stale') };
    db.close();
    return there;
  });

/** Numbers of the boxes that have a trial fit. */
const boxesTried = async (page: Page): Promise<number[]> =>
  (await storedRecords(page, 'box')).flatMap(({ body }) =>
    body && body.trials.length > 0 ? [body.number] : [],
  );

describe('the cache of the findings', () => {
  test(
    'opens them at once, follows a trial fit and a merged backup, and goes with its log',
    async () => {
      const { context, page } = await phoneWith(20);
      const errors = watchForErrors(context);
      await reopen(page);
      await expect.poll(() => cacheOf(page)).toEqual({ cache: ['findings', 'runs'], stale: [] });
      const before = await tried(page);
      expect(before).toBeGreaterThan(15);

      await page.goto(`${server.url}#/bench`);
      await page.getByRole('button', { name: 'Like the last one' }).click();
      await page.waitForURL(/set-up-recess/);
      await page.goto(`${server.url}#/bench/trial`);
      await page.getByRole('button', { name: /^Good: runs on freely/ }).click();
      await expect.poll(() => boxesTried(page)).toContain(21);
      expect((await cacheOf(page)).stale).toEqual(['records']);
      await reopen(page);
      await expect.poll(() => tried(page)).toBe(before + 1);

      await page.goto(`${server.url}#/shop/backups`);
      await takeIn(page, 24);
      expect((await cacheOf(page)).stale).toContain('run');
      await reopen(page);
      await expect.poll(() => tried(page)).toBeGreaterThan(before + 1);
      await expect.poll(async () => (await cacheOf(page)).stale).toEqual([]);
      const merged = await tried(page);

      await page.goto(`${server.url}#/shop/backups`);
      await page.getByRole('button', { name: 'Open the demo' }).click();
      await page.getByRole('button', { name: 'Leave it' }).waitFor();
      await reopen(page);
      await expect
        .poll(async () => (await cacheOf(page)).cache)
        .toEqual(['findings', 'runs', 'findings', 'runs']);
      await page.getByRole('button', { name: 'Leave it' }).click();
      await expect.poll(async () => (await cacheOf(page)).cache).toEqual(['findings', 'runs']);
      await reopen(page);
      expect(await tried(page)).toBe(merged);
      expect(errors).toEqual([]);
      await context.close();
    },
    3 * MINUTES,
  );
});

/** Copies of the boxes there are, under new names and numbers, until there are so many. Runs in the page. */
const multiply = (page: Page, copies: number, boxes: number): Promise<void> =>
  page.evaluate(
    async ({ copies, boxes }) => {
      interface Named {
        kind: string;
        id: string;
        body: {
          number: number;
          startedOn: string;
          setUps: { runId: string }[];
          cuts: { runId: string | null }[];
        };
      }
      const done = <T>(request: IDBRequest<T>) =>
        new Promise<T>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      const db = await done(indexedDB.open('lidwright'));
      const all = <T>(store: string) => done<T[]>(db.transaction(store).objectStore(store).getAll());
      const records = (await all<Named>('records')).filter(({ kind }) => kind === 'box');
      const events = await all<{ runId: string; kind: string; boxId?: string; fromRun?: string | null }>(
        'events',
      );
      for (let copy = 1; copy < copies; copy += 1) {
        const named = (id: string) => `${id}-${copy}`;
        const tx = db.transaction(['records', 'events'], 'readwrite', { durability: 'relaxed' });
        for (const record of records) {
          const { body } = record;
          const day = new Date(Date.parse(body.startedOn) - copy * 61 * 86_400_000);
          tx.objectStore('records').put({
            ...record,
            id: named(record.id),
            body: {
              ...body,
              number: body.number + copy * boxes,
              startedOn: day.toISOString().slice(0, 10),
              setUps: body.setUps.map((ref) => ({ ...ref, runId: named(ref.runId) })),
              cuts: body.cuts.map((cut) => ({ ...cut, runId: cut.runId && named(cut.runId) })),
            },
          });
        }
        for (const event of events)
          tx.objectStore('events').put({
            ...event,
            runId: named(event.runId),
            ...(event.boxId ? { boxId: named(event.boxId) } : {}),
            ...(event.fromRun ? { fromRun: named(event.fromRun) } : {}),
          });
        await new Promise<void>((resolve, reject) => {
          tx.oncomplete = () => resolve();
          tx.onabort = () => reject(tx.error);
        });
      }
      db.close();
    },
    { copies, boxes },
  );

describe(`a log of ${LARGE} boxes on a phone four times slower`, () => {
  test(
    'shows how far it is, can be stopped, and never holds up the page for long',
    async () => {
      const { context, page } = await phoneWith(COPIED);
      await multiply(page, Math.ceil(LARGE / COPIED), COPIED);
      const cdp = await context.newCDPSession(page);
      await cdp.send('Emulation.setCPUThrottlingRate', { rate: 4 });
      await page.evaluate(() => {
        (globalThis as unknown as { tasks: number[] }).tasks.length = 0;
      });
      await openFindings(page);
      await page
        .getByRole('status')
        .getByText(/^Reading your log: \d+ %$/)
        .waitFor();
      await page.getByRole('button', { name: 'Stop' }).click();
      await page.getByText('Stopped. Nothing was changed.').waitFor();

      const from = performance.now();
      await page.getByRole('button', { name: 'Read it now' }).click();
      await lead(page).waitFor({ timeout: 10 * MINUTES });
      const seconds = (performance.now() - from) / 1000;
      await page.getByRole('heading', { name: /^Your last boxes in / }).waitFor();
      const tasks = await page.evaluate(() => (globalThis as unknown as { tasks: number[] }).tasks);
      console.log(
        `${LARGE} boxes: found after ${seconds.toFixed(1)} s, longest task ${Math.max(0, ...tasks).toFixed(0)} ms`,
      );
      expect(Math.max(0, ...tasks)).toBeLessThan(LONGEST_TASK_MS);
      await expectTidy(page);
      await context.close();
    },
    20 * MINUTES,
  );
});
