import { describe, expect, test } from 'vitest';
import { readLength, readPitch } from '../../src/domain/units/read-quantity.ts';
import { refusalWords } from '../../src/ui/words/refusal.ts';

const wordsFor = (
  answer: { ok: true } | { ok: false; error: Parameters<typeof refusalWords>[0] },
  unit: 'in' | 'mm',
) => (answer.ok ? 'accepted' : refusalWords(answer.error, 'Opening', unit));

describe('a refusal in the words of the person', () => {
  test('limits are rounded to what a person would say, and lie inside the range', () => {
    const opening = { min: 6, max: 400 };
    expect(wordsFor(readLength('opening', '20', 'in', opening), 'in')).toBe(
      'Opening: 20 in is too large. It can be 1/4 in to 15 1/2 in.',
    );
    expect(wordsFor(readLength('opening', '2', 'mm', opening), 'mm')).toBe(
      'Opening: 2 mm is too small. It can be 6 mm to 400 mm.',
    );
    expect(wordsFor(readLength('clearance', '3 in', 'in', { min: 0.05, max: 2 }), 'in')).toBe(
      'Opening: 3 in is too large. It can be 0.002 in to 0.075 in.',
    );
  });

  test('a pitch is refused in tpi to those who work in inches, in mm to the others', () => {
    expect(wordsFor(readPitch('pitch', '60 tpi', 'tpi'), 'in')).toBe(
      'Opening: 60 tpi is too fine. It can be 4 tpi to 50 tpi.',
    );
    expect(wordsFor(readPitch('pitch', '9 mm', 'mm'), 'mm')).toBe(
      'Opening: 9 mm is too coarse. It can be 0.5 mm to 6.35 mm.',
    );
    expect(wordsFor(readPitch('pitch', '0', 'tpi'), 'in')).toBe('Opening: It can be 4 tpi to 50 tpi.');
  });

  test('a fraction with its space missed is asked about', () => {
    expect(wordsFor(readLength('opening', '11/2', 'in'), 'in')).toBe(
      'Opening: “11/2” can be 1 1/2 or 5 1/2. Type the one you mean.',
    );
  });

  test('what is no number never shows as one', () => {
    for (const quantity of ['length', 'angle', 'percent', 'turns', 'count', 'ratio', 'pitch'] as const)
      expect(
        refusalWords(
          { problem: 'out-of-range', field: 'x', given: Number.NaN, min: -Infinity, max: Infinity, quantity },
          'Turns',
          'mm',
        ),
      ).not.toMatch(/NaN|Infinity/);
  });
});
