import { firstRefusal, ok, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { type BrokenLimit, brokenLimits, deepestFor } from './broken-limits.ts';
import { type Fit, fitOf, type Pair } from './fit.ts';
import { CALIPER_ERROR, LEAST_CREST_GAP } from './least.ts';

/** A tenon as its readings have it. */
interface TurnedTenon {
  readonly mean: Millimetres;
  /** By the shoulder less at the end; null until both were read. */
  readonly taper: Millimetres | null;
}

/** What must be done before its thread is cut. */
export type Mend =
  /** Too big: the depth that would make up for it breaks a limit. */
  | { readonly kind: 'turn-down'; readonly to: Millimetres; readonly limit: BrokenLimit }
  /** Too small: no depth gives it enough thread. */
  | { readonly kind: 'new-tenon'; readonly to: Millimetres; readonly percent: number }
  /** Tapered by more than the crests or the fit can take: so much off the bigger end, diametral. */
  | { readonly kind: 'true'; readonly at: 'end' | 'shoulder'; readonly by: Millimetres }
  /** Not the tenon's fault: the recess as it was cut, or the plan, makes no thread that holds. */
  | { readonly kind: 'joint'; readonly limit: BrokenLimit };

/** A turned tenon against the one that was planned, before any thread is cut. */
export interface TenonCheck {
  /** Measured less planned; more than nothing is over size. */
  readonly over: Millimetres;
  readonly size: 'right' | 'over' | 'under';
  /** Outside the tolerance, but by less than the readings can tell: taken as right. */
  readonly isWithinError: boolean;
  /** The fit if both pieces are cut to the planned depth. */
  readonly fit: Fit;
  /** What to cut this tenon to: the planned depth when it is right, else what brings the clearance back as far as the crest allows. */
  readonly depth: Millimetres;
  /** The fit at that depth. */
  readonly fitAtDepth: Fit;
  /** The limits that this tenon breaks at that depth. */
  readonly limits: readonly BrokenLimit[];
  /** Null when it can be cut as it is. */
  readonly mend: Mend | null;
}

/** The end to turn down, and by how much, until the tenon is parallel and no end is over size; null where the joint takes the taper. */
const trueUp = (
  { mean, taper }: TurnedTenon,
  target: number,
  most: number,
  crestGap: number,
): Extract<Mend, { kind: 'true' }> | null => {
  if (taper === null) return null;
  const half = Math.abs(taper) / 2;
  // Touched off at one end, the other end's crests stand out by half the taper, and the clearance is out by as much.
  if (half <= most && half <= Math.max(0, crestGap - LEAST_CREST_GAP)) return null;
  const [smaller, bigger] = [mean - half, mean + half];
  return {
    kind: 'true',
    at: taper > 0 ? 'shoulder' : 'end',
    by: mm(bigger - Math.min(smaller, target)),
  };
};

/**
 * What a measured tenon does to the fit, mm. Depth is touched off on its surface, so x over size takes x from the clearance, and x/2 more
 * depth gives it back. `planned` is the whole pair as planned; `tolerance` as in the tenon's target. A depth is never deeper than what
 * leaves the least crest. Exact for the ideal profile.
 */
export const checkTenon = (tenon: TurnedTenon, planned: Pair, tolerance: Millimetres): Result<TenonCheck> => {
  const target = planned.tenon.diameter;
  const refusal =
    firstRefusal(within('tolerance', tolerance, 0, 2), within('taper', tenon.taper ?? 0, -24, 24)) ??
    outside({ tenon: target });
  if (refusal) return refuse(refusal);
  const at = (depth: number): Pair => ({
    ...planned,
    tenon: { ...planned.tenon, diameter: tenon.mean, depth: mm(depth) },
  });
  const asPlanned = fitOf(planned);
  if (!asPlanned.ok) return asPlanned;
  const fit = fitOf(at(planned.tenon.depth));
  if (!fit.ok) return fit;

  const over = tenon.mean - target;
  const wanted = asPlanned.value.clearance;
  // A caliper cannot tell a size from one so near; of a small clearance that is never more than half.
  const most = Math.max(tolerance, Math.min(tolerance + CALIPER_ERROR, wanted / 2));
  const isRight = Math.abs(over) <= most;
  const size = isRight ? 'right' : over > 0 ? 'over' : 'under';
  const suits = isRight ? planned.tenon.depth : planned.tenon.depth + over / 2;
  // A planned depth that leaves less crest is the plan's fault, told as such.
  const deepest = Math.max(planned.tenon.depth, deepestFor(planned.pitch, planned.tenon));
  const depth = Math.max(0, Math.min(suits, deepest));
  const fitAtDepth = fitOf(at(depth));
  if (!fitAtDepth.ok) return fitAtDepth;
  const limits = brokenLimits(at(depth));
  if (!limits.ok) return limits;
  const ofTarget = brokenLimits(planned);
  if (!ofTarget.ok) return ofTarget;

  const ifSuited = brokenLimits(at(Math.max(0, suits)));
  if (!ifSuited.ok) return ifSuited;

  const fault = ofTarget.value[0];
  const little = limits.value.find((limit) => limit.code === 'engagement-low');
  const isTight = fitAtDepth.value.clearance < wanted - most;
  const mend = (): Mend | null => {
    if (fault) return { kind: 'joint', limit: fault };
    if (little) return { kind: 'new-tenon', to: target, percent: little.percent };
    const taper = trueUp(tenon, target, most, fitAtDepth.value.tenonCrestGap);
    if (taper) return taper;
    const limit = ifSuited.value[0];
    return limit && (isTight || limits.value.length > 0) ? { kind: 'turn-down', to: target, limit } : null;
  };
  return ok({
    over: mm(over),
    size,
    isWithinError: isRight && Math.abs(over) > tolerance,
    fit: fit.value,
    depth: mm(depth),
    fitAtDepth: fitAtDepth.value,
    limits: limits.value,
    mend: mend(),
  });
};
