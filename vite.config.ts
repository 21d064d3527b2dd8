import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import preact from '@preact/preset-vite';
import { build, type Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import manifest from './package.json' with { type: 'json' };

const root = import.meta.dirname;
const target = ['chrome111', 'firefox115', 'safari16.4'];

/** Nothing but our own files, no inline script or style. tests/tools/serve.mjs sends the same as a header, for workers. */
const POLICY = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' blob:",
  'font-src': "'self'",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
};

/** At build only: the development server injects scripts of its own. */
const contentSecurityPolicy = (): Plugin => ({
  name: 'content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: {
        'http-equiv': 'Content-Security-Policy',
        content: Object.entries(POLICY)
          .map((rule) => rule.join(' '))
          .join('; '),
      },
      injectTo: 'head-prepend',
    },
  ],
});

/** What the app reads of the wood tables; their notes and further columns are for people and tests. */
const READ_OF_WOODS = new Set([
  'species',
  'group',
  'CR',
  'CT',
  'provenance',
  'radial',
  'tangential',
  'hardness_lbf_12',
  'hardness_lbf_dry',
  'sg12',
  'sg_basic',
]);

/** Leaves out of the built wood tables what the app does not read: half their weight. */
const leanWoodTables = (): Plugin => ({
  name: 'lean-wood-tables',
  apply: 'build',
  enforce: 'pre',
  transform(code, id) {
    if (!/shared\/wood-[a-z-]+\.json$/.test(id)) return null;
    const tables = Object.entries(JSON.parse(code)).filter(([, value]) => isTable(value));
    return JSON.stringify(
      Object.fromEntries(
        tables.map(([name, rows]) => [
          name,
          (rows as object[]).map((row) =>
            Object.fromEntries(Object.entries(row).filter(([column]) => READ_OF_WOODS.has(column))),
          ),
        ]),
      ),
    );
  },
});

const isTable = (value: unknown): boolean =>
  Array.isArray(value) && value.every((row) => typeof row === 'object' && row !== null && 'species' in row);

/** The packages whose code is in the build: what the app names itself, and what the modules of page and workers come from. */
const carried = new Set(Object.keys(manifest.dependencies));

const notePackages = (): Plugin => ({
  name: 'note-packages',
  apply: 'build',
  buildEnd() {
    for (const id of this.getModuleIds()) {
      const name = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
      if (name) carried.add(name);
    }
  },
});

/** A package's own licence and notices. */
const licenceOf = (name: string): string => {
  const dir = join(root, 'node_modules', name);
  const files = readdirSync(dir).filter((file) => /^(licen[cs]e|notice)/i.test(file));
  if (files.length === 0) throw new Error(`no licence in ${name}`);
  return files.map((file) => readFileSync(join(dir, file), 'utf8').trim()).join('\n\n');
};

/** licences.txt beside index.html: each licence once, under the packages it is for. The code itself then need not repeat them. */
const licences = (): Plugin => ({
  name: 'licences',
  apply: 'build',
  generateBundle() {
    const packagesBy = new Map<string, string[]>();
    for (const name of [...carried].sort()) {
      const text = licenceOf(name);
      packagesBy.set(text, [...(packagesBy.get(text) ?? []), name]);
    }
    const source = [...packagesBy].map(([text, names]) => `${names.join(', ')}\n\n${text}\n`);
    this.emitFile({
      type: 'asset',
      fileName: 'licences.txt',
      source: source.join(`\n${'='.repeat(72)}\n\n`),
    });
  },
});

/** Fetched by the system when the app is installed, never by a page. */
const isForInstallerOnly = (url: string): boolean => /\.png$/.test(url);

/** The invented log: wanted by some, once, so not worth keeping on every phone. */
const isDemo = (url: string): boolean => /^assets\/demo-log-/.test(url);

/** Wanted only where the browser stores nothing, which mostly means this list neither. */
const isForNoStorage = (url: string): boolean => /^assets\/in-memory-/.test(url);

/** Vite puts the hash of these into their names, so the copy the page has just loaded will do. */
const isNamedByHash = (url: string): boolean => url.startsWith('assets/');

const hash = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex').slice(0, 16);

const filesIn = (dir: string): string[] =>
  readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));

/** Builds src/sw/sw.ts to sw.js beside index.html, with the list of what the first build wrote. */
const serviceWorker = (): Plugin => {
  let outDir = '';
  return {
    name: 'service-worker',
    apply: 'build',
    configResolved: (config) => {
      outDir = resolve(config.root, config.build.outDir);
    },
    writeBundle: {
      sequential: true,
      order: 'post',
      async handler() {
        const precached = filesIn(outDir)
          .map((file) => ({ file, url: relative(outDir, file).split(sep).join('/') }))
          .filter(
            ({ url }) => !isForInstallerOnly(url) && !isDemo(url) && !isForNoStorage(url) && url !== 'sw.js',
          )
          .sort((a, b) => (a.url < b.url ? -1 : 1))
          .map(({ file, url }) => ({ url, revision: isNamedByHash(url) ? null : hash(readFileSync(file)) }));
        await build({
          configFile: false,
          root,
          logLevel: 'warn',
          publicDir: false,
          define: { __PRECACHED__: JSON.stringify(precached), 'process.env.NODE_ENV': '"production"' },
          build: {
            target,
            outDir,
            emptyOutDir: false,
            rolldownOptions: {
              input: join(root, 'src/sw/sw.ts'),
              output: { format: 'iife', entryFileNames: 'sw.js' },
            },
          },
        });
      },
    },
  };
};

type Modules = { getModuleInfo(id: string): { readonly importedIds: readonly string[] } | null };

/** Everything a module needs to run, found once per build. */
const reachedFrom = (start: string, modules: Modules, found = new Set<string>()): ReadonlySet<string> => {
  if (found.has(start)) return found;
  found.add(start);
  for (const id of modules.getModuleInfo(start)?.importedIds ?? []) reachedFrom(id, modules, found);
  return found;
};

/** What main.tsx reaches without import() is one file: it is asked for together and packs better together. */
const firstLoad = (id: string, modules: Modules): string | null =>
  reachedFrom(join(root, 'src/main.tsx'), modules).has(id) ? 'first-load' : null;

export default defineConfig({
  base: './',
  plugins: [leanWoodTables(), preact(), contentSecurityPolicy(), notePackages(), licences(), serviceWorker()],
  build: {
    target,
    assetsInlineLimit: 0,
    // A lazy part asks for its own modules: naming them all beforehand would weigh 2 kB on the first load. Styles must be named.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_file, deps) => deps.filter((dep) => dep.endsWith('.css')),
    },
    // The demo is one.
    chunkSizeWarningLimit: 1000,
    rolldownOptions: {
      input: [join(root, 'index.html'), join(root, 'rescue.html')],
      output: {
        comments: { legal: false },
        codeSplitting: {
          groups: [
            { name: firstLoad, debugName: 'first-load' },
            { name: 'drawing-kit', test: /src\/ui\/drawings\/kit\// },
          ],
        },
      },
    },
  },
  worker: {
    format: 'es',
    plugins: () => [leanWoodTables(), notePackages()],
    rolldownOptions: { output: { comments: { legal: false } } },
  },
  test: {
    environment: 'node',
    // One core fewer, the default, is a single one where there are two.
    maxWorkers: '100%',
    include: ['tests/**/*.test.{ts,tsx}'],
    // Property tests share two cores with whatever else runs.
    testTimeout: 20_000,
    exclude: ['tests/browser/**', 'tests/faults/**', 'node_modules/**'],
  },
});
