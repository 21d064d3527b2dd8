// How long the joint takes, in Chromium at full speed and at a quarter of it: every calculation by itself, and a move of a slider
// of the joint's page until the frame with the new drawing is laid out and painted:
//   npx vite build --outDir DIR && DIST=DIR node tests/bench/joint.mjs [batches, 15 unless told]
// Meant: a calculation under 1 ms, a redraw under 8 ms at a quarter of the speed. Figures of a busy machine are figures of a busy
// machine: the load is printed beside them.
import { loadavg } from 'node:os';
import { openPhone } from '../tools/browser.mjs';
import { DIST, serve } from '../tools/serve.mjs';
import { bundled } from './bundled.mjs';

const batches = Number(process.argv[2] ?? 15);
const dist = process.env.DIST ?? DIST;

/** Mean of each calculation over a batch, ms: of many batches the quickest and the middle one. */
const timeAll = ({ calls, batches }) =>
  Object.entries(globalThis.jointBench.calculations).map(([name, calculate]) => {
    const coldFrom = performance.now();
    calculate();
    const cold = performance.now() - coldFrom;
    const means = Array.from({ length: batches }, () => {
      const from = performance.now();
      for (let i = 0; i < calls; i++) calculate();
      return (performance.now() - from) / calls;
    }).sort((a, b) => a - b);
    return { name, cold, quickest: means[0], median: means[Math.floor(batches / 2)] };
  });

/**
 * From the slider's event, ms, means over batches: until the new drawing is laid out (script, style, layout), and until its frame is
 * painted too. Batches, because the throttle works by halts: a single quick redraw may slip through between two of them.
 */
const timeRedraws = async ({ calls, batches }) => {
  const slider = document.querySelector('.what-if input[type="range"]');
  const tenon = document.querySelector('svg .tenon');
  const whole = document.querySelector('.joint > .at-hand');
  const channel = new MessageChannel();
  const laidOut = [];
  const painted = [];
  for (let batch = 0; batch < batches; batch++) {
    let [toLayout, toPaint] = [0, 0];
    for (let i = 0; i < calls; i++) {
      await new Promise((resolve) => requestAnimationFrame(resolve));
      const before = tenon.getAttribute('points');
      const from = performance.now();
      slider.value = String((i % 20) - 10);
      slider.dispatchEvent(new Event('input', { bubbles: true }));
      // What is posted within a frame is delivered once that frame has been painted.
      const frame = new Promise((resolve) => {
        channel.port1.onmessage = resolve;
        channel.port2.postMessage(null);
      });
      // What is rendered is put off to the end of the task, some of it twice: by now all microtasks have had their turn.
      for (let turn = 0; turn < 20; turn++) await null;
      document.body.getBoundingClientRect();
      const laid = performance.now() - from;
      toLayout += laid;
      if (tenon.getAttribute('points') === before) throw new Error('it was not redrawn');
      const drawn = whole.innerHTML;
      const read = performance.now();
      await frame;
      toPaint += performance.now() - read + laid;
      if (whole.innerHTML !== drawn) throw new Error('part of it came later');
    }
    laidOut.push(toLayout / calls);
    painted.push(toPaint / calls);
  }
  const sorted = (times) => times.sort((a, b) => a - b);
  return { 'laid out': sorted(laidOut), painted: sorted(painted) };
};

const ms = (value) => `${value.toFixed(value < 0.1 ? 4 : 2)} ms`;

const code = await bundled('joint-calculations.ts', 'jointBench');
const server = await serve({ port: 5311, dir: dist.endsWith('/') ? dist : `${dist}/` });
const { context, page } = await openPhone();
const cdp = await context.newCDPSession(page);
const throttled = (rate) => cdp.send('Emulation.setCPUThrottlingRate', { rate });

await page.goto('about:blank');
await page.evaluate(code);
for (const rate of [1, 4]) {
  await throttled(rate);
  const timed = await page.evaluate(timeAll, { calls: 100, batches });
  const slowest = timed.reduce((most, each) => (each.median > most.median ? each : most));
  console.log(
    `\n${timed.length} calculations, speed 1/${rate}; slowest ${slowest.name}, ${ms(slowest.median)}`,
  );
  for (const { name, cold, quickest, median } of timed)
    console.log(
      `  ${name.padEnd(44)} quickest ${ms(quickest)}, middle ${ms(median)}, the first ever ${ms(cold)}`,
    );
}
await throttled(1);

await page.goto(server.url);
await page.getByRole('button', { name: 'New box', exact: true }).tap();
await page.getByRole('textbox', { name: 'Opening' }).fill('2');
await page.getByRole('textbox', { name: 'Wood', exact: true }).fill('Boxwood');
await page.getByRole('button', { name: 'Plan it', exact: true }).tap();
await page.getByRole('heading', { name: 'Box 1' }).waitFor();
await page.goto(`${server.url}#/bench/joint`);
await page.locator('svg .tenon').waitFor();
await page.evaluate(timeRedraws, { calls: 40, batches: 1 });
const timed = async (what) => {
  for (const rate of [1, 4]) {
    await throttled(rate);
    for (const [until, times] of Object.entries(await page.evaluate(timeRedraws, { calls: 20, batches })))
      console.log(
        `${what} until ${until}, speed 1/${rate}: quickest batch ${ms(times[0])}, middle ${ms(times[Math.floor(batches / 2)])}`,
      );
  }
  await throttled(1);
};
await timed('redraw');
// Figures below the glass are written when the slider rests; here they are written with the drawing.
await page.locator('.sizes').evaluate((numbers) => numbers.scrollIntoView({ block: 'center' }));
await page.waitForTimeout(500);
await page.evaluate(timeRedraws, { calls: 40, batches: 1 });
await timed('redraw with the numbers in sight');
console.log(
  `load of the machine: ${loadavg()
    .map((load) => load.toFixed(1))
    .join(' ')}`,
);

await context.close();
await server.stop();
