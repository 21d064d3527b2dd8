import type { BrowserContext, Page } from 'playwright-core';

/** The app has drawn its first screen. */
export const hasStarted = (page: Page) =>
  page.waitForFunction(() => 'started' in document.documentElement.dataset);

/** All of the app is in the cache and the service worker answers this page. */
export const isReadyForOffline = async (page: Page) => {
  await hasStarted(page);
  await page.waitForFunction(async () => {
    await navigator.serviceWorker.ready;
    return navigator.serviceWorker.controller?.state === 'activated';
  });
};

/** Collects what a user of the console would see in red, from every page of the context. */
export const watchForErrors = (context: BrowserContext): string[] => {
  const errors: string[] = [];
  context.on('console', (message) => {
    if (message.type() === 'error') errors.push(`${message.text()} (${message.location().url})`);
  });
  context.on('weberror', (error) => errors.push(String(error.error())));
  return errors;
};

/** Runs a self-contained function in the page with several arguments. */
export const callInPage = <A extends unknown[], R>(
  page: Page,
  work: (...args: A) => R,
  ...args: A
): Promise<Awaited<R>> => page.evaluate(`(${work})(...${JSON.stringify(args)})`) as Promise<Awaited<R>>;
