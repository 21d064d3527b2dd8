// How long the findings take, part by part, in a worker and at a quarter of the speed on a page (Chromium slows pages alone):
//   node tests/bench/findings.mjs [boxes ...; 120 and 1000 unless told]
// PROFILE names a browser profile whose log, written at localhost:PORT, is measured as it is: ten thousand boxes take minutes to put in.
// Figures of a busy machine are figures of a busy machine: the load is printed beside them.
import { createServer } from 'node:http';
import { loadavg } from 'node:os';
import { freshProfile, openPhone } from '../tools/browser.mjs';
import { bundled } from './bundled.mjs';

const { PROFILE, PORT = '5312', WHERE = 'worker page' } = process.env;
const sizes = PROFILE ? [null] : process.argv.slice(2).map(Number);
if (sizes.length === 0) sizes.push(120, 1000);

const IN_WORKER = 'findingsBench.phases().then(postMessage, (error) => postMessage(String(error)));';
const code = await bundled('findings-phases.ts', 'findingsBench');
const server = createServer((request, response) => {
  const script = { '/bench.js': code, '/worker.js': `${code}\n${IN_WORKER}` }[request.url];
  response.writeHead(200, { 'Content-Type': script ? 'text/javascript' : 'text/html' });
  response.end(script ?? '<!doctype html><title>bench</title><script src="bench.js"></script>');
});
await new Promise((resolve, reject) => {
  server.once('error', reject);
  server.listen(Number(PORT), 'localhost', resolve);
});

const measure = {
  worker: (page) =>
    page.evaluate(
      () =>
        new Promise((resolve) => {
          const worker = new Worker('worker.js');
          worker.onmessage = ({ data }) => resolve(data);
        }),
    ),
  page: (page) => page.evaluate(() => globalThis.findingsBench.phases()),
};

for (const boxes of sizes) {
  const { context, page } = await openPhone({ profile: PROFILE ?? freshProfile(), serviceWorkers: 'block' });
  page.setDefaultTimeout(0);
  await page.goto(`http://localhost:${PORT}/`);
  if (boxes !== null) await page.evaluate((count) => globalThis.findingsBench.fill(count), boxes);
  const cdp = await context.newCDPSession(page);
  for (const where of WHERE.split(' ')) {
    await cdp.send('Emulation.setCPUThrottlingRate', { rate: where === 'page' ? 4 : 1 });
    const load = loadavg()[0].toFixed(1);
    const times = await measure[where](page);
    if (typeof times === 'string') throw new Error(times);
    console.log(
      `\n${boxes ?? 'its own'} boxes, ${where === 'page' ? 'a page at speed 1/4' : 'a worker'}; load ${load} to ${loadavg()[0].toFixed(1)}`,
    );
    for (const [name, ms] of times) console.log(`  ${name.padEnd(40)} ${ms.toFixed(0).padStart(7)} ms`);
    // So that the next one begins with an empty cache.
    await page.evaluate(() => globalThis.findingsBench.forget());
  }
  await context.close();
}
server.close();
