import { firstRefusal, ok, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { LEAST_CREST_GAP, LEAST_FLOOR_GAP } from './least.ts';

/** A fit that a hand calls right: clearance between half and one and a half times the wanted one, crests just clear. An estimate, no source. */
export interface FitTarget {
  readonly wanted: Millimetres;
  readonly least: Millimetres;
  readonly most: Millimetres;
  /** Least radial gap of either crest. */
  readonly crestGap: Millimetres;
  /** Least gap from the end of the tenon to the floor. */
  readonly bottomGap: Millimetres;
}

/** The target around a wanted diametral clearance, 0.05 to 3 mm. */
export const targetFor = (wanted: Millimetres): Result<FitTarget> => {
  const refusal = firstRefusal(within('wantedClearance', wanted, 0.05, 3));
  return refusal
    ? refuse(refusal)
    : ok({
        wanted,
        least: mm(wanted / 2),
        most: mm(1.5 * wanted),
        crestGap: LEAST_CREST_GAP,
        bottomGap: LEAST_FLOOR_GAP,
      });
};
