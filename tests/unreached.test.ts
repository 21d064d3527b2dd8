import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readSource, readSources } from './tools/source-imports.ts';
import { type UnreachedExport, unreachedExports } from './tools/unreached-exports.ts';

const ROOT = new URL('../', import.meta.url).pathname;

/** Scripts of our own that a page of the app starts. */
const scriptsOf = (page: string): readonly string[] =>
  [...readFileSync(`${ROOT}${page}`, 'utf8').matchAll(/<script type="module" src="\.\/(src\/[^"]+)"/g)].map(
    ([, script]) => script ?? '',
  );

/** Where shipped code starts. Workers are found from the code that starts them. */
const ENTRIES = [...scriptsOf('index.html'), ...scriptsOf('rescue.html'), 'src/sw/sw.ts'];

interface Waiting {
  readonly of: RegExp;
  readonly why: string;
}

/** Being rewritten at this moment. An entry that nothing needs any more fails below, so that the list can only shrink. */
const WAITING: readonly Waiting[] = [
  {
    of: /^src\/domain\/(diagnosis\/|joint\/engagement\.ts engagementPercent$)/,
    why: 'The diagnosis is being improved.',
  },
];

const sources = readSources(ROOT, 'src');
const tests = readSources(ROOT, 'tests');
const nameOf = ({ path, name }: UnreachedExport): string => `${path} ${name}`;

/** What must go: nothing that ships gets there; or only its own file does and no test, so that it need not be exported. */
const unreached = (): readonly string[] => {
  const byTests = unreachedExports(
    [...sources, ...tests],
    [...ENTRIES, ...tests.map(({ path }) => path)],
  ).map(nameOf);
  return unreachedExports(sources, ENTRIES).flatMap((found) => {
    const name = nameOf(found);
    if (found.reach === 'nowhere') return [`${name}: no shipped entry reaches it. Remove it and its tests.`];
    return byTests.includes(name) ? [`${name}: only its own file uses it. Take off its export.`] : [];
  });
};

describe('every export', () => {
  const found = unreached();

  test('of many is looked at, from every entry', () => {
    expect(sources.length).toBeGreaterThan(50);
    expect(tests.length).toBeGreaterThan(50);
    expect(ENTRIES).toEqual(['src/main.tsx', 'src/storage/backup/rescue.ts', 'src/sw/sw.ts']);
  });

  test('is reached by something that ships', () =>
    expect(found.filter((name) => !WAITING.some(({ of }) => of.test(name.split(':')[0] ?? '')))).toEqual([]));

  test.each(WAITING)('waits only while it must: $why', ({ of }) =>
    expect(found.filter((name) => of.test(name.split(':')[0] ?? ''))).not.toEqual([]),
  );
});

describe('the check itself', () => {
  const from = (files: Readonly<Record<string, string>>) =>
    unreachedExports(
      Object.entries(files).map(([name, text]) => readSource(`src/${name}`, text)),
      ['src/main.ts'],
    ).map(({ path, name, reach }) => `${path.slice(4)} ${name} ${reach}`);

  const LIBRARY = 'export const used = 1; export const left = 2; export interface Shape {} export default 3;';

  test.each([
    ['a named import', "import { used } from './a.ts'; used;", ['left', 'Shape', 'default']],
    ['a renamed import', "import { used as mine } from './a.ts'; mine;", ['left', 'Shape', 'default']],
    ['a default import', "import it from './a.ts'; it;", ['used', 'left', 'Shape']],
    [
      'a type',
      "import type { Shape } from './a.ts'; let x: Shape | null = null; x;",
      ['used', 'left', 'default'],
    ],
    [
      'a type expression',
      "type T = import('./a.ts').Shape; let x: T | null = null; x;",
      ['used', 'left', 'default'],
    ],
    [
      'a taken apart import()',
      "const { used } = await import('./a.ts'); used;",
      ['left', 'Shape', 'default'],
    ],
    ['a then of import()', "import('./a.ts').then(({ left }) => left);", ['used', 'Shape', 'default']],
    ['a member of import()', "(await import('./a.ts')).left;", ['used', 'Shape', 'default']],
    [
      'an import() handed on, which gives the default',
      "show(() => import('./a.ts'));",
      ['used', 'left', 'Shape'],
    ],
    [
      'a use in JSX',
      "import Used, { left as Left } from './a.ts'; show(<Left used={Used} />);",
      ['used', 'Shape'],
    ],
    ['an import that nothing uses', "import { used } from './a.ts';", ['used', 'left', 'Shape', 'default']],
    ['an import for its side effects', "import './a.ts';", ['used', 'left', 'Shape', 'default']],
    [
      'a local name that hides the import',
      "import { used } from './a.ts'; ((used: number) => used)(1);",
      ['used', 'left', 'Shape', 'default'],
    ],
    [
      'a member of another thing',
      "import { used } from './a.ts'; show.used({ used: 1 });",
      ['used', 'left', 'Shape', 'default'],
    ],
  ])('%s', (_, text, expected) => {
    const files = [readSource('src/main.tsx', text), readSource('src/a.ts', LIBRARY)];
    expect(unreachedExports(files, ['src/main.tsx']).map(({ name }) => name)).toEqual(expected);
  });

  test('a namespace or an import() without a default gives everything, for nobody can tell', () => {
    const plain = 'export const one = 1; export const two = 2;';
    expect(from({ 'main.ts': "import * as all from './a.ts'; all;", 'a.ts': plain })).toEqual([]);
    expect(from({ 'main.ts': "show(import('./a.ts'));", 'a.ts': plain })).toEqual([]);
  });

  test('an export passed on is reached through whoever passes it on', () => {
    const through = (text: string) =>
      from({
        'main.ts': "import { one } from './b.ts'; one;",
        'b.ts': text,
        'a.ts': 'export const one = 1; export const two = 2;',
      });
    expect(through("export { one } from './a.ts';")).toEqual(['a.ts two nowhere']);
    expect(through("export { two as one } from './a.ts';")).toEqual(['a.ts one nowhere']);
    expect(through("export * from './a.ts';")).toEqual(['a.ts two nowhere']);
    expect(through("import { one } from './a.ts'; export { one };")).toEqual(['a.ts two nowhere']);
  });

  test('what only something unreached uses is unreached too', () => {
    expect(
      from({
        'main.ts': "import { one } from './a.ts'; one;",
        'a.ts': "import { deep, deeper } from './b.ts'; export const one = deep; export const two = deeper;",
        'b.ts': 'export const deep = 1; export const deeper = 2;',
      }),
    ).toEqual(['a.ts two nowhere', 'b.ts deeper nowhere']);
  });

  test('what runs when a file is loaded counts, in a loaded file alone', () => {
    const files = (main: string) => ({
      'main.ts': main,
      'a.ts': "import { deep } from './b.ts'; deep();",
      'b.ts': 'export const deep = () => 1;',
    });
    expect(from(files("import './a.ts';"))).toEqual([]);
    expect(from(files("import('./a.ts');"))).toEqual([]);
    expect(from(files("new Worker(new URL('./a.ts', import.meta.url));"))).toEqual([]);
    expect(from(files("import type {} from './a.ts';"))).toEqual(['b.ts deep nowhere']);
  });

  test('an export that only its own file uses is told apart', () => {
    expect(
      from({
        'main.ts': "import { one } from './a.ts'; one;",
        'a.ts': 'export const inner = 1; export const one = inner;',
      }),
    ).toEqual(['a.ts inner own-file']);
  });

  test('an entry that is not there is an error', () => {
    expect(() => unreachedExports([], ['src/main.ts'])).toThrow('no such entry');
  });
});
