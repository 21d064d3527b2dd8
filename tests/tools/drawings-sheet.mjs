// Renders every step drawing by day and by night, with and without labels, at full and at a third of its size, then the
// strip, the sections and the marks, and all of it in forced colours:
//   node tests/tools/drawings-sheet.mjs [folder, /tmp/drawings unless told] [key,key to draw only those]
// Look at the PNGs: from each drawing alone, its labels hidden, one should be able to name the step.
import { mkdir } from 'node:fs/promises';
import { chromium } from 'playwright-core';
import { createServer } from 'vite';

const [folder = '/tmp/drawings', only] = process.argv.slice(2);
await mkdir(folder, { recursive: true });

// Words that run over the edge of their drawing.
const wordsOutside = () =>
  [...document.querySelectorAll('svg.drawing text')].flatMap((text) => {
    const paper = text.ownerSVGElement?.viewBox.baseVal;
    const box = text.getBBox();
    const fits =
      paper && box.x >= 0 && box.x + box.width <= paper.width && box.y + box.height <= paper.height + 2;
    return fits ? [] : [text.textContent];
  });
const cut = [];

const server = await createServer({
  server: { port: 5391, strictPort: true, hmr: false },
  cacheDir: `${folder}/.vite`,
  optimizeDeps: { entries: ['tests/tools/drawings-sheet/index.html'] },
  logLevel: 'warn',
});
await server.listen();
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });

const sheets = ['day', 'night'].flatMap((look) =>
  [1, 1 / 3].flatMap((scale) => ['yes', 'no'].map((labels) => ({ look, scale, labels, what: 'steps' }))),
);
sheets.push({ look: 'forced', scale: 1, labels: 'yes', what: 'steps' });
sheets.push(
  ...['day', 'night', 'forced'].map((look) => ({ look, scale: 1, labels: 'yes', what: 'figures' })),
);
try {
  for (const { look, scale, labels, what } of sheets) {
    const page = await browser.newPage({ viewport: { width: Math.round(1540 * scale) + 24, height: 400 } });
    if (look === 'forced') await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
    page.on('pageerror', (error) => console.error(error));
    const query = new URLSearchParams({ look, labels, what, scale: String(scale), ...(only && { only }) });
    await page.goto(`http://localhost:5391/tests/tools/drawings-sheet/index.html?${query}`);
    await page.locator('body[data-ready]').waitFor();
    cut.push(...(await page.evaluate(wordsOutside)).map((word) => `${look}: ${word}`));
    const name = `${what}-${look}-${scale === 1 ? 'full' : 'third'}-${labels === 'yes' ? 'labelled' : 'bare'}.png`;
    await page.screenshot({ path: `${folder}/${name}`, fullPage: true });
    await page.close();
    console.log(`${folder}/${name}`);
  }
} finally {
  await browser.close();
  await server.close();
}
if (cut.length > 0) {
  console.error('Words cut off:', cut);
  process.exitCode = 1;
}
