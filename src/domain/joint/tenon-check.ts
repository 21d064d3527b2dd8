import { firstRefusal, ok, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { type Fit, fitOf, type Pair } from './fit.ts';

/** A turned tenon against the one that was planned, before any thread is cut. */
export interface TenonCheck {
  /** Measured less planned; more than nothing is over size. */
  readonly over: Millimetres;
  readonly verdict: 'right' | 'over' | 'under';
  /** The fit if both pieces are cut to the planned depth. */
  readonly fit: Fit;
  /** Depth of the tenon's cut that brings the planned clearance back; nothing below zero is offered. Crests keep their new gap. */
  readonly depthToSuit: Millimetres;
  /** Diameter still to turn off when over size. */
  readonly toTurnOff: Millimetres;
}

/**
 * What a measured tenon does to the fit, mm. Depth is touched off on its surface, so x over size takes x from the clearance, and x/2 more
 * depth gives it back. `planned` is the whole pair as planned; `tolerance` as in the tenon's target. Exact for the ideal profile.
 */
export const checkTenon = (
  measured: Millimetres,
  planned: Pair,
  tolerance: Millimetres,
): Result<TenonCheck> => {
  const refusal =
    firstRefusal(within('tolerance', tolerance, 0, 2)) ?? outside({ tenon: planned.tenon.diameter });
  if (refusal) return refuse(refusal);
  const fit = fitOf({ ...planned, tenon: { ...planned.tenon, diameter: measured } });
  if (!fit.ok) return fit;
  const over = measured - planned.tenon.diameter;
  return ok({
    over: mm(over),
    verdict: over > tolerance ? 'over' : over < -tolerance ? 'under' : 'right',
    fit: fit.value,
    depthToSuit: mm(Math.max(0, planned.tenon.depth + over / 2)),
    toTurnOff: mm(Math.max(0, over)),
  });
};
