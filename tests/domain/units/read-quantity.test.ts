import { describe, expect, test } from 'vitest';
import {
  readCount,
  readDegrees,
  readLength,
  readPitch,
  readTurns,
} from '../../../src/domain/units/read-quantity.ts';

const problemOf = (answer: { ok: boolean; error?: { problem: string } }) =>
  answer.ok ? 'accepted' : answer.error?.problem;

describe('a length as a turner types it', () => {
  test.each([
    ['2.474', 'in', 2.474 * 25.4, '2.474 in'],
    ['2,474', 'in', 2.474 * 25.4, '2,474 in'],
    ['1 1/2', 'in', 38.1, '1 1/2 in'],
    ['1-1/2', 'in', 38.1, '1-1/2 in'],
    ['3/32', 'in', 2.38125, '3/32 in'],
    ['3 / 32', 'in', 2.38125, '3 / 32 in'],
    ['2"', 'mm', 50.8, '2 in'],
    ['2″', 'mm', 50.8, '2 in'],
    ['2”', 'mm', 50.8, '2 in'],
    ['2 in', 'mm', 50.8, '2 in'],
    ['2 in.', 'mm', 50.8, '2 in'],
    ['50mm', 'in', 50, '50 mm'],
    ['50 MM', 'in', 50, '50 mm'],
    ['0.004"', 'mm', 0.1016, '0.004 in'],
    ['4 thou', 'mm', 0.1016, '4 thou'],
    ['1½', 'in', 38.1, '1½ in'],
    ['1 ½ "', 'mm', 38.1, '1 ½ in'],
    ['¾', 'in', 19.05, '¾ in'],
    ['1⁄4', 'in', 6.35, '1/4 in'],
    ['.5', 'mm', 0.5, '.5 mm'],
    ['5.', 'mm', 5, '5 mm'],
    ['2,', 'in', 50.8, '2 in'],
    ['  62.840  ', 'mm', 62.84, '62.840 mm'],
    ['0', 'mm', 0, '0 mm'],
    ['3/2', 'in', 38.1, '3/2 in'],
  ] as const)('%s, bare in %s', (typed, bare, mm, text) => {
    const answer = readLength('bore', typed, bare);
    expect(answer.ok && answer.value.mm).toBeCloseTo(mm, 9);
    expect(answer.ok && answer.value.text).toBe(text);
  });

  test('its own text reads as the same length whatever the bare unit', () => {
    for (const typed of ['2,474', '1-1/2', '1½', '4 thou', '50mm', '3 / 32']) {
      const first = readLength('bore', typed, 'in');
      const again = first.ok ? readLength('bore', first.value.text, 'mm') : first;
      expect(again).toEqual(first);
    }
  });

  test.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['1/0', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['Infinity', 'not-a-number'],
    ['-', 'not-a-number'],
    ['mm', 'not-a-number'],
    ['1,234.5', 'not-a-number'],
    ['1.234,5', 'not-a-number'],
    ['1.2.3', 'not-a-number'],
    ['1 3/2', 'not-a-number'],
    ['2½0', 'not-a-number'],
    ['1/2½', 'not-a-number'],
    ['11/2', 'ambiguous'],
    ['-17/16 in', 'ambiguous'],
    ['1.5 1/2', 'not-a-number'],
    ['1/2/3', 'not-a-number'],
    ['1 2', 'not-a-number'],
    ['9'.repeat(400), 'not-a-number'],
    ['1e3', 'unknown-unit'],
    ['0x10', 'unknown-unit'],
    ["2'", 'unknown-unit'],
    ['2 mil', 'unknown-unit'],
    ['2 ft', 'unknown-unit'],
    ['2 %', 'unknown-unit'],
    ['2001 mm', 'out-of-range'],
    ['80 in', 'out-of-range'],
    ['-1', 'out-of-range'],
    ['−1', 'out-of-range'],
  ])('refuses %s as %s', (typed, problem) => {
    expect(problemOf(readLength('bore', typed, 'mm'))).toBe(problem);
  });

  test('a fraction whose space was missed is asked about, with both readings', () => {
    expect(readLength('bore', '11/2"', 'mm')).toEqual({
      ok: false,
      error: { problem: 'ambiguous', field: 'bore', typed: '11/2"', readings: ['1 1/2', '5 1/2'] },
    });
  });

  test('a refusal names its field and the range in mm', () => {
    const answer = readLength('opening', '5 in', 'mm', { min: 10, max: 120 });
    expect(answer).toEqual({
      ok: false,
      error: { problem: 'out-of-range', field: 'opening', given: 127, min: 10, max: 120, quantity: 'length' },
    });
  });

  test.each([
    ['-2 thou', -0.0508],
    ['-1/64"', -0.396875],
    ['−0.05', -0.05],
    ['-1 1/2 in', -38.1],
    ['-0', 0],
  ])('where it is allowed, %s is negative', (typed, mm) => {
    const answer = readLength('allowance', typed, 'mm', { min: -40, max: 40 });
    expect(answer.ok && answer.value.mm).toBeCloseTo(mm, 9);
    expect(answer.ok && Object.is(answer.value.mm, -0)).toBe(false);
  });
});

