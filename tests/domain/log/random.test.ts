import { expect, test } from 'vitest';
import { seededRandom } from '../../../src/domain/random.ts';

const SIZE = 40_000;
const draws = <T>(draw: () => T): T[] => Array.from({ length: SIZE }, draw);

test('the same seed and stream give the same numbers, others give others', () => {
  const list = (seed: number, stream?: number) => {
    const random = seededRandom(seed, stream);
    return Array.from({ length: 20 }, random.unit);
  };
  expect(list(7)).toEqual(list(7));
  const all = [list(7), list(8), list(7, 1), list(8, 1)];
  expect(new Set(all.flat()).size).toBe(80);
});

test('numbers fill the unit evenly, also the first ones of neighbouring seeds', () => {
  const random = seededRandom(1);
  for (const found of [draws(random.unit), Array.from({ length: SIZE }, (_, i) => seededRandom(i).unit())]) {
    const bins = new Array<number>(20).fill(0);
    for (const x of found) bins[Math.floor(x * 20)] = (bins[Math.floor(x * 20)] ?? 0) + 1;
    const chi = bins.reduce((sum, n) => sum + (n - SIZE / 20) ** 2 / (SIZE / 20), 0);
    // 0.9999 quantile of chi-square with 19 degrees of freedom is about 50.8 (from memory).
    expect(chi).toBeLessThan(50.8);
  }
});

test('a number tells nothing of the next, nor of its neighbour in another stream', () => {
  const random = seededRandom(3);
  const next = draws(random.unit);
  const beside = draws(seededRandom(3, 1).unit);
  const first = draws(seededRandom(3).unit);
  const correlation = (x: readonly number[], y: readonly number[]) =>
    x.reduce((sum, a, i) => sum + (a - 0.5) * ((y[i] ?? 0.5) - 0.5), 0) / (SIZE / 12);
  expect(Math.abs(correlation(next, next.slice(1)))).toBeLessThan(4 / Math.sqrt(SIZE));
  expect(Math.abs(correlation(first, beside))).toBeLessThan(4 / Math.sqrt(SIZE));
});

test('normal numbers have their mean, deviation and tails', () => {
  const random = seededRandom(5);
  const found = draws(() => random.normal(10, 2));
  const mean = found.reduce((sum, x) => sum + x, 0) / SIZE;
  const deviation = Math.sqrt(found.reduce((sum, x) => sum + (x - mean) ** 2, 0) / SIZE);
  expect(Math.abs(mean - 10)).toBeLessThan((4 * 2) / Math.sqrt(SIZE));
  expect(Math.abs(deviation - 2)).toBeLessThan((4 * 2) / Math.sqrt(2 * SIZE));
  const beyond = found.filter((x) => Math.abs(x - 10) > 2 * 1.96).length / SIZE;
  expect(Math.abs(beyond - 0.05)).toBeLessThan(4 * Math.sqrt((0.05 * 0.95) / SIZE));
});

test('whole numbers include both ends, choices follow their weights', () => {
  const random = seededRandom(9);
  expect(new Set(draws(() => random.whole(2, 5)))).toEqual(new Set([2, 3, 4, 5]));
  const heavy = draws(() => random.weighted(['a', 'b', 'never'], (x) => ({ a: 3, b: 1, never: 0 })[x] ?? 0));
  expect(heavy).not.toContain('never');
  expect(Math.abs(heavy.filter((x) => x === 'a').length / SIZE - 0.75)).toBeLessThan(
    4 * Math.sqrt(0.1875 / SIZE),
  );
  expect(draws(() => random.chance(0)).some(Boolean)).toBe(false);
  expect(draws(() => random.chance(1)).every(Boolean)).toBe(true);
});
