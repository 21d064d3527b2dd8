import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DRAWING_LABELS, describeDrawing } from '../../../src/ui/drawings/words.ts';

// The range that the font package states for the latin file the app ships.
const css = readFileSync('node_modules/@fontsource/atkinson-hyperlegible-next/400.css', 'utf8');
const range =
  /latin-400[^}]*unicode-range:([^;]+);/.exec(css.slice(css.lastIndexOf('@font-face')))?.[1] ?? '';
const spans = range.split(',').map((part) => {
  const [from = '', to = from] = part.trim().replace('U+', '').split('-');
  return [Number.parseInt(from, 16), Number.parseInt(to, 16)] as const;
});
const drawable = (character: string): boolean =>
  spans.some(
    ([from, to]) => (character.codePointAt(0) ?? -1) >= from && (character.codePointAt(0) ?? -1) <= to,
  );

describe('the words of the drawings', () => {
  it('use only letters that the page font has', () => {
    expect(drawable('a')).toBe(true);
    expect(drawable('→')).toBe(false);
    const words = [...Object.values(DRAWING_LABELS).flat(), ...Object.values(describeDrawing)].join('');
    expect([...new Set(words)].filter((character) => !drawable(character))).toEqual([]);
  });

  it('are short inside the drawing and whole sentences beside it', () => {
    for (const label of Object.values(DRAWING_LABELS).flat()) expect(label.length).toBeLessThanOrEqual(20);
    for (const sentence of Object.values(describeDrawing)) expect(sentence).toMatch(/^[A-Z].*\.$/);
  });
});
