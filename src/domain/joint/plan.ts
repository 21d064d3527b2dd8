import { ok, type Refusal, type Result, refuse } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { leastWall, usualClearance } from './clearance.ts';
import { type DialTarget, dialTarget } from './dial.ts';
import { fullEngagement, usualEngagement } from './engagement.ts';
import { type Fit, fitOf } from './fit.ts';
import type { Shifts } from './flank-shifts.ts';
import { ENTRY_MARGIN } from './largest-cutter.ts';
import { passDepths } from './passes.ts';
import { type PlannedClearance, planClearance, shiftsOf } from './plan-clearance.ts';
import { badInput, formOf, type PlanInput } from './plan-input.ts';
import { type PlanLengths, planLengths, type SlidePlaces, slidePlaces } from './plan-lengths.ts';
import { type PlanWarning, planWarnings } from './plan-warnings.ts';
import { aboutClearance, type JointSizes, tenonFromDepth, tenonFromEngagement } from './sizes.ts';

/** One pass: depth from touch-off, and where the dial stands then (null when the dial is not known). */
export interface PlannedPass {
  readonly depth: Millimetres;
  readonly dial: DialTarget | null;
}

/** Every size of a joint. */
export interface JointPlan {
  readonly sizes: JointSizes;
  readonly clearance: PlannedClearance;
  /** The fit to expect, helix widening included. */
  readonly fit: Fit;
  readonly shifts: Shifts;
  readonly lengths: PlanLengths;
  /** Wood left outside the recess's relief: null until the outside is known. */
  readonly wall: { readonly wall: Millimetres | null; readonly least: Millimetres };
  readonly places: SlidePlaces;
  /** The same for both pieces. */
  readonly passes: readonly PlannedPass[];
  readonly warnings: readonly PlanWarning[];
}

const sizesFor = (input: PlanInput, clearance: Millimetres): Result<JointSizes> => {
  const wanted = { recess: input.recess, clearance };
  if (input.aim.by === 'depth') return tenonFromDepth(formOf(input), wanted, input.aim.depth);
  const percent = usualEngagement(input.pitch);
  if (!percent.ok) return percent;
  const form = formOf(input);
  const sizes = tenonFromEngagement(form, wanted, percent.value, '0.75H');
  if (sizes.ok || sizes.error.field !== 'engagement') return sizes;
  return refuse(
    aboutClearance(form, clearance, (percent.value / 100) * fullEngagement(input.pitch, '0.75H')),
  );
};

const cannotEnter = ({ recess, cutter }: PlanInput): Refusal | undefined => {
  const least = 2 * (cutter.radius + ENTRY_MARGIN);
  return recess >= least
    ? undefined
    : {
        problem: 'conflict',
        field: 'recess',
        other: 'cutterRadius',
        given: recess,
        otherGiven: cutter.radius,
        nearest: least,
        quantity: 'length',
      };
};

/** Thinnest tenon worth the name below its relief, mm. */
const LEAST_CORE = 3;

const noCore = ({ pitch, recess }: PlanInput, { tenonReliefDiameter }: PlanLengths): Refusal | undefined =>
  tenonReliefDiameter >= LEAST_CORE
    ? undefined
    : {
        problem: 'conflict',
        field: 'pitch',
        other: 'recess',
        given: pitch,
        otherGiven: recess,
        nearest: null,
        quantity: 'length',
      };

const planWall = (input: PlanInput, lengths: PlanLengths): Result<JointPlan['wall']> => {
  const least = leastWall(input.pitch);
  if (!least.ok) return least;
  if (input.outside === null) return ok({ wall: null, least: least.value });
  const wall = (input.outside - lengths.recessReliefDiameter) / 2;
  if (wall <= 0)
    return refuse({
      problem: 'conflict',
      field: 'outside',
      other: 'recess',
      given: input.outside,
      otherGiven: input.recess,
      nearest: lengths.recessReliefDiameter + 2 * least.value,
      quantity: 'length',
    });
  return ok({ wall: mm(wall), least: least.value });
};

/** The passes to a depth (mm radial) in the turner's manner, with the dial where it is known. A depth beyond the V is a conflict of depth and pitch. */
export const planPasses = (input: PlanInput, depth: Millimetres): Result<readonly PlannedPass[]> => {
  const depths = passDepths(
    { form: formOf(input), depth },
    input.passes === 'equal-area' ? { by: 'equal-area', passes: 2 } : { by: input.passes },
  );
  if (!depths.ok) return depths;
  const passes: PlannedPass[] = [];
  for (const each of depths.value) {
    const dial = input.dial === null ? ok(null) : dialTarget(each, input.dial);
    if (!dial.ok) return dial;
    passes.push({ depth: each, dial: dial.value });
  }
  return ok(passes);
};

const expectedFit = (input: PlanInput, sizes: JointSizes, shifts: Shifts): Result<Fit> => {
  const cut = { depth: sizes.depth, tipFlat: input.cutter.tipFlat };
  return fitOf({
    pitch: input.pitch,
    recess: { ...cut, diameter: input.recess, flankShift: shifts.recess },
    tenon: { ...cut, diameter: sizes.tenon, flankShift: shifts.tenon },
  });
};

/**
 * Every size of a joint from its opening, pitch, woods, cutter and aim, or the refusal that names the two numbers that cannot both be had
 * and the nearest that can: a cutter too big for the recess, a depth beyond the V, crests that would cross, no wall left.
 * Both pieces are cut to one depth with one cutter. By fit, the engagement is the usual one for the pitch; by depth, it follows.
 * Sizes are exact for the ideal profile; the helix widening in `fit` is good to 1 % (3 % for a cutter of 0.95 of the recess).
 */
export const planJoint = (input: PlanInput): Result<JointPlan> => {
  const refusal = badInput(input) ?? cannotEnter(input);
  if (refusal) return refuse(refusal);
  const usual = usualClearance(input.pitch);
  if (!usual.ok) return usual;
  const first = sizesFor(input, input.aim.clearance ?? usual.value.usual);
  if (!first.ok) return first;
  const firstShifts = shiftsOf(input, first.value);
  if (!firstShifts.ok) return firstShifts;
  const clearance = planClearance(input, first.value, firstShifts.value);
  if (!clearance.ok) return clearance;
  const sizes = sizesFor(input, clearance.value.clearance);
  if (!sizes.ok) return sizes;
  const shifts = shiftsOf(input, sizes.value);
  if (!shifts.ok) return shifts;
  const fit = expectedFit(input, sizes.value, shifts.value);
  if (!fit.ok) return fit;
  const lengths = planLengths(input, sizes.value);
  const core = noCore(input, lengths);
  if (core) return refuse(core);
  const wall = planWall(input, lengths);
  if (!wall.ok) return wall;
  const passes = planPasses(input, sizes.value.depth);
  if (!passes.ok) return passes;
  const places = slidePlaces(input, sizes.value);
  const warnings = planWarnings({
    input,
    sizes: sizes.value,
    clearance: clearance.value,
    shifts: shifts.value,
    lengths,
    places,
    wall: wall.value,
  });
  if (!warnings.ok) return warnings;
  return ok({
    sizes: sizes.value,
    clearance: clearance.value,
    fit: fit.value,
    shifts: shifts.value,
    lengths,
    wall: wall.value,
    places,
    passes: passes.value,
    warnings: warnings.value,
  });
};
