import type { CutPiece } from '../joint/fit.ts';
import { HALF_ANGLE, SLOPE } from '../joint/profile.ts';
import { firstRefusal, ok, type Refusal, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import { angle, length, signedLength, size } from './inputs.ts';

const COS2 = Math.cos(HALF_ANGLE) ** 2;

/**
 * Axial gap that a mismatch opens at the far end of the flanks, mm: he |Delta| / cos^2 A (4/3 he Delta).
 * Square to the flank it is cos A of that. Engaged height he to 12.7 mm, mismatch to 15 degrees; within 1 % to 4 degrees.
 */
export const axialGap = (engagedHeight: Millimetres, off: Radians): Result<Millimetres> => {
  const bad = firstRefusal(length('engagedHeight', engagedHeight, 12.7), angle('mismatch', off));
  return bad ? refuse(bad) : ok(mm((engagedHeight * Math.abs(off)) / COS2));
};

/**
 * Mismatch at which a pair of diametral clearance c would no longer go together: c tan A cos^2 A / he.
 * Ignores the small extra clearance that the helix gives. Zero when the clearance is none or negative.
 */
export const bindingMismatch = (clearance: Millimetres, engagedHeight: Millimetres): Result<Radians> => {
  const bad = firstRefusal(
    signedLength('clearance', clearance, 6),
    size('engagedHeight', engagedHeight, 12.7),
  );
  return bad ? refuse(bad) : ok(rad((Math.max(0, clearance) * SLOPE * COS2) / engagedHeight));
};

/** One piece as cut, with the lean of its groove. */
interface LeaningPiece extends CutPiece {
  readonly lean: Radians;
}

interface LeaningPair {
  readonly pitch: Millimetres;
  readonly tenon: LeaningPiece;
  readonly recess: LeaningPiece;
}

/** Half widths of a groove at a height over its deepest point, toward +s and toward -s of the middle of the tip. */
const halfWidths = (piece: CutPiece, leanFromRoot: number, height: number) => {
  const [half, shift, sine] = [piece.tipFlat / 2, piece.flankShift ?? 0, Math.sin(leanFromRoot)];
  // The dial is zeroed on the corner of the tip that leads, so the leading corner reaches the depth, not the middle.
  const above = height - half * Math.abs(sine);
  const across = half * Math.cos(leanFromRoot) + shift;
  return {
    plus: across + (above + half * sine) * Math.tan(HALF_ANGLE + leanFromRoot),
    minus: across + (above - half * sine) * Math.tan(HALF_ANGLE - leanFromRoot),
  };
};

const badPiece = (part: 'tenon' | 'recess', piece: LeaningPiece): Refusal | undefined =>
  firstRefusal(
    size(part, piece.diameter),
    length(`${part}Depth`, piece.depth, 24),
    length(`${part}TipFlat`, piece.tipFlat, 6),
    length(`${part}FlankShift`, piece.flankShift ?? 0, 2),
    angle(`${part}Lean`, piece.lean),
  );

/**
 * Free axial play of a pair whose grooves lean, mm, from the walls as they really stand; negative when the pair
 * cannot go together. Depths are from touch-off. Within 2 um of simulated mating to 2 degrees on each piece.
 * Refuses a tenon no larger than its recess: there is no thread to have play.
 */
export const axialPlay = ({ pitch, tenon, recess }: LeaningPair): Result<Millimetres> => {
  const bad =
    firstRefusal(within('pitch', pitch, 0.25, 12.7)) ??
    badPiece('tenon', tenon) ??
    badPiece('recess', recess);
  if (bad) return refuse(bad);
  if (tenon.diameter <= recess.diameter)
    return refuse({
      problem: 'conflict',
      field: 'tenon',
      other: 'recess',
      given: tenon.diameter,
      otherGiven: recess.diameter,
      nearest: null,
      quantity: 'length',
    });
  const tenonRoot = tenon.diameter / 2 - tenon.depth;
  const recessRoot = recess.diameter / 2 + recess.depth;
  const roomAt = (radius: number) => {
    const inTenon = halfWidths(tenon, tenon.lean, radius - tenonRoot);
    const inRecess = halfWidths(recess, -recess.lean, recessRoot - radius);
    return { plus: inTenon.plus + inRecess.plus, minus: inTenon.minus + inRecess.minus };
  };
  const [least, greatest] = [roomAt(recess.diameter / 2), roomAt(tenon.diameter / 2)];
  return ok(mm(Math.min(least.plus, greatest.plus) + Math.min(least.minus, greatest.minus) - pitch));
};
