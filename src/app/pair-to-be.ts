import type { Pair } from '../domain/joint/fit.ts';
import type { PlannedPass } from '../domain/joint/plan.ts';
import { ok, type Result } from '../domain/result.ts';
import type { Part } from '../domain/setup/events.ts';
import { passesTo, type Reckoned } from './plan-of.ts';

/** What the second piece is cut to: a tenon off its size, to the depth that suits it. */
export const passesOf = (part: Part, reckoned: Reckoned): Result<readonly PlannedPass[]> => {
  const { plan, check } = reckoned;
  return part === 'tenon' && check && check.verdict !== 'right'
    ? passesTo(reckoned, check.depthToSuit)
    : ok(plan.passes);
};

/** The pair that these passes will make: the tenon as measured where it is, cut to the depth that suits it. */
export const pairToBe = (reckoned: Reckoned): Result<Pair> => {
  const { pair, tenon } = reckoned;
  const passes = passesOf('tenon', reckoned);
  if (!passes.ok) return passes;
  return ok({
    ...pair,
    tenon: {
      ...pair.tenon,
      diameter: tenon?.mean ?? pair.tenon.diameter,
      depth: passes.value.at(-1)?.depth ?? pair.tenon.depth,
    },
  });
};
