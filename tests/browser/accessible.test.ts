import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { planBox, startSetUp } from './at-the-lathe.ts';
import { hasStarted } from './page-state.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The least contrast of any text here, half as much again as WCAG 2.2 asks at level AA (1.4.3), and its level AAA (1.4.6). */
const LEAST_CONTRAST = 7;

/**
 * The contrast of one text as it stands on the screen: its computed colour against the commonest colour of its pixels.
 * For what axe cannot decide, above all text in drawings.
 */
const measureContrast = async (page: Page, selector: string): Promise<number> => {
  const text = page.locator(selector);
  // Away from what floats over the edges.
  await text.evaluate((element) => element.scrollIntoView({ block: 'center' }));
  const pixels = (await text.screenshot()).toString('base64');
  return text.evaluate(async (element, png) => {
    const canvas = document.createElement('canvas');
    const draw = canvas.getContext('2d', { willReadFrequently: true });
    if (!draw) throw new Error('no canvas');
    const rgbOf = (colour: string) => {
      draw.fillStyle = colour;
      draw.fillRect(0, 0, 1, 1);
      return [...draw.getImageData(0, 0, 1, 1).data].slice(0, 3);
    };
    const style = getComputedStyle(element);
    const ink = rgbOf(element instanceof SVGElement ? style.fill : style.color);

    const picture = await createImageBitmap(
      new Blob([Uint8Array.from(atob(png), (c) => c.charCodeAt(0))], { type: 'image/png' }),
    );
    canvas.width = picture.width;
    canvas.height = picture.height;
    draw.drawImage(picture, 0, 0);
    const { data } = draw.getImageData(0, 0, picture.width, picture.height);
    const counts = new Map<string, number>();
    for (let i = 0; i < data.length; i += 4) {
      const key = `${data[i]} ${data[i + 1]} ${data[i + 2]}`;
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
    const [commonest = ''] = [...counts].sort(([, a], [, b]) => b - a)[0] ?? [];

    // Relative luminance and contrast ratio as WCAG 2.2 defines them.
    const luminance = (rgb: readonly number[]) => {
      const [r = 0, g = 0, b = 0] = rgb.map((value) => {
        const part = value / 255;
        return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const [dark = 0, light = 0] = [luminance(ink), luminance(commonest.split(' ').map(Number))].sort(
      (a, b) => a - b,
    );
    return (light + 0.05) / (dark + 0.05);
  }, pixels);
};

/** What axe finds serious or critical. Where it could not decide about a contrast it is measured; anything else undecided counts. */
const faults = async (page: Page): Promise<string[]> => {
  await page.evaluate(AXE);
  const { sure, unsure } = await page.evaluate(async () => {
    const { axe } = window as unknown as { axe: typeof import('axe-core') };
    const found = await axe.run(document, { resultTypes: ['violations', 'incomplete'] });
    const grave = (results: typeof found.violations) =>
      results
        .filter(({ impact }) => impact === 'serious' || impact === 'critical')
        .flatMap(({ id, nodes }) =>
          nodes.map(({ html, target }) => ({ id, html: html.slice(0, 120), selector: String(target[0]) })),
        );
    return { sure: grave(found.violations), unsure: grave(found.incomplete) };
  });
  const found = sure.map(({ id, html }) => `${id}: ${html}`);
  for (const { id, html, selector } of unsure) {
    if (id !== 'color-contrast') found.push(`${id}, undecided: ${html}`);
    else {
      const contrast = await measureContrast(page, selector);
      if (contrast < LEAST_CONTRAST) found.push(`contrast ${contrast.toFixed(1)}: ${html}`);
    }
  }
  return found;
};

const STAGES = [
  'plan',
  'bore',
  'set-up-recess',
  'cut-recess',
  'tenon',
  'set-up-tenon',
  'cut-tenon',
  'trial',
  'seat',
  'close',
];
const SHOP = ['rig', 'procedures', 'reading', 'backups', 'safety', 'sources'];
const PLACES = [
  'bench/new',
  ...STAGES.map((stage) => `bench/${stage}`),
  'boxes',
  'woods',
  'findings',
  'shop',
  ...SHOP.map((page) => `shop/${page}`),
];

describe.each(['light', 'dark'] as const)('%s', (colorScheme) => {
  let server: Awaited<ReturnType<typeof serve>>;
  let phone: Awaited<ReturnType<typeof openPhone>>;
  beforeAll(async () => {
    server = await serve({ port: 5320 });
    phone = await openPhone({ colorScheme, serviceWorkers: 'block', reducedMotion: 'reduce' });
    await phone.page.goto(server.url);
  });
  afterAll(async () => {
    await phone.context.close();
    await server.stop();
  });

  const settle = async (page: Page) => {
    await page.locator('main').first().waitFor();
    await page.waitForFunction(() => !document.querySelector('[aria-busy="true"]'));
    await page.waitForTimeout(200);
  };

  test('an empty bench', async () => {
    const { page } = phone;
    await hasStarted(page);
    await settle(page);
    expect(await faults(page)).toEqual([]);
    await planBox(page);
  });

  test.each(PLACES)('%s', async (place) => {
    const { page } = phone;
    await page.goto(`${server.url}#/${place}`);
    await settle(page);
    expect(await faults(page)).toEqual([]);
  });

  test('a set-up, what moved, and the whole list', async () => {
    const { page } = phone;
    await startSetUp(page, server.url);
    expect(await faults(page)).toEqual([]);
    await page.getByRole('button', { name: /^All steps/ }).tap();
    await settle(page);
    expect(await faults(page)).toEqual([]);
    await page.reload();
    await page.getByRole('button', { name: 'Something moved' }).tap();
    await settle(page);
    expect(await faults(page)).toEqual([]);
  });

  test('the demo: boxes, one box, woods, findings', async () => {
    const { page } = phone;
    await page.goto(`${server.url}#/shop/backups`);
    await page.getByRole('button', { name: 'Open the demo' }).tap();
    for (const place of ['boxes', 'woods', 'findings']) {
      await page.goto(`${server.url}#/${place}`);
      await settle(page);
      await page.waitForTimeout(500);
      expect(await faults(page), place).toEqual([]);
    }
    await page.goto(`${server.url}#/boxes`);
    await page.locator('main a[href^="#/boxes/"]').first().tap();
    await settle(page);
    expect(await faults(page)).toEqual([]);
  });

  test('the rescue page', async () => {
    const { page } = phone;
    await page.goto(`${server.url}rescue.html`);
    await settle(page);
    expect(await faults(page)).toEqual([]);
  });
});
