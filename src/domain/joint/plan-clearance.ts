import { ok, type Result } from '../result.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import { clearanceForSeason } from '../wood/movement.ts';
import { boundsOf } from './bounds.ts';
import { type Budget, clearanceBudget, LEAN_SHARE, RUNNING_CLEARANCE, usualClearance } from './clearance.ts';
import { flankShifts, type Shifts } from './flank-shifts.ts';
import type { PlanInput } from './plan-input.ts';
import { HALF_ANGLE } from './profile.ts';
import type { JointSizes } from './sizes.ts';

export interface PlannedClearance {
  /** Diametral, to be cut. */
  readonly clearance: Millimetres;
  readonly from: 'wanted' | 'usual' | 'season';
  /** What the season, the leans, the film and free running ask for. */
  readonly budget: Budget;
}

/** Looser than this many times the most usual clearance is no fit; other woods or an insert ring are the answer then. An estimate. */
const LOOSEST = 2;

/** Half way up the engaged flank: how far from the turned surface, and the cutter's radius there, mm. */
export const halfwayUp = (
  { cutter }: PlanInput,
  { engagedHeight, depth }: JointSizes,
): { readonly middle: Millimetres; readonly cutterRadius: Millimetres } => {
  const middle = mm(engagedHeight / 2);
  return { middle, cutterRadius: mm(cutter.radius - (depth - middle)) };
};

/** Helix widening of the two grooves that the sizes ask for, mm per flank. */
export const shiftsOf = (input: PlanInput, { tenon, depth }: JointSizes): Result<Shifts> =>
  flankShifts({
    pitch: input.pitch,
    recess: { diameter: input.recess, depth },
    tenon: { diameter: tenon, depth },
    cutterRadius: input.cutter.radius,
  });

/**
 * Lean that costs a share of a clearance, rad. Sizes are settled before any set-up is read (the tenon is turned before it is set up), so
 * where nothing else is known the plan leaves room for what a set-up may pass with, at the pitch's usual clearance.
 */
const mayBeLeft = ({ engagedHeight }: JointSizes, usual: Millimetres): Radians => {
  const off = (LEAN_SHARE * usual * Math.sin(HALF_ANGLE) * Math.cos(HALF_ANGLE)) / engagedHeight;
  return rad(Math.min(off, boundsOf('mismatch').max));
};

/** The clearance to cut: the turner's own, or the usual one for the pitch, or more where season, leans and film ask for it (up to twice the usual most). */
export const planClearance = (
  input: PlanInput,
  sizes: JointSizes,
  shifts: Shifts,
): Result<PlannedClearance> => {
  const oval = clearanceForSeason(input.recess, input.woodOfRecess, input.woodOfTenon, input.moistureSwing);
  if (!oval.ok) return oval;
  const usual = usualClearance(input.pitch);
  if (!usual.ok) return usual;
  const budget = clearanceBudget({
    runningClearance: RUNNING_CLEARANCE,
    ovalMovement: oval.value,
    engagedHeight: sizes.engagedHeight,
    mismatch: input.mismatch ?? mayBeLeft(sizes, usual.value.usual),
    film: input.film,
    recessFlankShift: shifts.recess,
    tenonFlankShift: shifts.tenon,
  });
  if (!budget.ok) return budget;
  const wanted = input.aim.clearance;
  if (wanted !== null) return ok({ clearance: wanted, from: 'wanted', budget: budget.value });
  const asked = Math.min(budget.value.toCut, LOOSEST * usual.value.most);
  return ok(
    asked > usual.value.usual
      ? { clearance: mm(asked), from: 'season', budget: budget.value }
      : { clearance: usual.value.usual, from: 'usual', budget: budget.value },
  );
};
