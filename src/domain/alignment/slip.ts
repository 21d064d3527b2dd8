import { SLOPE } from '../joint/profile.ts';
import { firstRefusal, ok, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { length } from './inputs.ts';

/**
 * How far a groove may have slipped along the work since an earlier pass, and the last pass still cuts every trace of it away, mm:
 * (dN - dj) tan A. Anything more thins the ridge by the rest. A pass to the same depth again absorbs nothing. Depths are radial, from
 * touch-off, the last to 24 mm and the earlier one no deeper. Within 0.2 um of simulated passes.
 */
export const slipAbsorbed = (lastDepth: Millimetres, earlierDepth: Millimetres): Result<Millimetres> => {
  const bad = firstRefusal(
    length('lastDepth', lastDepth, 24),
    within('earlierDepth', earlierDepth, 0, lastDepth),
  );
  return bad ? refuse(bad) : ok(mm((lastDepth - earlierDepth) * SLOPE));
};
