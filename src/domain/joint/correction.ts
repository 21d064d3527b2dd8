import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Turns } from '../units/brands.ts';
import { outside } from './bounds.ts';

/**
 * Depth to add to one piece (either opens the flanks alike) for a wanted clearance, mm radial: (wanted - now)/2, nothing when the
 * flanks are open enough. Exact.
 */
export const deepenForClearance = (
  clearance: Millimetres,
  wantedClearance: Millimetres,
): Result<Millimetres> => {
  const refusal = outside({ clearance, wantedClearance });
  return refusal ? refuse(refusal) : ok(mm(Math.max(0, (wantedClearance - clearance) / 2)));
};

/** Turns the lid went on by hand, before and after one piece was deepened. */
export interface TwoTries {
  readonly deepened: Millimetres;
  readonly turnsBefore: Turns;
  readonly turnsAfter: Turns;
}

/** Fewer turns than this nobody can tell apart by looking at the lid: 3.6 degrees. An estimate, no source. */
const COUNTABLE = 0.01;

/** Whether the lid went on further by enough to see. */
export const wentFurther = ({ turnsBefore, turnsAfter }: Omit<TwoTries, 'deepened'>): boolean =>
  turnsAfter - turnsBefore >= COUNTABLE;

/**
 * Depth still to add when the lid goes further after a first deepening but not home, mm: deepened k1/(k2 - k1) + wanted clearance/2.
 * For an even interference, whose turns grow as one over it; exact under that assumption. Refuses tries that gained nothing: then
 * the flanks are not what binds.
 */
export const deepenFromTwoTries = (
  { deepened, turnsBefore, turnsAfter }: TwoTries,
  wantedClearance: Millimetres,
): Result<Millimetres> => {
  const refusal = outside({ deepened, turnsBefore, turnsAfter, wantedClearance });
  if (refusal) return refuse(refusal);
  if (!wentFurther({ turnsBefore, turnsAfter }))
    return refuse({
      problem: 'conflict',
      field: 'turnsAfter',
      other: 'turnsBefore',
      given: turnsAfter,
      otherGiven: turnsBefore,
      nearest: null,
      quantity: 'turns',
    });
  return ok(mm((deepened * turnsBefore) / (turnsAfter - turnsBefore) + wantedClearance / 2));
};
