// From a tap to its event on disk, and to the next step painted, at a quarter of this machine's speed, beside a bare put of the
// same event in the same page:
//   npx vite build && node tests/bench/tap-to-durable.mjs [rounds, 30 unless told]
// Prints medians with the middle half, and their ratio. Figures of a busy machine are figures of a busy machine: run it alone.
import { openPhone } from '../tools/browser.mjs';
import { DIST, serve } from '../tools/serve.mjs';

const rounds = Number(process.argv[2] ?? 30);
const server = await serve({ port: 5376, dir: process.env.DIST ?? DIST });
const { context, page } = await openPhone();
const cdp = await context.newCDPSession(page);

// Marks the tap, the frame with the pressed look, the end of the write and the frame that shows the next step, by the page's clock.
await page.addInitScript(() => {
  const seen = { tap: 0, frames: 0, pressed: 0, durable: 0, durableAt: 0, painted: 0 };
  Object.assign(globalThis, { seen });
  let step;
  addEventListener(
    'click',
    () => {
      Object.assign(seen, { tap: performance.now(), frames: 0, pressed: 0, durable: 0, painted: 0 });
      step = document.querySelector('main[data-step]')?.getAttribute('data-step');
    },
    true,
  );
  // Asked for after the app's own frame, so that it sees what that frame is about to paint.
  const watch = () => {
    seen.frames += 1;
    if (document.querySelector('.set-up [data-pressed]')) seen.pressed ||= seen.frames;
    if (document.querySelector('main[data-step]')?.getAttribute('data-step') !== step)
      seen.painted = performance.now();
    else requestAnimationFrame(watch);
  };
  addEventListener('click', () => requestAnimationFrame(watch));
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function (stores, mode, options) {
    const tx = transaction.call(this, stores, mode, options);
    if (mode === 'readwrite' && [stores].flat().includes('events'))
      tx.addEventListener('complete', () => {
        if (seen.durable) return;
        seen.durable = performance.now();
        seen.durableAt = seen.frames;
      });
    return tx;
  };
});

/** How long a finger stays on the glass, as invented as any figure for it: a touch without length is nobody's. */
const TOUCH_MS = 80;
const touch = async (x, y) => {
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  await page.waitForTimeout(TOUCH_MS);
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
};

// The same event, put by nothing but the browser's own calls; into a database of its own, opened beforehand.
const openBare = () =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const open = indexedDB.open('bare', 1);
        open.onupgradeneeded = () =>
          open.result.createObjectStore('events', { keyPath: ['logId', 'runId', 'n', 'writer'] });
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          globalThis.barePut = () =>
            new Promise((done) => {
              const id = crypto.randomUUID();
              const began = performance.now();
              const tx = open.result.transaction('events', 'readwrite', { durability: 'strict' });
              const stamp = { at: Date.now(), mono: 12345, hid: 0, session: id };
              const key = { logId: 'mine', runId: id, n: 7, writer: id };
              tx.objectStore('events').add({
                ...stamp,
                ...key,
                kind: 'ticked',
                steps: ['isolate'],
                verdict: 'pass',
              });
              tx.oncomplete = () => done(performance.now() - began);
            });
          resolve();
        };
      }),
  );
const barePut = () => page.evaluate(() => globalThis.barePut());

// The same put from the tap of a button that does nothing else: what the browser itself adds between a touch and an answer.
const tapped = async () => {
  await page.evaluate(() => {
    const button = document.createElement('button');
    button.textContent = 'Bare';
    button.style = 'position: fixed; left: 0; top: 0; width: 64px; height: 64px; z-index: 9';
    button.onclick = (event) => {
      event.stopImmediatePropagation();
      globalThis.bareTap = 0;
      const began = performance.now();
      globalThis.barePut().then(() => {
        globalThis.bareTap = performance.now() - began;
      });
    };
    document.body.append(button);
  });
  await page.waitForTimeout(200);
  await touch(32, 32);
  await page.waitForTimeout(400);
  return page.evaluate(() => {
    document.body.lastElementChild.remove();
    return globalThis.bareTap;
  });
};

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

  await openBare();
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const taken = { bare: [], tapped: [], durable: [], pressed: [], painted: [], frames: [] };
  for (let round = 0; round < rounds; round += 1) {
    taken.bare.push(await barePut());
    taken.tapped.push(await tapped());
    const before = await page.locator('main[data-step]').getAttribute('data-step');
    const pass = await page.getByRole('button', { name: 'Pass', exact: true }).boundingBox();
    await page.waitForTimeout(100);
    // Forth and back, so that the set-up never ends; only the way forth is counted. A bare touch, and nothing asked of the page
    // until it is over: what drives the browser would run in the same slowed thread.
    await touch(pass.x + pass.width / 2, pass.y + pass.height / 2);
    await page.waitForTimeout(400);
    const { tap, frames, pressed, durable, durableAt, painted } = await page.evaluate(() => globalThis.seen);
    taken.durable.push(durable - tap);
    taken.pressed.push(pressed || (frames === 1 ? 'done' : 'never'));
    if (!painted) throw new Error('the next step did not come within 400 ms');
    taken.painted.push(painted - durable);
    taken.frames.push(frames - durableAt);
    await page.getByRole('button', { name: 'Undo', exact: true }).tap();
    await page.locator(`main[data-step="${before}"]`).waitFor();
    await page.waitForTimeout(100);
  }
  console.log(
    `${rounds} taps of ${TOUCH_MS} ms at 4x throttle, Chromium ${context.browser()?.version() ?? ''}`,
  );
  console.log(`bare put, strict, same size: ${say(taken.bare)}`);
  console.log(`the same, from a bare tap:   ${say(taken.tapped)}`);
  console.log(`tap to durable event:        ${say(taken.durable)}`);
  const ratio = (to) => (quantile(taken.durable, 0.5) / quantile(to, 0.5)).toFixed(2);
  console.log(
    `ratio of the medians:        ${ratio(taken.bare)} to the put (goal 1.5), ${ratio(taken.tapped)} to the tapped put`,
  );
  const count = (what) => taken.pressed.filter((seen) => seen === what).length;
  console.log(
    `pressed look:                in the next frame ${count(1)}, already done by then ${count('done')}, of ${rounds}`,
  );
  console.log(
    `durable to next step shown:  ${say(taken.painted)}; within two frames ${taken.frames.filter((n) => n <= 2).length} of ${rounds}`,
  );
} finally {
  await context.close();
  await server.stop();
}
