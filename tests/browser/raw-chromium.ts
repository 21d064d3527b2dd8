import { spawn } from 'node:child_process';
import { once } from 'node:events';
import type { Readable, Writable } from 'node:stream';
import { chromiumOptions, freshProfile } from '../tools/browser.mjs';

type Answer = {
  readonly id?: number;
  readonly result?: unknown;
  readonly error?: { readonly message: string };
};

/** A Chromium spoken to over its own pipe: under Playwright every page is held visible, so none can be put out of sight. */
export const openRawChromium = async () => {
  const profile = freshProfile();
  const { executablePath, args, env } = await chromiumOptions(profile);
  const browser = spawn(
    executablePath,
    [...args, '--headless=new', `--user-data-dir=${profile}`, '--remote-debugging-pipe', 'about:blank'],
    { stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'], env },
  );
  const [, , , toBrowser, fromBrowser] = browser.stdio as unknown as [null, null, null, Writable, Readable];
  const waiting = new Map<number, (answer: Answer) => void>();
  let said = '';
  fromBrowser.on('data', (chunk) => {
    const parts = (said + chunk).split('\0');
    said = parts.pop() ?? '';
    for (const part of parts) {
      const answer = JSON.parse(part) as Answer;
      waiting.get(answer.id ?? -1)?.(answer);
    }
  });
  let last = 0;
  const send = <R>(method: string, params: object = {}, sessionId?: string): Promise<R> =>
    new Promise((resolve, reject) => {
      last += 1;
      waiting.set(last, ({ result, error }) =>
        error ? reject(new Error(`${method}: ${error.message}`)) : resolve(result as R),
      );
      toBrowser.write(
        `${JSON.stringify({ id: last, method, params, ...(sessionId ? { sessionId } : {}) })}\0`,
      );
    });

  /** A tab, how to run an expression in it, and how to put its window out of sight: minimised, which every Chromium obeys. */
  const openTab = async (url: string) => {
    const { targetId } = await send<{ targetId: string }>('Target.createTarget', { url });
    const { sessionId } = await send<{ sessionId: string }>('Target.attachToTarget', {
      targetId,
      flatten: true,
    });
    const tell = <R>(method: string, params: object = {}) => send<R>(method, params, sessionId);
    const run = async <R>(expression: string): Promise<R> => {
      const { result, exceptionDetails } = await tell<{
        result: { value: R };
        exceptionDetails?: { exception?: { description?: string } };
      }>('Runtime.evaluate', { expression, awaitPromise: true, returnByValue: true });
      if (exceptionDetails) throw new Error(exceptionDetails.exception?.description);
      return result.value;
    };
    const put = async (windowState: 'minimized' | 'normal') => {
      const { windowId } = await send<{ windowId: number }>('Browser.getWindowForTarget', { targetId });
      await send('Browser.setWindowBounds', { windowId, bounds: { windowState } });
    };
    return { tell, run, hide: () => put('minimized'), show: () => put('normal') };
  };
  return {
    openTab,
    close: async () => {
      const ended = once(browser, 'exit');
      browser.kill();
      await ended;
    },
  };
};
