// Takes the pictures of README and of the manifest from the built app, in the demo: node tests/tools/screenshots.mjs
import { mkdirSync } from 'node:fs';
import { openPhone } from './browser.mjs';
import { serve } from './serve.mjs';

const DIR = new URL('../../public/screenshots/', import.meta.url).pathname;
mkdirSync(DIR, { recursive: true });
const server = await serve({ port: 5399 });
const { context, page } = await openPhone({ colorScheme: 'light', deviceScaleFactor: 1.5 });
const press = (name, role = 'button') => page.getByRole(role, { name }).first().tap();
const settle = () => page.waitForTimeout(700);
const picture = async (name) => {
  await settle();
  await page.screenshot({ path: `${DIR}${name}.png` });
};

await page.goto(server.url);
await press('Open the demo');
await page.getByText('Saltmarsh').waitFor();
await settle();
await page.goto(`${server.url}#/bench/set-up-tenon`);
await press('Go on with it', 'link');
await settle();
await picture('set-up');

await page.goto(`${server.url}#/findings`);
await page.getByText('What to change tomorrow').waitFor({ timeout: 60_000 });
await picture('findings');

// To the advice: the set-up finished, both passes cut, a lid that drags.
await page.goto(`${server.url}#/bench/set-up-tenon`);
await press('Go on with it', 'link');
for (let i = 0; i < 20; i++) {
  await settle();
  if (await page.getByRole('link', { name: 'To the cut' }).count()) break;
  await page.getByRole('button', { name: 'Pass', exact: true }).tap();
}
await press('To the cut', 'link');
for (let i = 0; i < 4; i++) {
  await settle();
  const cut = page.getByRole('button', { name: /Cutter stopped/ });
  if (!(await cut.count())) break;
  await cut.tap();
}
await page.goto(`${server.url}#/bench/trial`);
await settle();
await page.getByRole('checkbox', { name: 'Drags more each turn' }).tap();
await page.locator('form button[type=submit]').tap();
await picture('advice');

await context.close();
await server.stop();
