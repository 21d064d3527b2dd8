import { firstRefusal, ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians } from '../units/brands.ts';
import { direction, length, SLOPE, signedLength } from './inputs.ts';

/**
 * Crest flat at an angle psi from where the cut is deepest, on a blank that stands off the jig's axis by e: k - 2 e tan A cos psi, mm.
 * The same for a radial float of the spindle in step with the crank. e to 5 mm; first order in e over the radius.
 * Negative: there the crest is cut away.
 */
export const crestFlatRound = (
  crestFlat: Millimetres,
  eccentricity: Millimetres,
  psi: Radians,
): Result<Millimetres> => {
  const bad = firstRefusal(
    length('crestFlat', crestFlat, 12.7),
    length('eccentricity', eccentricity, 5),
    direction('psi', psi),
  );
  return bad ? refuse(bad) : ok(mm(crestFlat - 2 * SLOPE * eccentricity * Math.cos(psi)));
};

/** What eccentric re-chucking of either piece costs. */
export interface EccentricPair {
  /** Widest less narrowest crest round each piece: what the eye sees as "thick on one side". */
  readonly tenonCrestVaries: Millimetres;
  readonly recessCrestVaries: Millimetres;
  /** Radial crest gap still left where both are worst; negative rubs. */
  readonly crestGapLeft: Millimetres;
  /** Step on the outside where both are worst. */
  readonly outsideStep: Millimetres;
}

/**
 * Crest variation 4 e tan A a piece, crest gap less both eccentricities, outside step their sum, mm. The helix itself stays
 * true, so the flanks fit as before. Eccentricities to 5 mm.
 */
export const eccentricPair = (
  tenonOff: Millimetres,
  recessOff: Millimetres,
  crestGap: Millimetres,
): Result<EccentricPair> => {
  const bad = firstRefusal(
    length('tenonOff', tenonOff, 5),
    length('recessOff', recessOff, 5),
    signedLength('crestGap', crestGap, 12.7),
  );
  if (bad) return refuse(bad);
  return ok({
    tenonCrestVaries: mm(4 * SLOPE * tenonOff),
    recessCrestVaries: mm(4 * SLOPE * recessOff),
    crestGapLeft: mm(crestGap - tenonOff - recessOff),
    outsideStep: mm(tenonOff + recessOff),
  });
};
