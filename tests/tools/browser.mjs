// Finds or unpacks the browsers that the tests drive.
import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium, firefox } from 'playwright-core';
import { tempFolder, undoLater } from './opened.mjs';

/** A phone held upright. */
export const PHONE = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  isMobile: true,
  hasTouch: true,
};

/** --no-sandbox: containers run as root. The rest keeps the browser from calling home. */
const CHROMIUM_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const firstThatExists = (...paths) => paths.find((path) => path && existsSync(path));

/** $CHROMIUM names one, or says "packaged" to use the one that npm brings. */
const installedChromium = () => {
  const wanted = process.env.CHROMIUM;
  if (wanted === 'packaged') return undefined;
  if (wanted && !existsSync(wanted)) throw new Error(`$CHROMIUM is ${wanted}, and there is no such file`);
  return firstThatExists(
    wanted,
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    'C:/Program Files/Google/Chrome/Application/chrome.exe',
  );
};

/**
 * Unpacks the packaged Chromium once, into node_modules/.cache under its version: the package itself unpacks to one
 * directory for all versions and takes whatever half-written copy it finds there.
 */
const packagedChromium = async () => {
  if (process.platform !== 'linux' || process.arch !== 'x64')
    throw new Error(
      'no Chromium was found, and the packaged one is for 64-bit Linux: let $CHROMIUM name one',
    );
  const entry = createRequire(import.meta.url).resolve('@sparticuz/chromium');
  const root = entry.slice(0, entry.lastIndexOf('/build/'));
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const cache = join(dirname(dirname(root)), '.cache');
  const dir = join(cache, `chromium-${version}`);
  if (!existsSync(dir)) {
    mkdirSync(cache, { recursive: true });
    const unpacked = mkdtempSync(join(cache, 'unpack-'));
    const outer = process.env.TMPDIR;
    process.env.TMPDIR = unpacked;
    try {
      const { default: packaged } = await import('@sparticuz/chromium');
      await packaged.executablePath();
      // libnss3, libnspr4 and libexpat, which a bare machine lacks.
      const { inflate } = await import(pathToFileURL(join(root, 'build/esm/lambdafs.js')).href);
      await inflate(join(root, 'bin/al2023.tar.br'));
    } finally {
      if (outer === undefined) delete process.env.TMPDIR;
      else process.env.TMPDIR = outer;
    }
    try {
      renameSync(unpacked, dir);
    } catch {
      // Another process was first.
      rmSync(unpacked, { recursive: true, force: true });
    }
  }
  // Without a font the renderer dies, and the package's own fonts.conf names only /tmp/fonts.
  const fonts = join(dir, 'fonts.conf');
  writeFileSync(
    fonts,
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>
<include ignore_missing="yes">/etc/fonts/fonts.conf</include>
<dir>${dir}/fonts</dir><cachedir>${dir}/fonts-cache</cachedir></fontconfig>`,
  );
  return {
    executablePath: join(dir, 'chromium'),
    env: { ...process.env, FONTCONFIG_FILE: fonts, LD_LIBRARY_PATH: join(dir, 'al2023/lib') },
  };
};

/**
 * How to start a Chromium on a profile: $CHROMIUM, an installed one, or the packaged one. Its temporary files go into the profile,
 * and with it: one that is killed, and now and then one that is not, leaves some behind.
 * @param {string} profile
 */
export const chromiumOptions = async (profile) => {
  const installed = installedChromium();
  const { executablePath, env } = installed
    ? { executablePath: installed, env: process.env }
    : await packagedChromium();
  return { executablePath, args: CHROMIUM_FLAGS, env: { ...env, TMPDIR: profile } };
};

export const freshProfile = () => tempFolder('profile');

/**
 * A Chromium on a profile of its own, which outlives it: the way a phone is restarted.
 * @param {import('playwright-core').LaunchOptions & import('playwright-core').BrowserContextOptions & { profile?: string }} [options]
 */
export const openPhone = async ({ profile = freshProfile(), args = [], ...options } = {}) => {
  const how = await chromiumOptions(profile);
  const context = await chromium.launchPersistentContext(profile, {
    ...how,
    ...PHONE,
    ...options,
    args: [...how.args, ...args],
  });
  undoLater(() => context.close());
  return { context, page: context.pages()[0] ?? (await context.newPage()), profile };
};

/** Firefox through WebDriver BiDi; it has no touch emulation. */
export const openFirefox = async () => {
  const executablePath = firstThatExists(process.env.FIREFOX, '/usr/bin/firefox-esr', '/usr/bin/firefox');
  if (!executablePath) throw new Error('no Firefox is installed, and $FIREFOX names none');
  const browser = await firefox.launch({
    channel: 'moz-firefox',
    executablePath,
    env: { ...process.env, TMPDIR: tempFolder('firefox') },
    firefoxUserPrefs: {
      'dom.storageManager.prompt.testing': true,
      'dom.storageManager.prompt.testing.allow': true,
    },
  });
  undoLater(() => browser.close());
  const context = await browser.newContext({ viewport: PHONE.viewport });
  return { browser, context, page: await context.newPage() };
};
