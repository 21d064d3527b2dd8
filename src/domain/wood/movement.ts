import type { Grain } from '../box/records.ts';
import { firstRefusal, ok, type Refusal, type Result, refuse, within } from '../result.ts';
import { type Millimetres, type MoisturePercent, mm, moisture, type Radians } from '../units/brands.ts';

/** How much a wood swells or shrinks for one point of moisture, as a fraction of the dimension: across the rings (CR) and along them (CT). */
export interface Strain {
  readonly radial: number;
  readonly tangential: number;
}

/** One piece of a joint and the change in its moisture since it was cut, percent points, swelling positive. */
export interface MovingPiece {
  readonly strain: Strain;
  readonly grain: Grain;
  readonly change: MoisturePercent;
}

/** Strain of the rim along its two extreme directions. Along the grain wood hardly moves, so one of the two is nothing in side grain. */
interface RimStrain {
  readonly least: number;
  readonly greatest: number;
}

/** Even growth, round about. */
const mean = ({ least, greatest }: RimStrain): number => (least + greatest) / 2;

const rimStrain = ({ strain, grain, change }: MovingPiece): RimStrain => {
  const one = strain.radial * change;
  const other = strain.tangential * change;
  // A side-grain rim holds the grain and either ring direction; which one is seldom known, so the larger movement is assumed.
  return grain === 'side'
    ? { least: Math.min(0, one, other), greatest: Math.max(0, one, other) }
    : { least: Math.min(one, other), greatest: Math.max(one, other) };
};

const badPiece = ({ strain, change }: MovingPiece): Refusal | undefined =>
  firstRefusal(
    within('radial', strain.radial, 0, 0.02, 'ratio'),
    within('tangential', strain.tangential, 0, 0.02, 'ratio'),
    within('change', change, -30, 30, 'percent'),
  );

const badJoint = (diameter: number, recess: MovingPiece, tenon: MovingPiece): Refusal | undefined =>
  firstRefusal(within('diameter', diameter, 1, 1500)) ?? badPiece(recess) ?? badPiece(tenon);

/** Diameters of a turned rim (mm) after its moisture has changed; first order, within 6 to 14 % moisture. */
export const rimAfter = (
  diameter: Millimetres,
  piece: MovingPiece,
): Result<{
  readonly least: Millimetres;
  readonly greatest: Millimetres;
  readonly outOfRound: Millimetres;
}> => {
  const refusal = badJoint(diameter, piece, piece);
  if (refusal) return refuse(refusal);
  const { least, greatest } = rimStrain(piece);
  return ok({
    least: mm(diameter * (1 + least)),
    greatest: mm(diameter * (1 + greatest)),
    outOfRound: mm(diameter * (greatest - least)),
  });
};

/**
 * Least diametral clearance (mm) left somewhere round the joint when both pieces have moved, with a given angle between their grain.
 * c + D(f - m) - 2 D |difference of the two ovals at that angle|; the turned clearance c may be negative. Second order neglected: 0.014 mm at worst.
 */
export const leastClearance = (
  clearance: Millimetres,
  diameter: Millimetres,
  recess: MovingPiece,
  tenon: MovingPiece,
  grainAngle: Radians,
): Result<Millimetres> => {
  const refusal =
    badJoint(diameter, recess, tenon) ??
    firstRefusal(
      within('clearance', clearance, -10, 10),
      within('grainAngle', grainAngle, -2 * Math.PI, 2 * Math.PI, 'angle'),
    );
  if (refusal) return refuse(refusal);
  const [female, male] = [rimStrain(recess), rimStrain(tenon)];
  const [a, b] = [signedOval(tenon), signedOval(recess)];
  const pinch = Math.sqrt(Math.max(0, a * a + b * b - 2 * a * b * Math.cos(2 * grainAngle)));
  return ok(mm(clearance + diameter * (mean(female) - mean(male)) - diameter * pinch));
};

/** Half of what the rim has gained along the rings over across them; in side grain, along the moving direction over along the grain. */
const signedOval = ({ strain, grain, change }: MovingPiece): number =>
  grain === 'side'
    ? (Math.max(strain.radial, strain.tangential) * change) / 2
    : ((strain.tangential - strain.radial) * change) / 2;

/**
 * Diametral clearance (mm) that two moved pieces need so as never to bind, whatever the angle between their grain:
 * D (greatest strain of the tenon - least strain of the recess). Below nothing when the recess outgrows the tenon. First order.
 */
export const clearanceForMovement = (
  diameter: Millimetres,
  recess: MovingPiece,
  tenon: MovingPiece,
): Result<Millimetres> => {
  const refusal = badJoint(diameter, recess, tenon);
  if (refusal) return refuse(refusal);
  return ok(mm(diameter * (rimStrain(tenon).greatest - rimStrain(recess).least)));
};

/** A piece whose moisture may swing either way. */
export type SwingingPiece = Omit<MovingPiece, 'change'>;

/**
 * Clearance (mm) for a season: the greater need of the two pieces drying together and wetting together by `swing` percent points.
 * Never below nothing. For one wood, end grain, it is D |CT - CR| swing.
 */
export const clearanceForSeason = (
  diameter: Millimetres,
  recess: SwingingPiece,
  tenon: SwingingPiece,
  swing: MoisturePercent,
): Result<Millimetres> => {
  const refusal = firstRefusal(within('swing', swing, 0, 30, 'percent'));
  if (refusal) return refuse(refusal);
  const at = (change: number) =>
    clearanceForMovement(
      diameter,
      { ...recess, change: moisture(change) },
      { ...tenon, change: moisture(change) },
    );
  const wet = at(swing);
  const dry = at(-swing);
  if (!wet.ok) return wet;
  return dry.ok ? ok(mm(Math.max(0, wet.value, dry.value))) : dry;
};

/**
 * Mismatch of pitch (mm) gathered over an engaged length when one piece is side grain: length times the greatest difference in strain
 * along the two axes. Along the grain nothing moves, so two end-grain pieces gather none.
 */
export const pitchMismatch = (
  engagedLength: Millimetres,
  recess: MovingPiece,
  tenon: MovingPiece,
): Result<Millimetres> => {
  const refusal =
    badPiece(recess) ?? badPiece(tenon) ?? firstRefusal(within('engagedLength', engagedLength, 0, 200));
  if (refusal) return refuse(refusal);
  const along = ({ strain, grain, change }: MovingPiece): number =>
    grain === 'end' ? 0 : Math.max(strain.radial, strain.tangential) * change;
  const least = ({ strain, grain, change }: MovingPiece): number =>
    grain === 'end' ? 0 : Math.min(strain.radial, strain.tangential) * change;
  const differences = [
    along(recess) - least(tenon),
    least(recess) - along(tenon),
    along(recess) - along(tenon),
  ];
  return ok(mm(engagedLength * Math.max(...differences.map(Math.abs))));
};
