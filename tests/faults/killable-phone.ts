import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { chromium } from 'playwright-core';
import { chromiumOptions, PHONE } from '../tools/browser.mjs';
import { undoLater } from '../tools/opened.mjs';

/**
 * A Chromium that the test itself has spawned, with all its processes in one group, so that it can be ended as a flat
 * battery would: SIGKILL to every one of them, no goodbye.
 */
export const openKillablePhone = async (profile: string) => {
  const { executablePath, args, env } = await chromiumOptions(profile);
  const browser = spawn(
    executablePath,
    [
      ...args,
      '--headless=new',
      `--user-data-dir=${profile}`,
      '--remote-debugging-port=0',
      `--window-size=${PHONE.viewport.width},${PHONE.viewport.height}`,
      'about:blank',
    ],
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'], env },
  );
  const killAll = () => process.kill(-(browser.pid as number), 'SIGKILL');
  undoLater(() => {
    if (browser.exitCode === null && browser.signalCode === null) killAll();
  });
  const address = await new Promise<string>((resolve, reject) => {
    let said = '';
    browser.stderr.on('data', (chunk) => {
      said += chunk;
      const found = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (found) resolve(found);
    });
    browser.once('exit', (code) => reject(new Error(`Chromium ended at once (${code}): ${said}`)));
  });
  const connected = await chromium.connectOverCDP(address);
  const [context] = connected.contexts();
  const page = context?.pages()[0];
  if (!page) throw new Error('Chromium came without a page');
  return {
    page,
    /** Resolves to the signal that ended it. */
    kill: async (): Promise<NodeJS.Signals | null> => {
      const ended = once(browser, 'exit');
      killAll();
      const [, signal] = await ended;
      await connected.close().catch(() => {});
      return signal;
    },
  };
};
