import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { inventedExperiment } from '../domain/experiment/invented-experiment.ts';
import { openPhone, PHONE } from '../tools/browser.mjs';
import { passStep, planBox, stepNow } from './at-the-lathe.ts';
import { backupOf, backupOfBoxes, stored } from './findings-backup.ts';
import { hasStarted, watchForErrors } from './page-state.ts';
import { serveBuilt, storedRecords } from './set-up-in-store.ts';
import { faultsOnScreen } from './set-up-measure.ts';

const BOXES = 20;

let server: Awaited<ReturnType<typeof serveBuilt>>;
beforeAll(async () => {
  server = await serveBuilt(5631);
});
afterAll(() => server.stop());

const takeIn = async (page: Page, backup: Uint8Array): Promise<void> => {
  await page.goto('about:blank');
  await page.goto(`${server.url}#/shop/backups`);
  await hasStarted(page);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Import a backup' }).click();
  await (await chooser).setFiles({
    name: 'log.zip',
    mimeType: 'application/zip',
    buffer: Buffer.from(backup),
  });
  await page.getByRole('button', { name: 'Take this in' }).click();
  await page.getByText('Taken in.').waitFor();
};

const openExperiment = async (page: Page): Promise<void> => {
  await page.getByRole('link', { name: 'Findings' }).click();
  await page.getByRole('heading', { name: 'Test a step' }).waitFor({ timeout: 30_000 });
};

/** The experiment as it lies in the store. */
const storedExperiment = async (page: Page) => {
  const [experiment] = await storedRecords(page, 'experiment');
  if (!experiment?.body) throw new Error('no experiment');
  return { ...experiment, body: experiment.body };
};

test('an experiment by a reading: planned, told at the Bench, under way, and finished', {
  timeout: 180_000,
}, async () => {
  const { context, page } = await openPhone({ serviceWorkers: 'block' });
  const errors = watchForErrors(context);
  await page.goto(server.url);
  await hasStarted(page);
  await planBox(page);
  await takeIn(page, backupOfBoxes(20260701, 3));

  await openExperiment(page);
  await page.getByRole('button', { name: 'Plan a test' }).tap();
  await page.getByLabel('Which step?').selectOption('square-banjo');
  const reading = page.getByRole('radio', { name: /^The reading at “Back off the cone/ });
  expect(await reading.isChecked()).toBe(true);
  await page.getByLabel(/^How many boxes/).fill(String(BOXES));
  await page.getByText(/^With 20 boxes: \d\d chances in 100 of a clear answer/).waitFor();
  await page.getByRole('button', { name: 'Assign boxes' }).tap();
  await page.getByText(`0 of ${BOXES} boxes; first look at ${BOXES / 2}.`).waitFor();
  const drawn = await storedExperiment(page);
  expect(drawn.body.measure).toMatchObject({ kind: 'reading', step: 'gap', of: 'angle' });

  await page.goto(`${server.url}#/bench/set-up-recess`);
  const asks = drawn.body.lots[0] === 'with' ? 'do' : 'skip';
  await page.getByText(new RegExp(`^Test: ${asks} “Banjo against the square`)).waitFor();
  await page.getByRole('button', { name: 'Start the set-up', exact: true }).tap();
  await page.getByRole('button', { name: 'Pass', exact: true }).waitFor();
  const begun = await storedExperiment(page);
  expect(begun.body.lots).toEqual(drawn.body.lots);
  const [mine] = begun.body.boxes;
  expect(begun.body.boxes).toHaveLength(1);

  // At the step itself the lot is told again; one tap for several steps ends before it where it is to be skipped.
  for (let step = await stepNow(page); step !== 'square-banjo'; step = await stepNow(page)) {
    if (step === 'board')
      await page.getByRole('button', { name: asks === 'skip' ? '2 steps done' : '3 steps done' }).waitFor();
    await passStep(page);
  }
  await page.getByText(asks === 'do' ? 'Test: do it.' : 'Test: skip it.').waitFor();
  for (const { width, height } of [PHONE.viewport, { width: 320, height: 640 }]) {
    await page.setViewportSize({ width, height });
    expect(await faultsOnScreen(page)).toEqual([]);
  }
  await page.setViewportSize(PHONE.viewport);

  // The other boxes are made elsewhere, under the lots drawn here; the first one is given up.
  const { boxes } = inventedExperiment({ lots: drawn.body.lots, effect: 4, missingOneIn: 1e9 });
  const others = boxes.slice(1);
  const first = boxes[0]?.box;
  const plan = { ...begun.body, boxes: [String(mine), ...others.map(({ id }) => id)] };
  const experiment = stored('experiment', begun.id, plan, begun.rev + 1);
  const [half, end] = [others.slice(0, BOXES / 2 - 1), others];
  if (!first) throw new Error('no first box');
  const ofThem = (these: typeof others) => these.map(({ id, box }) => stored('box', id, box));
  const eventsOf = (these: typeof others) => these.flatMap(({ events }) => events);
  await takeIn(
    page,
    backupOf(
      [
        stored('experiment', begun.id, { ...plan, boxes: plan.boxes.slice(0, 10) }, begun.rev + 1),
        ...ofThem(half),
      ],
      eventsOf(half),
    ),
  );
  await openExperiment(page);
  await page.getByText('The look waits for 1 box with a lot and not finished').waitFor();
  expect(await page.locator('.experiment').textContent()).not.toMatch(/clear answer\.|Half way:/);

  await takeIn(
    page,
    backupOf(
      [
        { ...experiment, rev: begun.rev + 2 },
        ...ofThem(end),
        stored('box', String(mine), { ...first, setUps: [] }, 99),
      ],
      eventsOf(end),
    ),
  );
  await openExperiment(page);
  await page.getByText('At the end: a clear answer.').waitFor();
  await page.getByText(/^The first reading was .* less with the step, over a length of /).waitFor();
  await page.getByText(/^Not measured: (1 with the step, 0|0 with the step, 1) without/).waitFor();
  await page.locator('.experiment summary').tap();
  await page.getByText(/^z -\d\.\d\d, clear from 1\.98 on/).waitFor();
  expect(await page.locator('.experiment').textContent()).not.toMatch(/NaN|undefined|null|Infinity/);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.getByRole('button', { name: 'Put the result away' }).tap();
  await page.getByRole('heading', { name: 'Earlier tests' }).waitFor();
  await page.getByRole('button', { name: 'Plan a test' }).waitFor();
  expect(errors).toEqual([]);
  await context.close();
});
