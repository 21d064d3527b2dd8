import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { DEFAULT_PROCEDURES } from '../../src/domain/setup/default-procedures.ts';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { openPhone } from '../tools/browser.mjs';
import { planBox, startSetUp } from './at-the-lathe.ts';
import { openRun, pass, plantRun, runIdOf, serveBuilt, storedEventsOf } from './set-up-in-store.ts';

const STEPS = DEFAULT_PROCEDURES['board-and-cone'].steps.filter(({ onlyWithGroove }) => !onlyWithGroove);
/** Longer than the time for which a verdict ignores a second tap. */
const DEAF = 370;

let server: Awaited<ReturnType<typeof serveBuilt>>;
let phone: Awaited<ReturnType<typeof openPhone>>;
let page: Page;
let runId: string;

beforeAll(async () => {
  server = await serveBuilt(5372);
});
afterAll(() => server.stop());
beforeEach(async () => {
  phone = await openPhone();
  page = phone.page;
  // Every tap is counted where the browser itself hands it over, and only trusted ones.
  await page.addInitScript(() => {
    addEventListener(
      'click',
      (event) => {
        const { dataset } = document.documentElement;
        if (event.isTrusted) dataset.taps = String(Number(dataset.taps ?? 0) + 1);
      },
      true,
    );
  });
  await page.goto(server.url);
  await planBox(page);
  await startSetUp(page, server.url);
  runId = runIdOf(page);
});
afterEach(() => phone.context.close());

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });
const stepNow = () => page.locator('main[data-step]').getAttribute('data-step');
const until = (step: string) => page.locator(`main[data-step="${step}"]`).waitFor();
const ticks = async () =>
  (await storedEventsOf(page, runId)).filter(
    (e): e is SetUpEvent & { kind: 'ticked' } => e.kind === 'ticked',
  );
const taps = () => page.evaluate(() => Number(document.documentElement.dataset.taps ?? 0));

test('by touch: a tap a hold point, a tap a stretch between, and not one more', async () => {
  const before = await taps();
  let wanted = 0;
  for (let i = 0; i < STEPS.length; ) {
    const step = STEPS[i];
    if (!step) break;
    await until(step.key);
    const stretch = STEPS.slice(i).findIndex(({ hold }) => hold);
    const all = button(/^\d steps done$/);
    if (!step.hold && (await all.count()) > 0) {
      await all.tap();
      i += stretch;
    } else {
      await button('Pass').tap();
      i += 1;
    }
    wanted += 1;
    await page.waitForTimeout(DEAF);
  }
  await page.getByRole('heading', { name: 'Set. Nothing more to check.' }).waitFor();
  expect(await taps()).toBe(before + wanted);
  const holds = STEPS.filter(({ hold }) => hold).length;
  const stretches = STEPS.filter(({ hold }, i) => !hold && STEPS[i - 1]?.hold).length;
  expect(wanted).toBeLessThanOrEqual(holds + stretches);
  expect((await ticks()).flatMap(({ steps }) => steps)).toEqual(STEPS.map(({ key }) => key));
});

test('by keyboard alone: Enter passes a step; a hold point takes Tab first, so no pedal passes one', async () => {
  for (const { key, hold } of STEPS) {
    await until(key);
    await page.waitForTimeout(DEAF);
    if (hold) {
      await page.keyboard.press('Enter');
      await page.keyboard.press('Space');
      expect(await stepNow()).toBe(key);
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press(hold ? 'Space' : 'Enter');
    await page.locator(`main:not([data-step="${key}"])`).waitFor();
  }
  await page.getByRole('heading', { name: 'Set. Nothing more to check.' }).waitFor();
  expect(await ticks()).toHaveLength(STEPS.length);
  expect(await taps()).toBeGreaterThan(0);
});

test('by roles and names: the sentence, how far it is, the acts, what they did', async () => {
  for (const { key, sentence } of STEPS.slice(0, 3)) {
    await until(key);
    await page.getByRole('heading', { level: 1, name: sentence }).waitFor();
    await button(new RegExp(`^All steps\\..*Now: ${sentence.slice(0, 12)}`)).waitFor();
    for (const name of ['Undo', 'Pass', 'Fail', 'Skip', 'Something moved'])
      expect(await button(name).count()).toBe(1);
    await button(/^Why\? /).waitFor();
    await button('Pass').click();
    await page.waitForTimeout(DEAF);
  }
  await button('Undo').click();
  await until('board');
  expect((await storedEventsOf(page, runId)).at(-1)?.kind).toBe('undone');
});

test('a trembling thumb: two taps within a third of a second are one, and Undo is never deaf', async () => {
  const place = await button('Pass').boundingBox();
  if (!place) throw new Error('Pass is not on screen');
  const [x, y] = [place.x + place.width / 2, place.y + place.height / 2];
  await Promise.all([page.touchscreen.tap(x, y), page.touchscreen.tap(x, y)]);
  await until('protect');
  await page.waitForTimeout(DEAF);
  expect(await ticks()).toHaveLength(1);
  await button('Pass').tap();
  await until('board');
  await button('Undo').tap();
  await until('protect');
});

test('a verdict looks pressed while a finger is on it, and a finger that slides off says nothing', async () => {
  const look = () => button('Pass').evaluate((e) => getComputedStyle(e).outlineStyle);
  const finger = await phone.context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...touchPoints: { x: number; y: number }[]) =>
    finger.send('Input.dispatchTouchEvent', { type, touchPoints });
  const at = await button('Pass').boundingBox();
  if (!at) throw new Error('no Pass');
  const [x, y] = [at.x + at.width / 2, at.y + at.height / 2];
  expect(await look()).toBe('none');
  await touch('touchStart', { x, y });
  await expect.poll(look).toBe('solid');
  await touch('touchMove', { x, y: y - 200 });
  await touch('touchEnd');
  await expect.poll(look).toBe('none');
  expect(await ticks()).toEqual([]);
});

test('letters: verdicts on the step, nothing in a field, nothing when held down', async () => {
  await plantRun(
    page,
    runId,
    STEPS.slice(0, 6).map(({ key }) => pass(key)),
  );
  await openRun(page, server.url, runId);
  await until('gap');
  await button('Reading').click();
  const field = page.getByRole('textbox', { name: 'Over a length of' });
  await field.click();
  await page.keyboard.type('fsm');
  await page.keyboard.press('Backspace');
  expect(await field.inputValue()).toBe('fs');
  await button('Without').click();
  await page.keyboard.down('s');
  await page.keyboard.down('s');
  await page.keyboard.down('s');
  await page.waitForTimeout(DEAF * 2);
  await page.keyboard.up('s');
  expect((await ticks()).map(({ verdict }) => verdict).filter((v) => v !== 'pass')).toEqual(['skip']);
  await page.keyboard.press('m');
  await page.getByRole('heading', { name: 'Stop. Off at the wall.' }).waitFor();
});

test('a key held down on Pass passes one step, not a run of them', async () => {
  await plantRun(page, runId, [pass('isolate'), pass('protect')]);
  await openRun(page, server.url, runId);
  await until('board');
  await page.keyboard.down('Enter');
  for (let i = 0; i < 12; i += 1) {
    await page.waitForTimeout(100);
    await page.keyboard.down('Enter');
  }
  await page.keyboard.up('Enter');
  expect(await stepNow()).toBe('cone');
});
