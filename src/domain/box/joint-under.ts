import { axialPlay } from '../alignment/play.ts';
import { sidesTouched } from '../alignment/walls.ts';
import { type CutPiece, type Fit, fitOf, type Pair } from '../joint/fit.ts';
import { type FitTarget, targetFor } from '../joint/fit-target.ts';
import { SLOPE } from '../joint/profile.ts';
import { ok, type Result } from '../result.ts';
import type { Part } from '../setup/events.ts';
import type { RunState } from '../setup/fold.ts';
import { type Millimetres, type MoisturePercent, mm, moisture, type Radians, rad } from '../units/brands.ts';
import { leastClearance, rimAfter, type SwingingPiece } from '../wood/movement.ts';
import type { CalculatedBox } from './calculate.ts';
import { type LeansRead, leansRead } from './leans.ts';
import { pairToBe } from './pair.ts';
import type { Box } from './records.ts';

/** One figure for each part. */
type OfParts<T> = Readonly<Record<Part, T>>;

/** What may be changed to see what it does. Leans are the jig's own in each set-up, tailstock end to the rear. */
export interface Conditions {
  /** Taken off the tenon's diameter. */
  readonly slimmer: Millimetres;
  /** Added to the depth of the tenon's cut. */
  readonly deeper: Millimetres;
  readonly lean: OfParts<Radians>;
  /** Moisture gained since it was cut, the same for both pieces. */
  readonly moisture: MoisturePercent;
}

/** A joint as far as it is known: what was measured and cut, else what is planned. */
export interface KnownPair {
  readonly pair: Pair;
  /** Which of its figures were measured or cut, and not only planned. */
  readonly isReal: OfParts<{ readonly diameter: boolean; readonly depth: boolean }>;
  readonly leans: LeansRead;
  /** Which way a lean of the jig leans each groove. */
  readonly sides: OfParts<1 | -1>;
  readonly asItIs: Conditions;
  readonly woods: OfParts<SwingingPiece>;
  readonly swing: MoisturePercent;
  readonly target: FitTarget;
}

/** A joint under some conditions, at the tightest place round about. */
export interface JointSeen {
  readonly pair: Pair;
  /** Lean of each groove, from the mouth of its own piece. */
  readonly lean: OfParts<Radians>;
  /** Radial movement of each piece's wood at that place since it was cut. */
  readonly strain: OfParts<number>;
  readonly fit: Fit;
  /** With what the leans eat taken off; negative is interference. */
  readonly endPlay: Millimetres;
  /** Diametral clearance that this end play comes to. */
  readonly clearance: Millimetres;
  readonly eatenByLean: Millimetres;
  /** Least clearance between the flanks round about with the grain of lid and base in line; `fit` has it at the worst angle. */
  readonly clearanceInLine: Millimetres;
}

/** Unknown walls are taken as one and the same, where equal leans double. */
const UNKNOWN_WALLS = { recess: 1, tenon: 1 } as const;

/** Which way each set-up leaned was not noted: taken at its worst, unless both were one setting. */
const leanAsRead = (leans: LeansRead, sides: OfParts<1 | -1>): OfParts<Radians> => {
  const [recess, tenon] = [leans.recess?.angle ?? 0, leans.tenon?.angle ?? 0];
  const isOpposed = !leans.isOneSetting && sides.recess !== sides.tenon;
  return { recess: rad(recess), tenon: rad(isOpposed ? -tenon : tenon) };
};

export const knownPair = (
  box: Box,
  calculated: CalculatedBox,
  runs: ReadonlyMap<string, RunState>,
): Result<KnownPair> => {
  const { plan, tenon, isBoreMeasured, input, depthCut, given } = calculated;
  const target = targetFor(plan.clearance.clearance);
  if (!target.ok) return target;
  const pair = pairToBe(calculated);
  if (!pair.ok) return pair;
  const leans = leansRead(box, runs, given.rig);
  const sides = sidesTouched(given.rig) ?? UNKNOWN_WALLS;
  return ok({
    pair: pair.value,
    isReal: {
      recess: { diameter: isBoreMeasured, depth: depthCut.recess !== null },
      tenon: { diameter: tenon !== null, depth: depthCut.tenon !== null },
    },
    leans,
    sides,
    asItIs: { slimmer: mm(0), deeper: mm(0), lean: leanAsRead(leans, sides), moisture: moisture(0) },
    woods: { recess: input.woodOfRecess, tenon: input.woodOfTenon },
    swing: input.moistureSwing,
    target: target.value,
  });
};

/** A piece grown or shrunk with its wood; along the axis end grain does not move, and the pitch is left alone. */
const grown = (piece: CutPiece, strain: number): CutPiece => ({
  ...piece,
  diameter: mm(piece.diameter * (1 + strain)),
  depth: mm(piece.depth * (1 + strain)),
});

/** The joint under the conditions. Where it is tightest the recess is at its narrowest and the tenon at its widest. */
export const jointUnder = (known: KnownPair, conditions: Conditions): Result<JointSeen> => {
  const { slimmer, deeper, moisture: change } = conditions;
  const tenonAsCut: CutPiece = {
    ...known.pair.tenon,
    diameter: mm(known.pair.tenon.diameter - slimmer),
    depth: mm(known.pair.tenon.depth + deeper),
  };
  const recessRim = rimAfter(known.pair.recess.diameter, { ...known.woods.recess, change });
  if (!recessRim.ok) return recessRim;
  const tenonRim = rimAfter(tenonAsCut.diameter, { ...known.woods.tenon, change });
  if (!tenonRim.ok) return tenonRim;
  const strain = {
    recess: recessRim.value.least / known.pair.recess.diameter - 1,
    tenon: tenonRim.value.greatest / tenonAsCut.diameter - 1,
  };
  const lean = {
    recess: rad(known.sides.recess * conditions.lean.recess),
    tenon: rad(known.sides.tenon * conditions.lean.tenon),
  };
  const asCut: Pair = { ...known.pair, tenon: tenonAsCut };
  const moved = { recess: grown(asCut.recess, strain.recess), tenon: grown(tenonAsCut, strain.tenon) };
  const fit = fitOf({ ...asCut, ...moved });
  if (!fit.ok) return fit;
  const unmoved = fitOf(asCut);
  if (!unmoved.ok) return unmoved;
  const inLine = leastClearance(
    unmoved.value.clearance,
    asCut.recess.diameter,
    { ...known.woods.recess, change },
    { ...known.woods.tenon, change },
    rad(0),
  );
  if (!inLine.ok) return inLine;
  const play = axialPlay({
    pitch: asCut.pitch,
    recess: { ...moved.recess, lean: lean.recess },
    tenon: { ...moved.tenon, lean: lean.tenon },
  });
  // Without overlap there is no thread whose play could be told.
  const endPlay = play.ok ? play.value : fit.value.endPlay;
  return ok({
    pair: asCut,
    lean,
    strain,
    fit: fit.value,
    endPlay,
    clearance: mm(endPlay / SLOPE),
    eatenByLean: mm(Math.max(0, fit.value.endPlay - endPlay)),
    clearanceInLine: inLine.value,
  });
};
