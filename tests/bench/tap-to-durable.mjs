// From a tap to its event on disk, and to the next step painted, at a quarter of this machine's speed, beside a bare put of the
// same event in the same page:
//   npx vite build && node tests/bench/tap-to-durable.mjs [rounds, 30 unless told]
// Prints medians with the middle half, and their ratio. Figures of a busy machine are figures of a busy machine: run it alone.
import { openPhone } from '../tools/browser.mjs';
import { DIST, serve } from '../tools/serve.mjs';

const rounds = Number(process.argv[2] ?? 30);
const server = await serve({ port: 5376, dir: process.env.DIST ?? DIST });
const { context, page } = await openPhone();

// Marks the tap, the pressed look, the end of the write and the frame that shows the next step, inside the page's own clock.
await page.addInitScript(() => {
  const seen = { tap: 0, pressed: 0, durable: 0, painted: 0 };
  Object.assign(globalThis, { seen });
  addEventListener(
    'click',
    () => {
      Object.assign(seen, { tap: performance.now(), pressed: 0, durable: 0, painted: 0 });
      const step = document.querySelector('main[data-step]')?.getAttribute('data-step');
      const watch = (now) => {
        if (!seen.pressed && document.querySelector('.set-up [data-pressed]')) seen.pressed = now;
        if (document.querySelector('main[data-step]')?.getAttribute('data-step') !== step) seen.painted = now;
        else requestAnimationFrame(watch);
      };
      requestAnimationFrame(watch);
    },
    true,
  );
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function (stores, mode, options) {
    const tx = transaction.call(this, stores, mode, options);
    if (mode === 'readwrite' && [stores].flat().includes('events'))
      tx.addEventListener('complete', () => {
        seen.durable ||= performance.now();
      });
    return tx;
  };
});

const barePut = () =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const open = indexedDB.open('bare', 1);
        open.onupgradeneeded = () =>
          open.result.createObjectStore('events', { keyPath: ['logId', 'runId', 'n', 'writer'] });
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const id = crypto.randomUUID();
          const event = {
            logId: 'mine',
            runId: id,
            n: 7,
            writer: id,
            at: Date.now(),
            mono: 12345,
            hid: 0,
            session: id,
          };
          const began = performance.now();
          const tx = open.result.transaction('events', 'readwrite', { durability: 'strict' });
          tx.objectStore('events').add({ ...event, kind: 'ticked', steps: ['isolate'], verdict: 'pass' });
          tx.oncomplete = () => {
            const took = performance.now() - began;
            open.result.close();
            resolve(took);
          };
        };
      }),
  );

const quantile = (list, q) =>
  [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(q * list.length))];
const say = (list) =>
  `${quantile(list, 0.5).toFixed(1)} ms (middle half ${quantile(list, 0.25).toFixed(1)} to ${quantile(list, 0.75).toFixed(1)})`;

try {
  await page.goto(server.url);
  await page.getByRole('button', { name: 'New box' }).tap();
  await page.getByRole('textbox', { name: 'Opening' }).fill('2');
  await page.getByRole('textbox', { name: 'Wood', exact: true }).fill('Boxwood');
  await page.getByRole('button', { name: 'Plan it' }).tap();
  await page.getByRole('heading', { name: 'Box 1' }).waitFor();
  await page.goto(`${server.url}#/bench/set-up-recess`);
  await page.getByRole('button', { name: 'Start the set-up' }).tap();
  await page.getByRole('button', { name: 'Pass', exact: true }).waitFor();

  const cdp = await context.newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const taken = { bare: [], durable: [], pressed: [], painted: [] };
  for (let round = 0; round < rounds; round += 1) {
    taken.bare.push(await barePut());
    const before = await page.locator('main[data-step]').getAttribute('data-step');
    // Forth and back, so that the set-up never ends; only the way forth is counted.
    await page.getByRole('button', { name: 'Pass', exact: true }).tap();
    await page.locator(`main[data-step]:not([data-step="${before}"])`).waitFor();
    await page.waitForFunction(() => globalThis.seen.painted > 0);
    const { tap, pressed, durable, painted } = await page.evaluate(() => globalThis.seen);
    taken.durable.push(durable - tap);
    if (pressed) taken.pressed.push(pressed - tap);
    taken.painted.push(painted - durable);
    await page.waitForTimeout(400);
    await page.getByRole('button', { name: 'Undo', exact: true }).tap();
    await page.locator(`main[data-step="${before}"]`).waitFor();
    await page.waitForTimeout(100);
  }
  console.log(`${rounds} taps at 4x throttle, Chromium ${context.browser()?.version() ?? ''}`);
  console.log(`bare put, strict, same size: ${say(taken.bare)}`);
  console.log(`tap to durable event:        ${say(taken.durable)}`);
  console.log(
    `ratio of the medians:        ${(quantile(taken.durable, 0.5) / quantile(taken.bare, 0.5)).toFixed(2)} (goal 1.5)`,
  );
  console.log(
    `tap to pressed look:         ${taken.pressed.length > 0 ? say(taken.pressed) : 'never seen'} in ${taken.pressed.length} of ${rounds}`,
  );
  console.log(`durable to next step shown:  ${say(taken.painted)}; two frames are 33.3 ms`);
} finally {
  await context.close();
  await server.stop();
}
