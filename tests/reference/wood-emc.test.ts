/** Equilibrium moisture: Wood Handbook FPL-GTR-190 (2010) and FPL-GTR-282 (2021), Table 4-2, as copied into shared/emc.json. */
import { expect, test } from 'vitest';
import table from '../../shared/emc.json' with { type: 'json' };
import { equilibriumMoisture } from '../../src/domain/wood/equilibrium-moisture.ts';
import { gotten } from '../domain/joint/results.ts';

/** The table is in whole degrees Fahrenheit. */
const celsius = (tF: number): number => ((tF - 32) * 5) / 9;

test('the 80 copied points of Table 4-2, within 0.062 % moisture', () => {
  expect(table.table_4_2).toHaveLength(80);
  const off = table.table_4_2.map(({ tF, rh, published }) =>
    Math.abs(gotten(equilibriumMoisture(celsius(tF), rh)) - published),
  );
  expect(Math.max(...off)).toBeLessThanOrEqual(0.062);
});

test('the spot checks of the 2021 edition, within 0.062 %', () => {
  expect(table.spot_check_2021.length).toBeGreaterThanOrEqual(10);
  for (const { tC, rh, published } of table.spot_check_2021)
    expect(Math.abs(gotten(equilibriumMoisture(tC, rh)) - published), `${tC} C ${rh} %`).toBeLessThanOrEqual(
      0.062,
    );
});

test('the coefficients are those of equation 4-5 in the file', () => {
  const { W, K, K1, K2 } = table.coefficients.celsius;
  const at = ([a = 0, b = 0, c = 0]: readonly number[], t: number) => a + b * t + c * t * t;
  for (const t of [0, 20, 50])
    for (const h of [0.1, 0.5, 0.9]) {
      const [w, k, k1, k2] = [at(W, t), at(K, t), at(K1, t), at(K2, t)];
      const kh = k * h;
      const wanted =
        (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh));
      expect(gotten(equilibriumMoisture(t, 100 * h))).toBeCloseTo(wanted, 10);
    }
});
