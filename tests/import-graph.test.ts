import { describe, expect, test } from 'vitest';
import { nameOf, nodesOf, readSource, readSources, type SourceFile } from './tools/source-imports.ts';

const ROOT = new URL('../', import.meta.url).pathname;

interface Rule {
  readonly from: RegExp;
  readonly may: readonly RegExp[];
  readonly why: string;
}

/** Files of words: those shared by several screens, and those beside the screen they belong to. */
const WORDS = /^src\/ui\/(words\/|.*\bwords\.ts$)/;

/** Who may import whom. The first rule that fits a file is its rule. A package stands by its name, a file by its path. */
const TABLE: readonly Rule[] = [
  {
    from: /^src\/domain\/log\/validate/,
    may: [/^src\/domain\//, /^valibot$/],
    why: 'Foreign data is checked in the domain, and valibot is used for nothing else.',
  },
  {
    from: /^src\/domain\/sha256\.ts$/,
    may: [/^@noble\/hashes$/],
    why: 'One hash for backups and photos, from one library.',
  },
  {
    from: /^src\/domain\/(findings|experiment)\//,
    may: [/^src\/domain\//, /^shared\//, /^@stdlib\//],
    why: 'Findings are pure and take their distributions from one probability library.',
  },
  {
    from: /^src\/domain\//,
    may: [/^src\/domain\//, /^shared\//],
    why: 'The domain knows no storage, screen, browser or library: time, ids and chance are arguments.',
  },
  {
    from: /^src\/storage\/backup\//,
    may: [/^src\/(storage|domain)\//, /^fflate$/],
    why: 'Backups are the only place that packs and unpacks files.',
  },
  {
    from: /^src\/storage\/in-memory\.ts$/,
    may: [/^fake-indexeddb$/],
    why: 'What stands in for IndexedDB in memory, loaded where there is none.',
  },
  {
    from: /^src\/storage\//,
    may: [/^src\/storage\/(?!backup\/)/, /^src\/domain\//, /^idb$/],
    why: 'Storage is the only place that imports idb; it never pulls backups into the first load.',
  },
  {
    from: /^src\/platform\/update\.ts$/,
    may: [/^src\/platform\//, /^workbox-window$/],
    why: 'Updates are the only use of workbox-window.',
  },
  {
    from: /^src\/platform\//,
    may: [/^src\/platform\//, /^src\/domain\//, /^src\/workers\/(photo|findings|diagnosis)(-message)?\.ts$/],
    why: 'A seam to the browser is thin: it knows the terms of the domain and the worker it starts, nothing else.',
  },
  {
    from: /^src\/app\//,
    may: [/^src\/(app|domain|storage|platform)\//, /^src\/workers\//, /^shared\//, /^@preact\/signals-core$/],
    why: 'Use cases join domain, storage and platform, and never draw.',
  },
  {
    from: WORDS,
    may: [WORDS, /^src\/(domain|app|platform)\//, /^date-fns$/],
    why: 'Words are made from what the other layers say, and draw nothing.',
  },
  {
    from: /^src\/ui\//,
    may: [
      /^src\/(ui|app|domain|platform)\//,
      /^preact$/,
      /^@preact\/signals$/,
      /^d3-(array|shape)$/,
      /^date-fns$/,
    ],
    why: 'A screen asks app for what is stored; it never opens the store itself.',
  },
  {
    from: /^src\/workers\/photo/,
    may: [/^src\/workers\/photo/, /^src\/domain\/sha256\.ts$/],
    why: 'The photo worker gets a file and gives bytes back; it never opens the database.',
  },
  {
    from: /^src\/workers\//,
    may: [/^src\/(workers|domain|storage)\//, /^src\/platform\/ids\.ts$/],
    why: 'Workers calculate and store; they have no screen.',
  },
  {
    from: /^src\/sw\//,
    may: [/^src\/sw\//, /^workbox-(core|precaching|routing)$/],
    why: 'The service worker stands alone: a fault of the app must not take the offline start with it.',
  },
  {
    from: /^src\/main\.tsx$/,
    may: [/^src\/(app|ui|platform)\//, /^preact$/, /^@preact\/signals$/],
    why: 'Start-up joins app and ui and does nothing itself.',
  },
];

/** Files that an import of a type alone may reach besides: types vanish in the build. */
const TYPES_MAY: readonly Rule[] = [
  {
    from: /^src\/ui\//,
    may: [/^src\/storage\/(failure|schema|backup\/format)\.ts$/],
    why: 'The shape of a failure may be named where its words are.',
  },
  {
    from: WORDS,
    may: [/^src\/ui\/drawings\//],
    why: 'Every drawing has its sentence, and the type says that none is forgotten.',
  },
];

const isAsset = (target: string): boolean =>
  /\.(css|json|svg)$/.test(target) && !target.startsWith('shared/');

const files = readSources(ROOT, 'src');

/** Every import that the table does not allow, with the reason of the rule. */
const brokenRules = (sources: readonly SourceFile[]): string[] =>
  sources.flatMap(({ path, imports }) => {
    const rule = TABLE.find(({ from }) => from.test(path));
    if (!rule) return [`${path}: no rule in the table says what this file may import`];
    return imports.flatMap(({ kind, target }) => {
      const extra = kind === 'type' ? TYPES_MAY.filter(({ from }) => from.test(path)) : [];
      const isAllowed = [rule, ...extra].some(({ may }) => may.some((pattern) => pattern.test(target)));
      return isAllowed || isAsset(target) ? [] : [`${path} imports ${target} (${kind}). ${rule.why}`];
    });
  });

/** Circles of files that need each other to load. Types and import() need nothing at that moment. */
const circles = (sources: readonly SourceFile[]): string[] => {
  const graph = new Map(
    sources.map(({ path, imports }) => [
      path,
      imports.filter((i) => i.kind === 'static').map((i) => i.target),
    ]),
  );
  const done = new Set<string>();
  const found: string[] = [];
  const walk = (path: string, trail: readonly string[]): void => {
    if (trail.includes(path)) found.push([...trail.slice(trail.indexOf(path)), path].join(' > '));
    if (done.has(path) || trail.includes(path)) return;
    for (const next of graph.get(path) ?? []) walk(next, [...trail, path]);
    done.add(path);
  };
  for (const path of graph.keys()) walk(path, []);
  return found;
};

interface Ban {
  readonly where: (path: string) => boolean;
  readonly finds: (node: Parameters<typeof nodesOf>[0]) => boolean;
  readonly why: string;
}

const isDomain = (path: string): boolean => path.startsWith('src/domain/');
const isCall = (node: { type: string }): boolean => node.type === 'CallExpression';
const WRITES = /(^|\.)(db|database|connection\(\))\.(put|add|delete|clear)$/i;

const BANS: readonly Ban[] = [
  {
    where: isDomain,
    finds: (node) =>
      /^(globalThis\.)?(Date\.now|Math\.random|performance\.now|crypto\.\w+)$/.test(nameOf(node)) ||
      (node.type === 'NewExpression' &&
        nameOf(node.callee) === 'Date' &&
        (node.arguments as unknown[]).length === 0) ||
      (isCall(node) && nameOf(node.callee) === 'Date'),
    why: 'Time and chance are arguments of the domain, so that the same facts always give the same answer.',
  },
  {
    where: (path) => path !== 'src/storage/write.ts',
    finds: (node) =>
      (isCall(node) && WRITES.test(nameOf(node.callee))) ||
      (node.type === 'Literal' && node.value === 'readwrite'),
    why: 'There is one way to write, src/storage/write.ts: it alone makes a write durable before anyone hears of it.',
  },
  {
    where: (path) => !path.startsWith('src/sw/'),
    finds: (node) =>
      (isCall(node) && /^((globalThis|self|window)\.)?fetch$/.test(nameOf(node.callee))) ||
      (isCall(node) && /\bsendBeacon$/.test(nameOf(node.callee))) ||
      (node.type === 'NewExpression' &&
        /^(XMLHttpRequest|WebSocket|EventSource|RTCPeerConnection)$/.test(nameOf(node.callee))),
    why: 'Nothing leaves the phone: only the service worker asks the network, for the app itself.',
  },
];

const brokenBans = (sources: readonly SourceFile[]): string[] =>
  BANS.flatMap(({ where, finds, why }) =>
    sources
      .filter(({ path }) => where(path))
      .flatMap(({ path, program }) =>
        [...nodesOf(program)].filter(finds).map((node) => `${path} at ${node.start}. ${why}`),
      ),
  );

/** Packages too heavy for the path to the first tap. */
const LATER = /^(workbox-window|date-fns|valibot|fflate|d3-\w+|@stdlib\/.*)$/;

const firstLoad = (sources: readonly SourceFile[], start: string): string[] => {
  const byPath = new Map(sources.map((source) => [source.path, source]));
  const reached = new Set<string>();
  const heavy: string[] = [];
  const walk = (path: string): void => {
    if (reached.has(path)) return;
    reached.add(path);
    for (const { kind, target } of byPath.get(path)?.imports ?? []) {
      if (kind !== 'static') continue;
      if (LATER.test(target))
        heavy.push(`${path} imports ${target} on the way to the first tap. Fetch it later with import().`);
      walk(target);
    }
  };
  walk(start);
  return heavy;
};

describe('the source', () => {
  test('is there', () => {
    expect(files.length).toBeGreaterThan(50);
    for (const layer of ['domain', 'storage', 'platform', 'app', 'ui', 'workers', 'sw'])
      expect(files.filter(({ path }) => path.startsWith(`src/${layer}/`)).length, layer).toBeGreaterThan(0);
    expect(files.map(({ path }) => path)).toContain('src/main.tsx');
  });

  test('imports only what the table allows', () => expect(brokenRules(files)).toEqual([]));
  test('has no circle', () => expect(circles(files)).toEqual([]));
  test(
    'keeps clocks, chance, writes and the network where they belong',
    () => expect(brokenBans(files)).toEqual([]),
    30_000,
  );
  test('has nothing heavy on the way to the first tap', () =>
    expect(firstLoad(files, 'src/main.tsx')).toEqual([]));
});

describe('the check itself sees', () => {
  const at = (path: string, text: string) => [readSource(path, text)];

  test.each([
    ['static', "import { openDB } from 'idb';"],
    ['type', "import type { IDBPDatabase } from 'idb';"],
    ['inline type', "import { type IDBPDatabase } from 'idb';"],
    ['type expression', "type Db = import('idb').IDBPDatabase;"],
    ['dynamic', "const later = () => import('idb');"],
    ['computed', 'const later = (name: string) => import(name);'],
    ['re-exported', "export * from 'idb';"],
    ['re-exported by name', "export { openDB } from 'idb';"],
    ['re-exported type', "export type { IDBPDatabase } from 'idb';"],
    ['worker', "new Worker(new URL('../../storage/write.ts', import.meta.url), { type: 'module' });"],
    ['deep', "import '../../storage/write.ts';"],
    ['package part', "import 'idb/with-async-ittr';"],
  ])('a forbidden import: %s', (_, text) => {
    expect(brokenRules(at('src/domain/joint/bad.ts', text))).toHaveLength(1);
    expect(brokenRules(at('src/domain/joint/bad.ts', text))[0]).toContain('The domain knows no storage');
  });

  test('a file that no rule speaks of', () => {
    expect(brokenRules(at('src/helpers/bad.ts', ''))).toHaveLength(1);
  });

  test('a circle, but not one of types or of import()', () => {
    const circle = (second: string) => [
      readSource('src/app/a.ts', "import './b.ts';"),
      readSource('src/app/b.ts', second),
    ];
    expect(circles(circle("import './a.ts';"))).toEqual(['src/app/a.ts > src/app/b.ts > src/app/a.ts']);
    expect(circles(circle("import type { A } from './a.ts';"))).toEqual([]);
    expect(circles(circle("import('./a.ts');"))).toEqual([]);
  });

  test.each([
    'Date.now()',
    'const clock = Date.now;',
    'new Date()',
    'Date()',
    'Math.random()',
    'performance.now()',
    'globalThis.Date.now()',
    'crypto.randomUUID()',
  ])('a clock or chance in the domain: %s', (text) => {
    expect(brokenBans(at('src/domain/joint/bad.ts', text))).toHaveLength(1);
    expect(brokenBans(at('src/platform/fine.ts', text))).toEqual([]);
  });
  test('but a date of a given moment is fine', () => {
    expect(brokenBans(at('src/domain/log/fine.ts', 'new Date(at)'))).toEqual([]);
  });

  test.each([
    'db.put("records", x)',
    '(await connection()).add("events", x)',
    'this.db.delete("a", 1)',
    'db.transaction("a", "readwrite")',
  ])('a write past the one function: %s', (text) => {
    expect(brokenBans(at('src/storage/bad.ts', text))).toHaveLength(1);
    expect(brokenBans(at('src/storage/write.ts', text))).toEqual([]);
  });

  test.each([
    'fetch("/x")',
    'window.fetch("/x")',
    'navigator.sendBeacon("/x")',
    'new WebSocket("wss://x")',
    'new XMLHttpRequest()',
  ])('the network outside the service worker: %s', (text) => {
    expect(brokenBans(at('src/app/bad.ts', text))).toHaveLength(1);
    expect(brokenBans(at('src/sw/fine.ts', text))).toEqual([]);
  });

  test('a heavy package on the first load, but not behind import()', () => {
    const load = (text: string) => [
      readSource('src/main.tsx', "import './app/a.ts';"),
      readSource('src/app/a.ts', text),
      readSource('src/app/b.ts', "import 'date-fns';"),
    ];
    expect(firstLoad(load("import './b.ts';"), 'src/main.tsx')).toHaveLength(1);
    expect(firstLoad(load("import('./b.ts');"), 'src/main.tsx')).toEqual([]);
  });
});
