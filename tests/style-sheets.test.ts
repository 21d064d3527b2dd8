import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const SRC = join(import.meta.dirname, '../src');
const TOKENS = 'ui/shell/tokens.css';

const filesWith = (ending: RegExp): ReadonlyMap<string, string> =>
  new Map(
    readdirSync(SRC, { recursive: true, encoding: 'utf8' })
      .filter((file) => ending.test(file))
      .map((file) => [file, readFileSync(join(SRC, file), 'utf8')]),
  );

const sheets = new Map(
  [...filesWith(/\.css$/)].map(([file, text]) => [file, text.replaceAll(/\/\*.*?\*\/|@import [^;]*;/gs, '')]),
);
const code = [...filesWith(/\.tsx?$/).values()].join('\n');

/** What a pattern finds in every sheet, as "what, in which file". */
const inSheets = (pattern: RegExp, wanted: (found: string, file: string) => boolean): readonly string[] =>
  [...sheets].flatMap(([file, text]) =>
    [...text.matchAll(pattern)]
      .map(([, found = '']) => found)
      .filter((found) => wanted(found, file))
      .map((found) => `${found}, in ${file}`),
  );

/** Literals that could be a class or several: small letters, digits and hyphens, with `${...}` taken out of templates. */
const LITERALS = [/'([a-z0-9 -]+)'/g, /"([a-z0-9 -]+)"/g, /[`}]([a-z0-9 -]+)(?=[`$])/g];

test('no style sheet names a class that no screen writes', () => {
  // A number at the end is put there at run time.
  const bare = (name: string) => name.replace(/\d+$/, '');
  const written = new Set(
    LITERALS.flatMap((literal) =>
      [...code.matchAll(literal)].flatMap(([, text = '']) => text.split(' ')),
    ).map(bare),
  );
  const named = inSheets(/\.([a-z][\w-]*)(?=[^{}]*\{)/g, (name) => !written.has(bare(name)));
  expect(named).toEqual([]);
});

test('every custom property that is used is set', () => {
  const set = new Set(
    [...sheets.values(), code].flatMap((text) => text.match(/--[\w-]+(?=['"]?[:,])/g) ?? []),
  );
  expect(set.size).toBeGreaterThan(20);
  expect(inSheets(/var\((--[\w-]+)/g, (name) => !set.has(name))).toEqual([]);
});

test('colours for the glass are tokens', () => {
  const onGlass = (text: string) => text.replaceAll(/@media print \{.*?\n\}/gs, '');
  const stray = [...sheets]
    .filter(([file]) => file !== TOKENS)
    .flatMap(([file, text]) =>
      (onGlass(text).match(/#[0-9a-f]{3,8}\b|\brgba?\(|\bhsla?\(/g) ?? []).map(
        (colour) => `${colour}, in ${file}`,
      ),
    );
  expect(stray).toEqual([]);
});

test('each colour of the palette is given once, by day and by night', () => {
  const screen = (sheets.get(TOKENS) ?? '').replaceAll(/@media print \{.*?\n\}/gs, '');
  const colours = [...screen.matchAll(/(--[\w-]+): [^;]*#[^;]*;/g)].map(([whole, name]) => ({ whole, name }));
  expect(colours.length).toBeGreaterThan(5);
  expect(new Set(colours.map(({ name }) => name)).size).toBe(colours.length);
  for (const { whole } of colours) expect(whole).toMatch(/: light-dark\(#[0-9a-f]{6}, #[0-9a-f]{6}\);$/);
});
