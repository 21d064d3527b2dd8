import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { HALF_ANGLE, SLOPE } from './profile.ts';

/** Diametral clearance eaten by a film on all flanks, mm: 4 film/sin A, A the half angle. Plain numbers, for use inside formulas. */
export const filmEats = (film: number): number => (4 * film) / Math.sin(HALF_ANGLE);

/**
 * Diametral clearance eaten by a finish of the given dry thickness (mm, square to the flank) on all flanks of both pieces:
 * 4 film/sin A, eight films. Exact for an even film.
 */
export const filmLoss = (
  film: Millimetres,
): Result<{ readonly clearance: Millimetres; readonly endPlay: Millimetres }> => {
  const refusal = outside({ film });
  if (refusal) return refuse(refusal);
  const clearance = filmEats(film);
  return ok({ clearance: mm(clearance), endPlay: mm(clearance * SLOPE) });
};
