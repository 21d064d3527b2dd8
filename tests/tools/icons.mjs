// Renders the PNG icons from public/icon.svg: node tests/tools/icons.mjs
// `any` icons get rounded corners on nothing; the maskable and the apple one fill their square, as the system cuts them.
import { readFile, writeFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';

const home = new URL('../../public/', import.meta.url);
const svg = await readFile(new URL('icon.svg', home), 'utf8');
const ICONS = [
  { name: 'icon-192.png', size: 192, rounded: true },
  { name: 'icon-512.png', size: 512, rounded: true },
  { name: 'icon-maskable-512.png', size: 512, rounded: false },
  { name: 'apple-touch-icon.png', size: 180, rounded: false },
];

const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
try {
  for (const { name, size, rounded } of ICONS) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    await page.setContent(
      `<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px;border-radius:${rounded ? size * 0.18 : 0}px}</style>${svg}`,
    );
    await writeFile(new URL(name, home), await page.screenshot({ omitBackground: rounded }));
    await page.close();
  }
} finally {
  await browser.close();
}
