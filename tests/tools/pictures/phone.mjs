import { join } from 'node:path';
import { PHONE } from '../browser.mjs';
import { BEGINS, comeToRest, PACE, scrollInside, standStill } from './still-page.mjs';

const UPRIGHT = PHONE.viewport;
/** Ways of holding a phone that some screens are pictured in besides. */
const OTHER_SHAPES = [
  { width: 844, height: 390 },
  { width: 360, height: 640 },
];
/** Nothing changes for so long before a picture is taken, ms. */
const QUIET = 150;

/**
 * A phone with an empty log in `browser`, on the app at `url`. It is used as a person uses it, by role and name, and
 * `picture` writes what it shows to the folder `out`.
 */
export const openStillPhone = async (browser, url, out) => {
  const context = await browser.newContext({
    ...PHONE,
    locale: 'en-US',
    timezoneId: 'UTC',
    reducedMotion: 'reduce',
    colorScheme: 'light',
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  const loading = new Set();
  page.on('request', (request) => request.url().startsWith('http') && loading.add(request));
  for (const end of ['requestfinished', 'requestfailed']) page.on(end, (request) => loading.delete(request));
  await page.addInitScript(standStill, BEGINS);
  await page.goto(url);
  await page.getByRole('navigation').waitFor();
  const taken = new Set();

  const called = (role, name) =>
    page.getByRole(role, { name, exact: typeof name === 'string' }).filter({ visible: true });
  const letTimePass = (ms) => page.evaluate((ms) => globalThis.letTimePass(ms), ms);
  const rest = async () => {
    do await page.evaluate(comeToRest, QUIET);
    while (loading.size > 0);
  };

  const tap = async (name, role = 'button') => {
    await letTimePass(PACE);
    await called(role, name).first().tap();
  };
  const sees = (name, role = 'heading') => called(role, name).first().waitFor();
  const says = (text) => page.getByText(text).filter({ visible: true }).first().waitFor();
  const shows = async (name, role = 'button') => {
    await rest();
    return (await called(role, name).count()) > 0;
  };

  const shoot = async (name) => {
    if (taken.has(name)) throw new Error(`two pictures are called ${name}`);
    taken.add(name);
    for (const [look, colorScheme] of [
      ['day', 'light'],
      ['night', 'dark'],
    ]) {
      await page.emulateMedia({ colorScheme });
      await page.evaluate(
        () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
      );
      await page.screenshot({
        path: join(out, `${name}.${look}.png`),
        fullPage: true,
        animations: 'disabled',
        caret: 'hide',
      });
    }
    await page.emulateMedia({ colorScheme: 'light' });
  };

  /** The whole page by day and by night; and, where something inside it scrolls, that scrolled to its end. */
  const shootAll = async (name) => {
    await rest();
    // At its end nothing of the page lies behind the bars that stand at the foot of the screen.
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    const scrollers = await page.evaluate(scrollInside, false);
    await shoot(name);
    if (scrollers === 0) return;
    await page.evaluate(scrollInside, true);
    await shoot(`${name}.end`);
    await page.evaluate(scrollInside, false);
  };

  /** Pictures the screen; `inAllShapes` also lying down and on a small phone. */
  const picture = async (name, { inAllShapes = false } = {}) => {
    await shootAll(name);
    if (!inAllShapes) return;
    for (const shape of OTHER_SHAPES) {
      await page.setViewportSize(shape);
      await shootAll(`${name}.${shape.width}x${shape.height}`);
    }
    await page.setViewportSize(UPRIGHT);
    await rest();
  };

  return {
    page,
    tap,
    sees,
    says,
    shows,
    picture,
    rest,
    letTimePass,

    /** Writes into the field with this label, once the app has written into it what it knows. */
    fill: async (label, text) => {
      await rest();
      await page.getByLabel(label, { exact: true }).filter({ visible: true }).first().fill(text);
    },
    /** Ticks the check box or radio button with this name. */
    choose: async (name, role = 'radio') => {
      await letTimePass(PACE);
      await called(role, name).first().check();
    },
    /** Opens or shuts the fold whose heading begins with this. */
    fold: (heading) => page.locator('summary', { hasText: heading }).filter({ visible: true }).first().tap(),
    /** Opens every fold on the page. */
    openAllFolds: async () => {
      await rest();
      const shut = page.locator('details:not([open]) > summary').filter({ visible: true });
      while ((await shut.count()) > 0) await shut.first().tap();
    },
    /** Goes to an address of the app: go('shop', 'rig') is #/shop/rig. */
    go: async (...parts) => {
      await page.evaluate(
        (hash) => {
          location.hash = hash;
        },
        `#/${parts.map(encodeURIComponent).join('/')}`,
      );
      await rest();
    },
    /** Picks a file for the file chooser that a tap opens, or for a file field. */
    pick: async (name, file) => {
      const chooser = page.waitForEvent('filechooser');
      await tap(name);
      await (await chooser).setFiles(file);
    },
    close: () => context.close(),
  };
};
