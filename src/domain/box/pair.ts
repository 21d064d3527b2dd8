import type { Pair } from '../joint/fit.ts';
import { widened } from '../joint/flank-shifts.ts';
import { type PlannedPass, planPasses } from '../joint/plan.ts';
import { ok, type Result } from '../result.ts';
import type { Part } from '../setup/events.ts';
import type { Millimetres } from '../units/brands.ts';
import { cutterOf } from './assumed.ts';
import type { CalculatedBox, Sized } from './calculate.ts';
import { deepestOf } from './cuts.ts';
import type { Given } from './given.ts';
import { measuredBore, measuredTenon } from './measured.ts';
import { pieceAt } from './piece.ts';

// A joint in three states: as planned (`CalculatedBox.pair`), as it is to be, and as it was cut.

/** The passes to a depth of one's own, in the manner of the plan: for a tenon cut deeper or shallower to suit its size. */
export const passesTo = ({ input }: CalculatedBox, depth: Millimetres): Result<readonly PlannedPass[]> =>
  planPasses(input, depth);

/** What a piece is cut to: a tenon that was measured, or whose recess was cut too shallow, to a depth of its own. */
export const passesOf = (part: Part, calculated: CalculatedBox): Result<readonly PlannedPass[]> => {
  const { plan, check, pair } = calculated;
  const depth = part === 'tenon' ? (check?.depth ?? pair.tenon.depth) : plan.sizes.depth;
  return depth === plan.sizes.depth ? ok(plan.passes) : passesTo(calculated, depth);
};

/** The pair that the record so far is making: measured where it is, cut where it is, else what its passes will make. */
export const pairToBe = (calculated: CalculatedBox): Result<Pair> => {
  const { pair, tenon, depthCut, input } = calculated;
  const passes = passesOf('tenon', calculated);
  if (!passes.ok) return passes;
  return ok(
    widened(
      {
        ...pair,
        recess: { ...pair.recess, depth: depthCut.recess ?? pair.recess.depth },
        tenon: {
          ...pair.tenon,
          diameter: tenon?.mean ?? pair.tenon.diameter,
          depth: depthCut.tenon ?? passes.value.at(-1)?.depth ?? pair.tenon.depth,
        },
      },
      input.cutter.radius,
    ),
  );
};

/**
 * The pair as measured and cut, at a place in the box's sequence or now; null until both pieces are both. No plan takes part in it: it
 * is what the advice, the findings and the table of boxes speak of.
 */
export const pairAsCut = (
  box: Sized,
  { rig, caliper }: Pick<Given, 'rig' | 'caliper'>,
  until?: number,
): Pair | null => {
  const [recessPiece, tenonPiece] = [pieceAt(box, 'recess', until), pieceAt(box, 'tenon', until)];
  const [recessDepth, tenonDepth] = [deepestOf(recessPiece.cuts), deepestOf(tenonPiece.cuts)];
  const bore = measuredBore(recessPiece.readings, caliper);
  const tenon = measuredTenon(tenonPiece.readings);
  if (!bore.ok || !bore.value || !tenon || !recessDepth || !tenonDepth) return null;
  const { radius, tipFlat } = cutterOf(rig, bore.value.mean);
  return widened(
    {
      pitch: box.plan.pitch.mm,
      recess: { diameter: bore.value.mean, depth: recessDepth.mm, tipFlat },
      tenon: { diameter: tenon.mean, depth: tenonDepth.mm, tipFlat },
    },
    radius,
  );
};
