import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { fullEngagement } from './engagement.ts';
import { HALF_ANGLE, SLOPE } from './profile.ts';

/** One threaded piece as measured: the turned diameter (recess: bore, tenon: outside) and what was cut into it. */
export interface CutPiece {
  readonly diameter: Millimetres;
  /** Radial depth from touch-off on that diameter. */
  readonly depth: Millimetres;
  readonly tipFlat: Millimetres;
  /** Widening of the groove per flank by helix interference; none when not given. */
  readonly flankShift?: Millimetres;
}

export interface Pair {
  readonly pitch: Millimetres;
  readonly recess: CutPiece;
  readonly tenon: CutPiece;
}

/** How a pair goes together. Negative gaps are interference. */
export interface Fit {
  /** Diametral clearance between the flanks: pitch diameter of the recess less that of the tenon. */
  readonly clearance: Millimetres;
  /** Free axial play between both flanks. */
  readonly endPlay: Millimetres;
  /** Gap square to one flank with the tenon centred. */
  readonly flankGap: Millimetres;
  /** Radial gap between the tenon's crest and the recess's root. */
  readonly tenonCrestGap: Millimetres;
  /** Radial gap between the recess's crest and the tenon's root. */
  readonly recessCrestGap: Millimetres;
  /** Radial overlap of the two crests; zero or less is no thread at all. */
  readonly engagedHeight: Millimetres;
  /** The same as a percentage of 0.75 H and of 0.625 H. */
  readonly percentOf75: number;
  readonly percentOf62: number;
  /** What touches first: the least of half the clearance and the two crest gaps. */
  readonly tightest: 'flank' | 'tenon-crest' | 'recess-crest';
}

/**
 * How far the place where the sharp V of a groove is half the pitch wide lies below the turned surface, mm radial. Plain numbers, for use
 * inside formulas. A clearance is the recess's turned diameter less the tenon's, and twice the reach of both.
 */
export const grooveReach = (depth: number, tipFlat: number, flankShift: number, pitch: number): number =>
  depth + (tipFlat + 2 * flankShift) / (2 * SLOPE) - pitch / (4 * SLOPE);

/** The same as a diameter; recess grooves go outward, tenon grooves inward. */
const pitchDiameterOf = (piece: CutPiece, pitch: number, outward: boolean): number => {
  const reach = grooveReach(piece.depth, piece.tipFlat, piece.flankShift ?? 0, pitch);
  return piece.diameter + (outward ? 2 : -2) * reach;
};

/**
 * Fit of a measured pair. Clearance c = (Dr - Dt) + 2(df + dm) - (P - ff - fm - 2 sf - 2 sm)/tan A; play c tan A.
 * Readings may be anything real: a pair that cannot go together is an answer, not an error.
 * Exact for rigid parts on one axis; crest gaps say nothing of a cut beyond the V.
 */
export const fitOf = ({ pitch, recess, tenon }: Pair): Result<Fit> => {
  const refusal = outside({
    pitch,
    recess: recess.diameter,
    recessDepth: recess.depth,
    recessTipFlat: recess.tipFlat,
    recessFlankShift: recess.flankShift,
    tenon: tenon.diameter,
    tenonDepth: tenon.depth,
    tenonTipFlat: tenon.tipFlat,
    tenonFlankShift: tenon.flankShift,
  });
  if (refusal) return refuse(refusal);
  const clearance = pitchDiameterOf(recess, pitch, true) - pitchDiameterOf(tenon, pitch, false);
  const tenonCrestGap = recess.diameter / 2 + recess.depth - tenon.diameter / 2;
  const recessCrestGap = recess.diameter / 2 - tenon.diameter / 2 + tenon.depth;
  const overlap = (tenon.diameter - recess.diameter) / 2;
  const least = Math.min(clearance / 2, tenonCrestGap, recessCrestGap);
  return ok({
    clearance: mm(clearance),
    endPlay: mm(clearance * SLOPE),
    flankGap: mm((clearance / 2) * Math.sin(HALF_ANGLE)),
    tenonCrestGap: mm(tenonCrestGap),
    recessCrestGap: mm(recessCrestGap),
    engagedHeight: mm(overlap),
    percentOf75: (100 * overlap) / fullEngagement(pitch, '0.75H'),
    percentOf62: (100 * overlap) / fullEngagement(pitch, '0.625H'),
    tightest: least === clearance / 2 ? 'flank' : least === tenonCrestGap ? 'tenon-crest' : 'recess-crest',
  });
};

/**
 * The tenon diameter (mm) that gives a wanted diametral clearance to pieces cut to depths of their own: the inverse of `fitOf`. Exact;
 * says nothing of the crests, so ask `fitOf` about the answer.
 */
export const tenonForClearance = (
  pair: Omit<Pair, 'tenon'> & { readonly tenon: Omit<CutPiece, 'diameter'> },
  clearance: Millimetres,
): Result<Millimetres> => {
  const refusal = outside({ clearance });
  if (refusal) return refuse(refusal);
  const { diameter } = pair.recess;
  const flush = fitOf({ ...pair, tenon: { ...pair.tenon, diameter } });
  return flush.ok ? ok(mm(diameter + flush.value.clearance - clearance)) : flush;
};
