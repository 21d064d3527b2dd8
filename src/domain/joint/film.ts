import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { flankSlope, SIXTY_DEGREES } from './profile.ts';

/**
 * Diametral clearance eaten by a finish of the given dry thickness (mm, square to the flank) on all flanks of both pieces:
 * 4 film/sin A, eight films at 60 degrees. Exact for an even film.
 */
export const filmLoss = (
  film: Millimetres,
  includedAngle: Radians = SIXTY_DEGREES,
): Result<{ readonly clearance: Millimetres; readonly endPlay: Millimetres }> => {
  const refusal = outside({ film, includedAngle });
  if (refusal) return refuse(refusal);
  const clearance = (4 * film) / Math.sin(includedAngle / 2);
  return ok({ clearance: mm(clearance), endPlay: mm(clearance * flankSlope(includedAngle)) });
};

/** Diametral clearance gained by sanding the flanks of one piece by a depth (mm, square to the flank): half of what a film there would eat. */
export const sandedGain = (depth: Millimetres, includedAngle?: Radians): Result<Millimetres> => {
  const both = filmLoss(depth, includedAngle);
  return both.ok ? ok(mm(both.value.clearance / 2)) : both;
};
