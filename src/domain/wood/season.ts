import { ok, type Result } from '../result.ts';
import { type MoisturePercent, moisture } from '../units/brands.ts';
import { equilibriumMoisture } from './equilibrium-moisture.ts';

/** Air as a hygrometer shows it: degrees Celsius, and relative humidity in percent. */
export interface Climate {
  readonly celsius: number;
  readonly humidity: number;
}

/** What wood settles at in the driest and the dampest of some climates, and in the shop now. */
export interface Season {
  readonly driest: MoisturePercent;
  readonly dampest: MoisturePercent;
  readonly now: MoisturePercent;
  /** The greater of the two changes from now, percent points: the swing to plan for. */
  readonly swing: MoisturePercent;
}

/**
 * The swing that a box turned in the shop's air must survive in the air of its home, from the moisture that wood settles at. Same ranges and
 * errors as `equilibriumMoisture`; wood lags behind the air by weeks, so it is the most that may come.
 */
export const seasonOf = (shop: Climate, home: readonly [Climate, Climate]): Result<Season> => {
  const settled: MoisturePercent[] = [];
  for (const { celsius, humidity } of [shop, ...home]) {
    const value = equilibriumMoisture(celsius, humidity);
    if (!value.ok) return value;
    settled.push(value.value);
  }
  const [now = moisture(0), ...later] = settled;
  const driest = moisture(Math.min(...later));
  const dampest = moisture(Math.max(...later));
  return ok({
    driest,
    dampest,
    now,
    swing: moisture(Math.max(Math.abs(dampest - now), Math.abs(now - driest))),
  });
};
