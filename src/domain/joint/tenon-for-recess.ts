import { ok, type Result } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { deepestFor } from './broken-limits.ts';
import { fullEngagement } from './engagement.ts';
import { fitOf, type Pair, tenonForClearance } from './fit.ts';
import { LEAST_CREST_GAP, LEAST_ENGAGEMENT } from './least.ts';
import type { JointSizes } from './sizes.ts';

interface SuitedTenon {
  /** Tenon less recess; nothing where no tenon reaches past the recess's crests. */
  readonly allowance: Millimetres;
  readonly depth: Millimetres;
}

/**
 * The tenon for a recess as it was really cut, mm: cut as planned, its size gives the clearance. Where that leaves too little thread (the
 * recess is too shallow), it is turned bigger and cut deeper, toward the planned engagement and as far as its crests allow. Exact.
 */
export const tenonForRecess = (
  { pitch, recess }: Omit<Pair, 'tenon'>,
  planned: Pick<JointSizes, 'depth' | 'engagedHeight'>,
  clearance: Millimetres,
  tenonShift: Millimetres,
): Result<SuitedTenon> => {
  const tenon = { depth: planned.depth, tipFlat: recess.tipFlat };
  const diameter = tenonForClearance({ pitch, recess, tenon }, clearance);
  if (!diameter.ok) return diameter;
  const engaged = (diameter.value - recess.diameter) / 2;
  const isEnough = engaged >= (LEAST_ENGAGEMENT / 100) * fullEngagement(pitch, '0.75H');
  const fit = isEnough ? null : fitOf({ pitch, recess, tenon: { ...tenon, diameter: diameter.value } });
  if (fit && !fit.ok) return fit;
  const more = fit
    ? Math.max(
        0,
        Math.min(
          planned.engagedHeight - engaged,
          deepestFor(pitch, { ...tenon, flankShift: tenonShift }) - planned.depth,
          fit.value.tenonCrestGap - LEAST_CREST_GAP,
        ),
      )
    : 0;
  return ok({ allowance: mm(Math.max(0, 2 * (engaged + more))), depth: mm(planned.depth + more) });
};
