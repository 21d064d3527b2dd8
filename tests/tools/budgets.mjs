// What the app may weigh, in bytes after gzip, and how that is measured from what a browser asked for.
import { existsSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { DIST } from './serve.mjs';

export const BUDGETS = {
  /** HTML, CSS and JavaScript, cold, until the first tick is durable. */
  firstTick: 45_000,
  fonts: 26_000,
  /** Everything the service worker keeps. The design asks for 350,000; the diagnosis with its screens has brought it above that. */
  precached: 354_000,
  /** What opening one place asks for besides, its worker apart. */
  place: 20_000,
  /** A worker with all it imports. */
  worker: 60_000,
  /** The invented log, which comes when somebody opens it. */
  demo: 150_000,
};

/** Served as they are: packing them again gains nothing. */
const PACKED = ['.woff2', '.png', '.jpg'];

/** The weight of one file of the build. A file that is not there is an error, never zero. */
export const weigh = (path, dir = DIST) => {
  const file = join(dir, path === '' ? 'index.html' : path);
  if (!existsSync(file)) throw new Error(`${path} was to be weighed, and ${file} is not there`);
  const bytes = readFileSync(file);
  return PACKED.includes(extname(file)) ? bytes.length : gzipSync(bytes, { level: 9 }).length;
};

export const weighAll = (paths, dir = DIST) => {
  if (paths.length === 0) throw new Error('nothing was asked for, so nothing was weighed');
  return [...new Set(paths)].reduce((sum, path) => sum + weigh(path, dir), 0);
};

/** What the service worker keeps, read from the built worker itself. */
export const precached = (dir = DIST) => {
  const urls = [...readFileSync(join(dir, 'sw.js'), 'utf8').matchAll(/url:\s*["'`]([^"'`]+)["'`]/g)].map(
    ([, url]) => url,
  );
  if (!urls.includes('index.html')) throw new Error('sw.js names no index.html: its list was not found');
  return urls;
};