describe('a pitch', () => {
  test.each([
    ['10 tpi', 'mm', 2.54, '10 tpi'],
    ['10', 'tpi', 2.54, '10 tpi'],
    ['11.5 TPI', 'mm', 25.4 / 11.5, '11.5 tpi'],
    ['2.5', 'mm', 2.5, '2.5 mm'],
    ['2,5 mm', 'tpi', 2.5, '2,5 mm'],
    ['1/10 in', 'tpi', 2.54, '1/10 in'],
  ] as const)('%s, bare in %s', (typed, bare, mm, text) => {
    const answer = readPitch('pitch', typed, bare);
    expect(answer.ok && answer.value.mm).toBeCloseTo(mm, 9);
    expect(answer.ok && answer.value.text).toBe(text);
  });

  test.each([
    ['0 tpi', 'out-of-range'],
    ['-10 tpi', 'out-of-range'],
    ['1 tpi', 'out-of-range'],
    ['60 tpi', 'out-of-range'],
    ['10 mm', 'out-of-range'],
    ['ten', 'not-a-number'],
    ['', 'empty'],
    ['10 rpm', 'unknown-unit'],
    ['11/2 mm', 'ambiguous'],
  ])('refuses %s as %s', (typed, problem) => {
    expect(problemOf(readPitch('pitch', typed, 'tpi'))).toBe(problem);
  });
});

test('a pitch out of range is refused as a pitch, so that the words can say tpi', () => {
  const answer = readPitch('pitch', '60 tpi', 'tpi');
  expect(answer.ok === false && answer.error).toMatchObject({ quantity: 'pitch', min: 0.5, max: 6.35 });
});

describe('turns, counts, degrees and percents', () => {
  test.each([
    ['3 1/2', 3.5],
    ['3½ turns', 3.5],
    ['1 turn', 1],
    ['2,25', 2.25],
  ])('%s turns', (typed, value) => expect(readTurns('stop', typed)).toEqual({ ok: true, value }));

  test('a count is whole', () => {
    expect(readCount('teeth', '2')).toEqual({ ok: true, value: 2 });
    expect(problemOf(readCount('teeth', '2.5'))).toBe('not-a-number');
    expect(problemOf(readCount('teeth', '0', { min: 1, max: 8 }))).toBe('out-of-range');
    expect(problemOf(readCount('teeth', '2 mm'))).toBe('unknown-unit');
  });

  test.each([
    ['40', 40],
    ['40°', 40],
    ['0.5 deg', 0.5],
  ])('%s is an angle', (typed, value) => expect(readDegrees('to-go', typed)).toEqual({ ok: true, value }));

  test('an angle out of range is refused in radians', () => {
    const answer = readDegrees('to-go', '720');
    expect(answer.ok === false && answer.error.problem === 'out-of-range' && answer.error.given).toBeCloseTo(
      4 * Math.PI,
      12,
    );
    expect(answer.ok === false && answer.error.problem === 'out-of-range' && answer.error.max).toBeCloseTo(
      2 * Math.PI,
      12,
    );
  });
});
