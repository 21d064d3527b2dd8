import type { Page } from 'playwright-core';
import { hasStarted } from './page-state.ts';

/** By finger where there is touch (Firefox and WebKit are driven without). */
const press = async (page: Page, name: string): Promise<void> => {
  const button = page.getByRole('button', { name, exact: true });
  const hasTouch = await page.evaluate(() => navigator.maxTouchPoints > 0);
  await (hasTouch ? button.tap() : button.click());
};

/** Plans a box of boxwood with a 2 in opening. */
export const planBox = async (page: Page): Promise<void> => {
  await press(page, 'New box');
  await page.getByRole('textbox', { name: 'Opening' }).fill('2');
  await page.getByRole('textbox', { name: 'Wood', exact: true }).fill('Boxwood');
  await press(page, 'Plan it');
  await page.getByRole('heading', { name: 'Box 1' }).waitFor();
};

/** Opens the app on the recess's set-up of the box on the lathe and starts it. */
export const startSetUp = async (page: Page, url: string): Promise<void> => {
  await page.goto(`${url}#/bench/set-up-recess`);
  await hasStarted(page);
  await press(page, 'Start the set-up');
  await page.getByRole('button', { name: 'Pass', exact: true }).waitFor();
};

export const stepNow = (page: Page): Promise<string | null> =>
  page.locator('main[data-step]').getAttribute('data-step');

/** Passes the step in hand; resolves once the next one stands there, which is once the tick is on disk. */
export const passStep = async (page: Page): Promise<string> => {
  const step = await stepNow(page);
  if (step === null) throw new Error('no step is in hand');
  await press(page, 'Pass');
  await page.locator(`main:not([data-step="${step}"])`).waitFor();
  // A second tap within the same tremble is not taken.
  await page.waitForTimeout(400);
  return step;
};
