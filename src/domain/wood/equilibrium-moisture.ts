import { firstRefusal, ok, type Result, refuse, within } from '../result.ts';
import { type MoisturePercent, moisture } from '../units/brands.ts';

/** c0 + c1 T + c2 T^2, T in degrees Celsius. */
const polynomial = (c0: number, c1: number, c2: number, t: number): number => c0 + c1 * t + c2 * t * t;

/**
 * Moisture content that wood settles at in still air, percent of its oven-dry mass.
 * Temperature -1.1 to 55 degrees C, relative humidity 0 to 95 %.
 * Two-hydrate Hailwood-Horrobin equation with the Celsius coefficients of Wood Handbook FPL-GTR-282 (2021), equation 4-5; within 0.062 of
 * its Table 4-2. The table is made for Sitka spruce, midway between drying and wetting: other woods differ, so 0.1 % shows trends only.
 */
export const equilibriumMoisture = (celsius: number, humidity: number): Result<MoisturePercent> => {
  const refusal = firstRefusal(
    within('temperature', celsius, -1.2, 55, 'ratio'),
    within('humidity', humidity, 0, 95, 'percent'),
  );
  if (refusal) return refuse(refusal);
  const h = humidity / 100;
  const w = polynomial(349, 1.29, 0.0135, celsius);
  const k = polynomial(0.805, 0.000736, -0.00000273, celsius);
  const k1 = polynomial(6.27, -0.00938, -0.000303, celsius);
  const k2 = polynomial(1.91, 0.0407, -0.000293, celsius);
  const kh = k * h;
  const bound = k1 * kh + 2 * k1 * k2 * kh ** 2;
  return ok(moisture((1800 / w) * (kh / (1 - kh) + bound / (1 + k1 * kh + k1 * k2 * kh ** 2))));
};
