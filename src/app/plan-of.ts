import type { BoreReading, Box, Instrument, Rig } from '../domain/box/records.ts';
import {
  type Bore,
  type BoreMeasure,
  boreOf,
  type Caliper,
  type TenonTarget,
  tenonForBore,
  USUAL_READING,
} from '../domain/joint/bore.ts';
import { type Pair, tenonForClearance } from '../domain/joint/fit.ts';
import { type JointPlan, type PlannedPass, planJoint, planPasses } from '../domain/joint/plan.ts';
import type { PlanInput } from '../domain/joint/plan-input.ts';
import { checkTenon, type TenonCheck } from '../domain/joint/tenon-check.ts';
import { ok, type Result } from '../domain/result.ts';
import { type Millimetres, mm } from '../domain/units/brands.ts';
import { listRecords } from '../storage/records.ts';
import { cutsOf, depthReached } from './cutting.ts';
import { caliperOf } from './instruments.ts';
import { type OwnWoods, planInputOf, type StandIn } from './plan-input-of.ts';
import { rigById } from './rigs.ts';
import { logId } from './session.ts';
import { type TenonMeasure, tenonOf } from './tenon-of.ts';

/** What a plan needs beside the box. */
export interface Given {
  readonly rig: Rig;
  readonly caliper: Instrument;
  readonly ownWoods: OwnWoods;
}

/** Everything reckoned for one box, with what was measured taking the place of what was planned. */
export interface Reckoned {
  readonly input: PlanInput;
  readonly plan: JointPlan;
  readonly standIns: readonly StandIn[];
  /** As measured; before that, the opening as planned. */
  readonly bore: Bore;
  readonly isBoreMeasured: boolean;
  /** The tenon to turn for this bore, and for the recess as it was really cut. */
  readonly target: TenonTarget;
  /** How deep the recess was cut, when that is not what was planned. */
  readonly recessCutTo: Millimetres | null;
  /** Tenon of the target; depths as cut or planned. */
  readonly pair: Pair;
  readonly tenon: TenonMeasure | null;
  readonly check: TenonCheck | null;
}

export const givenFor = async (box: Pick<Box, 'rigId' | 'instrumentId'>): Promise<Given> => {
  const woods = await listRecords(logId.value, 'wood');
  return {
    rig: await rigById(box.rigId),
    caliper: (await caliperOf(box)).instrument,
    ownWoods: new Map(woods.flatMap(({ id, body }) => (body ? [[id, body] as const] : []))),
  };
};

const caliperFor = ({ insideMinusOutside }: Instrument): Caliper => ({
  insideMinusOutside: insideMinusOutside?.mm ?? null,
  uncertainty: USUAL_READING,
});

const measureOf = ({ where, along, across, overCrests }: BoreReading): BoreMeasure => ({
  where,
  along: along.mm,
  across: across?.mm ?? null,
  overCrests,
});

/** The opening as planned, until a caliper has been there. */
const asPlanned = (opening: Millimetres): Result<Bore> =>
  boreOf([{ where: 'mouth', along: opening, across: null, overCrests: false }], {
    insideMinusOutside: null,
    uncertainty: mm(0),
  });

/** Less than this between a depth planned and one cut is nothing, mm. */
const SAME_DEPTH = 0.01;

/**
 * Plans a box: opening or measured bore, the tenon that follows, and what a measured tenon does to the fit. The refusal names
 * the two figures that cannot both be had.
 */
export const planOf = (
  box: Pick<Box, 'plan' | 'bore' | 'tenon' | 'cuts'>,
  { rig, caliper, ownWoods }: Given,
): Result<Reckoned> => {
  const jaws = caliperFor(caliper);
  const isBoreMeasured = box.bore.length > 0;
  const bore = isBoreMeasured ? boreOf(box.bore.map(measureOf), jaws) : asPlanned(box.plan.opening.mm);
  if (!bore.ok) return bore;
  const { input, standIns } = planInputOf(box.plan, rig, ownWoods, bore.value.mean);
  const planned = planJoint(input);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const { depth, allowance: plannedAllowance } = plan.sizes;
  const clearance = plan.clearance.clearance;
  // Between passes the depth reached is not yet the depth cut.
  const isRecessCut = cutsOf(box.cuts, 'recess').length >= plan.passes.length;
  const cutTo = (isRecessCut ? depthReached(box.cuts, 'recess')?.mm : undefined) ?? depth;
  const recessCutTo = Math.abs(cutTo - depth) > SAME_DEPTH ? cutTo : null;
  const tipFlat = input.cutter.tipFlat;
  const recess = { diameter: bore.value.mean, depth: recessCutTo ?? depth, tipFlat };
  const asCut = tenonForClearance({ pitch: input.pitch, recess, tenon: { depth, tipFlat } }, clearance);
  if (!asCut.ok) return asCut;
  const allowance = recessCutTo === null ? plannedAllowance : mm(asCut.value - bore.value.mean);
  const target = tenonForBore(bore.value, allowance, clearance, jaws);
  if (!target.ok) return target;
  const pair: Pair = {
    pitch: input.pitch,
    recess: { ...recess, flankShift: plan.shifts.recess },
    tenon: { diameter: target.value.tenon, depth, tipFlat, flankShift: plan.shifts.tenon },
  };
  const tenon = tenonOf(box.tenon);
  const check = tenon ? checkTenon(tenon.mean, pair, target.value.tolerance) : ok(null);
  if (!check.ok) return check;
  return ok({
    input,
    plan,
    standIns,
    bore: bore.value,
    isBoreMeasured,
    target: target.value,
    recessCutTo,
    pair,
    tenon,
    check: check.value,
  });
};

/** The passes to a depth of one's own, in the manner of the plan: for a tenon cut deeper or shallower to suit its size. */
export const passesTo = ({ input }: Reckoned, depth: Millimetres): Result<readonly PlannedPass[]> =>
  planPasses(input, depth);
