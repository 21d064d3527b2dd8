import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { flankSlope, SIXTY_DEGREES } from './profile.ts';

/** Room for a cutter to enter and leave a bore without touching, mm radial. Common practice, no source. */
export const ENTRY_MARGIN: Millimetres = mm(0.5);
/** Helix widening per flank that still passes for nothing, mm. */
export const LARGEST_SHIFT: Millimetres = mm(0.02);

/** 8 pi^2 tan A times the largest shift, over P^2: one over a length. */
const stiffness = (pitch: number, shift: number, slope: number): number =>
  (8 * Math.PI ** 2 * slope * shift) / pitch ** 2;

/**
 * Greatest cutter radius (at the work radius looked at) whose helix widening in a recess stays within `largestShift` per flank, mm:
 * r/(1 + P^2/(8 pi^2 tan A r s)). Within 1 % while the answer is below 0.9 r.
 */
export const cutterForShift = (
  pitch: Millimetres,
  workRadius: Millimetres,
  largestShift: Millimetres = LARGEST_SHIFT,
  includedAngle?: Radians,
): Result<Millimetres> => {
  const refusal = outside({ pitch, workRadius, largestShift, includedAngle });
  if (refusal) return refuse(refusal);
  return ok(
    mm(workRadius / (1 + 1 / (workRadius * stiffness(pitch, largestShift, flankSlope(includedAngle))))),
  );
};

/** Least recess radius in which a cutter stays within `largestShift` per flank, mm: the inverse of `cutterForShift`. */
export const recessForShift = (
  pitch: Millimetres,
  cutterRadius: Millimetres,
  largestShift: Millimetres = LARGEST_SHIFT,
  includedAngle?: Radians,
): Result<Millimetres> => {
  const refusal = outside({ pitch, cutterRadius, largestShift, includedAngle });
  if (refusal) return refuse(refusal);
  const perRadius = stiffness(pitch, largestShift, flankSlope(includedAngle));
  return ok(mm((cutterRadius + Math.sqrt(cutterRadius ** 2 + (4 * cutterRadius) / perRadius)) / 2));
};

/** Greatest cutter radius whose heel clears a leaning groove in a recess, mm: r sin A/sin(A + |lean|). */
export const cutterForLean = (
  workRadius: Millimetres,
  lean: Radians,
  includedAngle: Radians = SIXTY_DEGREES,
): Result<Millimetres> => {
  const refusal = outside({ workRadius, lean, includedAngle });
  if (refusal) return refuse(refusal);
  const half = includedAngle / 2;
  return ok(mm((workRadius * Math.sin(half)) / Math.sin(half + Math.abs(lean))));
};

/** Greatest radius of neck or arbor behind the tooth that stays off the work at full depth, mm: Rc - d - margin; zero when there is none. */
export const neckFor = (
  cutterRadius: Millimetres,
  depth: Millimetres,
  margin: Millimetres = ENTRY_MARGIN,
): Result<Millimetres> => {
  const refusal = outside({ cutterRadius, depth, margin });
  return refusal ? refuse(refusal) : ok(mm(Math.max(0, cutterRadius - depth - margin)));
};

export interface LargestCutter {
  readonly radius: Millimetres;
  readonly limitedBy: 'entry' | 'widening' | 'lean';
}

/**
 * Greatest cutter that a recess of this diameter takes, and what sets the limit: getting in and out (Dr/2 less the margin),
 * helix widening, or the heel of the disc in a leaning groove.
 */
export const largestCutter = (
  recess: Millimetres,
  pitch: Millimetres,
  lean: Radians,
  largestShift?: Millimetres,
): Result<LargestCutter> => {
  const refusal = outside({ recess, pitch, lean, largestShift });
  if (refusal) return refuse(refusal);
  const radius = mm(recess / 2);
  const widening = cutterForShift(pitch, radius, largestShift);
  if (!widening.ok) return widening;
  const heel = cutterForLean(radius, lean);
  if (!heel.ok) return heel;
  const limits: LargestCutter[] = [
    { radius: mm(radius - ENTRY_MARGIN), limitedBy: 'entry' },
    { radius: widening.value, limitedBy: 'widening' },
    { radius: heel.value, limitedBy: 'lean' },
  ];
  return ok(limits.reduce((least, next) => (next.radius < least.radius ? next : least)));
};
