import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { SLOPE } from './profile.ts';

/** Room for a cutter to enter and leave a bore without touching, mm radial. Common practice, no source. */
export const ENTRY_MARGIN: Millimetres = mm(0.5);
/** Helix widening per flank that still passes for nothing, mm. */
export const LARGEST_SHIFT: Millimetres = mm(0.02);

/**
 * Least recess radius in which the helix widens a groove by no more than `largestShift` per flank, mm:
 * (Rc + sqrt(Rc^2 + 4 Rc/k))/2, k = 8 pi^2 tan A s/P^2. The inverse of `flankShift`; within 1 % while Rc is below 0.9 of the answer.
 */
export const recessForShift = (
  pitch: Millimetres,
  cutterRadius: Millimetres,
  largestShift: Millimetres = LARGEST_SHIFT,
): Result<Millimetres> => {
  const refusal = outside({ pitch, cutterRadius, largestShift });
  if (refusal) return refuse(refusal);
  const perRadius = (8 * Math.PI ** 2 * SLOPE * largestShift) / pitch ** 2;
  return ok(mm((cutterRadius + Math.sqrt(cutterRadius ** 2 + (4 * cutterRadius) / perRadius)) / 2));
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
