// A WebKit to test in, driven by plain WebDriver: the nearest thing to Safari that a Linux machine has.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { tempFolder, undoLater } from './opened.mjs';

/** How WebDriver names an element (W3C WebDriver, section 11). */
const ELEMENT = 'element-6066-11e4-a52e-4f735466cecf';
const DRIVER = '/usr/bin/WebKitWebDriver';
const BROWSER = fileURLToPath(new URL('./webkit-persistent.py', import.meta.url));
/** What Safari has on and GTK has off. */
const FEATURES = 'StorageAPI,StorageAPIEstimate,FileSystem,WebShare,WebShareFileAPI';

const whatIsMissing = () => {
  for (const file of [DRIVER, '/usr/bin/Xvfb', '/usr/bin/python3']) if (!existsSync(file)) return file;
  const { status } = spawnSync('/usr/bin/python3', ['-c', "import gi; gi.require_version('WebKit2', '4.1')"]);
  return status === 0 ? null : 'WebKit2 4.1 for Python';
};

const start = (command, args, env) => {
  const child = spawn(command, args, { stdio: 'ignore', env: { ...process.env, ...env } });
  undoLater(async () => {
    child.kill('SIGTERM');
    for (let i = 0; i < 20 && child.exitCode === null && child.signalCode === null; i += 1) await wait(100);
    child.kill('SIGKILL');
  });
};

/** A display and a driver, which end with the test; sessions come and go on them. */
export const startWebkit = async ({ port = 5336, display = ':97' } = {}) => {
  const missing = whatIsMissing();
  if (missing) throw new Error(`no WebKit is installed: ${missing} is missing`);
  const TMPDIR = tempFolder('webkit');
  start('/usr/bin/Xvfb', [display, '-screen', '0', '900x1200x24']);
  // Without LANG navigator.language is "C", which Intl refuses.
  start(DRIVER, [`--port=${port}`], { DISPLAY: display, LANG: 'en_US.UTF-8', TMPDIR });
  const base = `http://127.0.0.1:${port}`;

  const call = async (method, path, body) => {
    const answer = await fetch(base + path, {
      method,
      signal: AbortSignal.timeout(60_000),
      headers: { 'content-type': 'application/json' },
      ...(method === 'POST' ? { body: JSON.stringify(body ?? {}) } : {}),
    });
    const { value } = await answer.json();
    if (value?.error) throw new Error(`${method} ${path}: ${value.error}: ${value.message}`);
    return value;
  };

  for (let i = 0; ; i += 1) {
    try {
      if ((await call('GET', '/status')).ready) break;
    } catch (error) {
      if (i > 50) throw error;
    }
    await wait(200);
  }

  const openSession = async (profile) => {
    const { sessionId } = await call('POST', '/session', {
      capabilities: {
        alwaysMatch: {
          browserName: 'webkit-persistent',
          'webkitgtk:browserOptions': {
            binary: BROWSER,
            args: [`--profile=${profile}`, `--features=${FEATURES}`],
          },
        },
      },
    });
    const session = `/session/${sessionId}`;
    await call('POST', `${session}/timeouts`, { script: 30_000, pageLoad: 30_000, implicit: 0 });

    /** Runs an async function in the page. */
    const run = async (work, ...args) => {
      const answer = await call('POST', `${session}/execute/async`, {
        script: `const done = arguments[arguments.length - 1];
          (async () => (${work})(...[...arguments].slice(0, -1)))().then((value) => done({ value }), (error) => done({ error: String(error) }));`,
        args,
      });
      if (answer?.error) throw new Error(answer.error);
      return answer?.value;
    };
    const until = async (work, ...args) => {
      for (let i = 0; ; i += 1) {
        const value = await run(work, ...args).catch((error) =>
          i > 200 ? Promise.reject(error) : undefined,
        );
        if (value) return value;
        if (i > 200) throw new Error(`waited in vain for ${work}`);
        await wait(100);
      }
    };
    /** The element that a function in the page finds, once it is there. */
    const find = async (xpath) => {
      for (let i = 0; ; i += 1) {
        try {
          return Object.values(await call('POST', `${session}/element`, { using: 'xpath', value: xpath }))[0];
        } catch (error) {
          if (i > 100) throw error;
          await wait(100);
        }
      }
    };
    return {
      go: (url) => call('POST', `${session}/url`, { url }),
      run,
      until,
      press: async (xpath) => {
        const element = await find(xpath);
        // WebDriver scrolls no further than to the edge, where a bar may lie over it.
        await run((found) => found.scrollIntoView({ block: 'center' }), { [ELEMENT]: element });
        await call('POST', `${session}/element/${element}/click`);
      },
      type: async (xpath, text) => call('POST', `${session}/element/${await find(xpath)}/value`, { text }),
      close: () => call('DELETE', session),
    };
  };

  return { openSession };
};
