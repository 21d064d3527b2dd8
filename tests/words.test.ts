import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodesOf, readSources } from './tools/source-imports.ts';

/** Quaint or translated words that no screen and no document uses, and what to say instead. */
const BANNED: readonly (readonly [RegExp, string])[] = [
  [/\breckon(ed|s|ing)?\b/i, 'worked out, based on'],
  [/\banew\b/i, 'again'],
  [/\bgive or take\b/i, '±'],
  [/\b(told|tell) (me|it)\b/i, 'entered, enter it'],
  [/\bstood in\b/i, 'assumed'],
  [/\bnought\b/i, 'zero'],
  [/\bup the sleeve\b/i, 'No more suggestions'],
  [/\blook round\b/i, 'See a sample workshop'],
  [/\bnot so\?/i, 'Correct it'],
  [/\bmeant so\?/i, 'Correct?'],
  [/\bpassed over\b/i, 'skipped'],
  [/\btaken back\b/i, 'undone'],
  [/\bboth ways\b/i, 'Test a step'],
  [/\bdraw the lots\b/i, 'Assign boxes'],
  [/\bit grabbed\b|\ba grab\b/i, 'a catch'],
  [/\bno leave to\b/i, 'Still do it'],
  [/\bthe usual\b/i, 'the default'],
  [/\bnip the\b|\bchuck home\b/i, 'Bring up lightly; Chuck seated'],
  [/\bwhat came off\b|\bwork wound clear\b/i, 'Work backed off'],
];

/** Files of screens that are still to be rewritten. Take a file out when it is; never add one. */
const STILL_TO_REWRITE: readonly string[] = [
  'src/ui/bench/measure-words.ts',
  'src/ui/bench/plan/form-words.ts',
  'src/ui/bench/plan/words.ts',
  'src/ui/bench/seat/words.ts',
  'src/ui/bench/words.ts',
  'src/ui/set-up/words.ts',
  'src/ui/shell/words.ts',
  'src/ui/shop/rig/words.ts',
];

const textsOf = (program: Parameters<typeof nodesOf>[0]): string[] =>
  [...nodesOf(program)].flatMap((node) => {
    if (node.type === 'JSXText' || (node.type === 'Literal' && typeof node.value === 'string'))
      return [String(node.value)];
    if (node.type === 'TemplateElement') return [(node.value as { readonly cooked: string }).cooked];
    return [];
  });

const bannedIn = (texts: readonly string[]): string[] =>
  texts.flatMap((text) =>
    BANNED.filter(([word]) => word.test(text)).map(([word, say]) => `${text.trim()} (${word}: say ${say})`),
  );

const screens = readSources(new URL('..', import.meta.url).pathname, 'src/ui').map(({ path, program }) => ({
  path,
  found: bannedIn(textsOf(program)),
}));

test('the screens are in plain English', () => {
  const faults = screens.filter(({ path }) => !STILL_TO_REWRITE.includes(path));
  expect(faults.flatMap(({ path, found }) => found.map((each) => `${path}: ${each}`))).toEqual([]);
});

test('a file that has been rewritten leaves the list', () => {
  const clean = screens.filter(({ found }) => found.length === 0).map(({ path }) => path);
  const gone = STILL_TO_REWRITE.filter((path) => !screens.some((screen) => screen.path === path));
  expect([...STILL_TO_REWRITE.filter((path) => clean.includes(path)), ...gone]).toEqual([]);
});

test.each(['README.md', 'DEVELOPERS.md'])('%s is in plain English', (name) => {
  const text = readFileSync(new URL(`../${name}`, import.meta.url), 'utf8');
  expect(bannedIn(text.split('\n'))).toEqual([]);
});
