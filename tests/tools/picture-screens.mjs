// Pictures of every screen of a built app, the same from run to run: node tests/tools/picture-screens.mjs DIST OUT [TOUR...]
import { mkdirSync, readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { chromium } from 'playwright-core';
import { chromiumOptions } from './browser.mjs';
import { openStillPhone } from './pictures/phone.mjs';
import { TOURS } from './pictures/tours.mjs';
import { serve } from './serve.mjs';

const [dist, out, ...wanted] = process.argv.slice(2);
if (!dist || !out || wanted.some((name) => !TOURS[name])) {
  console.error(`node tests/tools/picture-screens.mjs DIST OUT [${Object.keys(TOURS).join(' | ')}]...`);
  process.exit(2);
}
mkdirSync(out, { recursive: true });
// A picture of an earlier run must not pass for one of this.
if (readdirSync(out).length > 0) {
  console.error(`${out} is not empty`);
  process.exit(2);
}

const began = Date.now();
const server = await serve({ dir: resolve(dist), port: 0 });
const browser = await chromium.launch(await chromiumOptions());
const failed = [];

const tour = async (name) => {
  const phone = await openStillPhone(browser, server.url, out);
  try {
    await TOURS[name](phone);
  } catch (error) {
    failed.push(name);
    console.error(`The tour ${name} broke off: ${error.stack}\nat ${phone.page.url()}, which shows:`);
    console.error(await phone.page.locator('body').ariaSnapshot().catch(String));
  } finally {
    await phone.close();
  }
};

// Two at a time: each waits much for the browser.
const queue = wanted.length > 0 ? wanted : Object.keys(TOURS);
await Promise.all(
  [1, 2].map(async () => {
    for (let name = queue.shift(); name; name = queue.shift()) await tour(name);
  }),
);
await browser.close();
await server.stop();

console.log(`${readdirSync(out).length} pictures in ${out}, ${((Date.now() - began) / 1000).toFixed(0)} s`);
if (failed.length > 0) {
  console.error(`broken off: ${failed.join(', ')}`);
  process.exitCode = 1;
}
