import { expect, test } from 'vitest';
import { turnsWords } from '../../src/ui/words/dial.ts';

const said = (count: number) => turnsWords(count).replaceAll('\u00a0', ' ');

test('eighths that an eye can set are written as fractions, anything else as a decimal', () => {
  expect(said(1.5)).toBe('1 1/2 turns');
  expect(said(0.5)).toBe('1/2 turn');
  expect(said(0.878)).toBe('7/8 turn');
  // On a screw of 1.27 mm, 7/8 would be 0.03 mm shallower.
  expect(said(0.898)).toBe('0.90 turn');
  expect(said(1.3)).toBe('1.30 turns');
  expect(said(0.06)).toBe('0.06 turn');
  expect(said(2)).toBe('2 turns');
});
