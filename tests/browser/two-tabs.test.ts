import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { planBox, startSetUp } from './at-the-lathe.ts';
import { runIdOf, serveBuilt, storedEventsOf } from './set-up-in-store.ts';

let server: Awaited<ReturnType<typeof serveBuilt>>;
let phone: Awaited<ReturnType<typeof openPhone>>;
let one: Page;
let other: Page;
let runId: string;

beforeAll(async () => {
  server = await serveBuilt(5386);
});
afterAll(() => server.stop());
beforeEach(async () => {
  phone = await openPhone();
  one = phone.page;
  await one.goto(server.url);
  await planBox(one);
  await startSetUp(one, server.url);
  runId = runIdOf(one);
  other = await phone.context.newPage();
});
afterEach(() => phone.context.close());

const stepOf = (page: Page) => page.locator('main[data-step]').getAttribute('data-step');
const openOther = async () => {
  await other.goto(one.url());
  await other.locator('main[data-step]').waitFor();
  expect(await stepOf(other)).toBe(await stepOf(one));
};
const passIn = (page: Page) => page.getByRole('button', { name: 'Pass', exact: true }).tap();
const ticksOfFirst = async (step: string | null) =>
  (await storedEventsOf(one, runId)).filter(
    (event) => event.kind === 'ticked' && event.steps.includes(step ?? ''),
  );

test('what one tab ticks stands in the other at once, and the next tick is the other’s to make', async () => {
  await openOther();
  const first = await stepOf(one);
  await passIn(one);
  await one.locator(`main:not([data-step="${first}"])`).waitFor();
  await other.locator(`main:not([data-step="${first}"])`).waitFor();
  expect(await stepOf(other)).toBe(await stepOf(one));
  const second = await stepOf(other);
  await passIn(other);
  await one.locator(`main:not([data-step="${second}"])`).waitFor();
  expect((await storedEventsOf(one, runId)).filter(({ kind }) => kind === 'ticked')).toHaveLength(2);
});

test('a tab that has heard nothing does not tick over the other: it says so and shows how it stands', async () => {
  // A browser without the channel, or a tab that was asleep.
  await other.addInitScript(() => Reflect.deleteProperty(globalThis, 'BroadcastChannel'));
  await openOther();
  const first = await stepOf(one);
  await passIn(one);
  await one.locator(`main:not([data-step="${first}"])`).waitFor();
  expect(await stepOf(other)).toBe(first);
  await other.getByRole('button', { name: 'Fail', exact: true }).tap();
  await other.getByText('Not saved: set-up step. Another tab got there first.').waitFor();
  expect(await stepOf(other)).toBe(await stepOf(one));
  expect(await ticksOfFirst(first)).toMatchObject([{ verdict: 'pass' }]);
});
