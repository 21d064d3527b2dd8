import { type Bore, type TenonTarget, tenonForBore } from '../joint/bore.ts';
import { type BrokenLimit, brokenLimits } from '../joint/broken-limits.ts';
import type { Pair } from '../joint/fit.ts';
import { type JointPlan, planJoint } from '../joint/plan.ts';
import type { PlanInput } from '../joint/plan-input.ts';
import { checkTenon, type TenonCheck } from '../joint/tenon-check.ts';
import { tenonForRecess } from '../joint/tenon-for-recess.ts';
import { ok, type Result } from '../result.ts';
import type { Part } from '../setup/events.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import type { Assumption } from './assumed.ts';
import { depthCut, SAME_DEPTH } from './cuts.ts';
import type { Given } from './given.ts';
import { boreOf, caliperFrom, type MeasuredTenon, measuredBore, measuredTenon } from './measured.ts';
import { pieceAt } from './piece.ts';
import { planInputOf } from './plan-input.ts';
import type { Box } from './records.ts';

/** What of a box's record its sizes follow from. */
export type Sized = Pick<Box, 'plan' | 'bore' | 'tenon' | 'cuts' | 'trials'>;

/** Everything that follows from one box's record, with what was measured taking the place of what was planned. */
export interface CalculatedBox {
  readonly given: Given;
  readonly input: PlanInput;
  readonly plan: JointPlan;
  /** The defaults in use. */
  readonly assumed: readonly Assumption[];
  /** As measured; before that, the opening as planned. */
  readonly bore: Bore;
  readonly isBoreMeasured: boolean;
  /** The tenon to turn for this bore, and for the recess as it was really cut. */
  readonly target: TenonTarget;
  /** Depth that each piece was cut to; null while passes are still to come. */
  readonly depthCut: Readonly<Record<Part, Millimetres | null>>;
  /** How deep the recess was cut, when that is not what was planned. */
  readonly recessCutTo: Millimetres | null;
  /** Tenon of the target and the depth to cut it to; the recess as deep as it was cut, else as planned. */
  readonly pair: Pair;
  /** What that pair breaks; where nothing is wrong with the plan, the recess as it was cut. */
  readonly limits: readonly BrokenLimit[];
  readonly tenon: MeasuredTenon | null;
  readonly check: TenonCheck | null;
}

/** The opening as planned, until a caliper has been there. */
const asPlanned = (opening: Millimetres): Result<Bore> =>
  boreOf([{ where: 'mouth', along: opening, across: null, overCrests: false }], {
    insideMinusOutside: null,
    uncertainty: mm(0),
  });

/**
 * Works out a box: opening or measured bore, the tenon that follows, and what a measured tenon does to the fit. The refusal names
 * the two figures that cannot both be had.
 */
export const calculate = (box: Sized, given: Given): Result<CalculatedBox> => {
  const measured = measuredBore(pieceAt(box, 'recess').readings, given.caliper);
  if (!measured.ok) return measured;
  const bore = measured.value ? ok(measured.value) : asPlanned(box.plan.opening.mm);
  if (!bore.ok) return bore;
  const { input, assumed } = planInputOf(box.plan, given.rig, given.ownWoods, bore.value.mean);
  const planned = planJoint(input);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const { depth, allowance: plannedAllowance } = plan.sizes;
  const clearance = plan.clearance.clearance;
  const cut = {
    recess: depthCut(box, 'recess', plan.passes.length),
    tenon: depthCut(box, 'tenon', plan.passes.length),
  };
  const recessCutTo = cut.recess !== null && Math.abs(cut.recess - depth) > SAME_DEPTH ? cut.recess : null;
  const tipFlat = input.cutter.tipFlat;
  const recess = { diameter: bore.value.mean, depth: recessCutTo ?? depth, tipFlat };
  const asCut = tenonForRecess({ pitch: input.pitch, recess }, plan.sizes, clearance, plan.shifts.tenon);
  if (!asCut.ok) return asCut;
  const allowance = recessCutTo === null ? plannedAllowance : asCut.value.allowance;
  const target = tenonForBore(bore.value, allowance, clearance, caliperFrom(given.caliper));
  if (!target.ok) return target;
  const pair: Pair = {
    pitch: input.pitch,
    recess: { ...recess, flankShift: plan.shifts.recess },
    tenon: {
      diameter: target.value.tenon,
      depth: recessCutTo === null ? depth : asCut.value.depth,
      tipFlat,
      flankShift: plan.shifts.tenon,
    },
  };
  const limits = brokenLimits(pair);
  if (!limits.ok) return limits;
  const tenon = measuredTenon(pieceAt(box, 'tenon').readings);
  const check = tenon ? checkTenon(tenon, pair, target.value.tolerance) : ok(null);
  if (!check.ok) return check;
  return ok({
    given,
    input,
    plan,
    assumed,
    bore: bore.value,
    isBoreMeasured: measured.value !== null,
    target: target.value,
    depthCut: cut,
    recessCutTo,
    pair,
    limits: limits.value,
    tenon,
    check: check.value,
  });
};
