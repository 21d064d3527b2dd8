import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { planBox } from './at-the-lathe.ts';
import { hasStarted } from './page-state.ts';
import { serveBuilt } from './set-up-in-store.ts';

/** What a reader with poor eyes sets in the browser; 16 px is what browsers come with. */
const FONT_SIZE = 32;

let server: Awaited<ReturnType<typeof serveBuilt>>;
let phone: Awaited<ReturnType<typeof openPhone>>;
let page: Page;

beforeAll(async () => {
  server = await serveBuilt(5379);
  // What the setting sets, set directly: a headless shell reads no preferences.
  const args = [`--blink-settings=defaultFontSize=${FONT_SIZE}`];
  phone = await openPhone({ args, viewport: { width: 360, height: 640 } });
  page = phone.page;
  await page.goto(server.url);
  await hasStarted(page);
});
afterAll(async () => {
  await phone.context.close();
  await server.stop();
});

/**
 * What does not fit across the glass: a page wider than it, words over its edge, cut off by what holds them, or over the words
 * of a neighbour. What scrolls sideways by design says so in its own style.
 */
const faultsAcross = () =>
  page.evaluate(() => {
    const faults: string[] = [];
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth > width + 1)
      faults.push(`the page is ${document.documentElement.scrollWidth} px wide`);
    const isAside = (el: Element): boolean => {
      if (!el.checkVisibility()) return true;
      for (let at: Element | null = el; at; at = at.parentElement) {
        const style = getComputedStyle(at);
        if (style.clipPath !== 'none' || style.visibility === 'hidden') return true;
        if (/auto|scroll/.test(style.overflowX) && at.scrollWidth > at.clientWidth + 1) return true;
      }
      return el.closest('svg') !== null;
    };
    /** What stays put while the page scrolls under it. */
    const layerOf = (el: Element): Element | null => {
      for (let at: Element | null = el; at; at = at.parentElement)
        if (/sticky|fixed/.test(getComputedStyle(at).position)) return at;
      return null;
    };
    const lines: { what: string; of: Element; layer: Element | null; rect: DOMRect }[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const of = node.parentElement;
      const text = node.textContent?.trim();
      if (!of || !text || isAside(of)) continue;
      const layer = layerOf(of);
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const rect of range.getClientRects())
        if (rect.width > 1) lines.push({ what: `“${text.slice(0, 40)}”`, of, layer, rect });
    }
    for (const { what, of, rect } of lines) {
      if (rect.left < -1 || rect.right > width + 1)
        faults.push(`${what} runs off the glass, ${Math.round(rect.left)} to ${Math.round(rect.right)}`);
      const holder = of.closest('button, a, label, td, th, select')?.getBoundingClientRect();
      if (holder && (rect.left < holder.left - 1 || rect.right > holder.right + 1))
        faults.push(`${what} runs out of its button`);
    }
    for (const [i, a] of lines.entries())
      for (const b of lines.slice(i + 1)) {
        if (a.of === b.of || a.layer !== b.layer) continue;
        const across = Math.min(a.rect.right, b.rect.right) - Math.max(a.rect.left, b.rect.left);
        // A line's box is taller than its letters, by about a sixth above and below.
        const air = (a.rect.height + b.rect.height) / 6;
        const down = Math.min(a.rect.bottom, b.rect.bottom) - Math.max(a.rect.top, b.rect.top) - air;
        if (across > 2 && down > 2) faults.push(`${a.what} lies on ${b.what}`);
      }
    for (const field of document.querySelectorAll('input, select, textarea')) {
      const rect = field.getBoundingClientRect();
      if (rect.right > width + 1 || rect.left < -1)
        faults.push(
          `${field.tagName} ${field.id} ${field.closest('label')?.textContent ?? ''} runs off the glass, ${Math.round(rect.left)} to ${Math.round(rect.right)}`,
        );
    }
    return [...new Set(faults)];
  });

const look = async (hash: string) => {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await page.waitForTimeout(300);
  await page.locator('[aria-busy=true]').waitFor({ state: 'detached' });
  if (process.env.SHOTS)
    await page.screenshot({
      path: join(process.env.SHOTS, `font-${hash.replaceAll(/\W+/g, '-')}.png`),
      fullPage: true,
    });
  return (await faultsAcross()).map((fault) => `${hash}: ${fault}`);
};

test('the browser really asks for the large type', async () => {
  expect(
    await page.evaluate(() => Number.parseFloat(getComputedStyle(document.documentElement).fontSize)),
  ).toBeCloseTo(FONT_SIZE * 1.125, 1);
});

test.each([
  ['an empty log', false],
  ['the demo', true],
] as const)(
  '%s: in large type nothing is cut off or laid over anything across the glass',
  async (_what, demo) => {
    const faults: string[] = [];
    if (demo) {
      await page.evaluate(() => {
        location.hash = '#/shop/backups';
      });
      await page.getByRole('button', { name: /demo/i }).first().click();
      await page.waitForTimeout(4_000);
    } else {
      faults.push(...(await look('#/bench')));
      await planBox(page);
    }
    const links = async (hash: string, pattern: RegExp) => {
      await look(hash);
      return page.evaluate(
        (source) =>
          [...document.querySelectorAll('a[href*="#/"]')]
            .map((a) => `#${a.getAttribute('href')?.split('#')[1]}`)
            .filter((to) => new RegExp(source).test(to)),
        pattern.source,
      );
    };
    const pages = new Set(['#/bench', '#/boxes', '#/woods', '#/findings', '#/shop']);
    for (const to of await links('#/shop', /^#\/shop\/./)) pages.add(to);
    for (const to of (await links('#/boxes', /^#\/boxes\/./)).slice(0, 2)) pages.add(to);
    for (const to of (await links('#/woods', /^#\/woods\/./)).slice(0, 2)) pages.add(to);
    for (const stage of ['plan', 'bore', 'set-up-recess', 'cut-recess', 'tenon', 'trial', 'seat', 'close'])
      pages.add(`#/bench/${stage}`);
    for (const to of pages) faults.push(...(await look(to)));
    expect(pages.size).toBeGreaterThan(18);
    expect(faults).toEqual([]);
  },
  180_000,
);
