import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { filmLoss } from './film.ts';
import { HALF_ANGLE, SLOPE } from './profile.ts';

/** Two pitches with a usual figure each; between and beyond them, a straight line through both. */
const byPitch = (pitch: number, at16: number, at10: number): number =>
  at16 + ((pitch - 1.5875) / (2.54 - 1.5875)) * (at10 - at16);

interface UsualClearance {
  readonly least: Millimetres;
  readonly usual: Millimetres;
  readonly most: Millimetres;
}

/** Least clearance worth offering, mm, however fine the pitch. */
const FLOOR = 0.05;

/**
 * Diametral clearance usual for a pitch, mm: 0.30 to 0.40 at 10 to the inch, 0.20 to 0.25 at 16, a straight line between and beyond
 * (common practice, no source). Never below 0.05 mm, so the order least <= usual <= most holds for every pitch.
 */
export const usualClearance = (pitch: Millimetres): Result<UsualClearance> => {
  const refusal = outside({ pitch });
  if (refusal) return refuse(refusal);
  const least = Math.max(FLOOR, byPitch(pitch, 0.2, 0.3));
  const most = Math.max(least, byPitch(pitch, 0.25, 0.4));
  return ok({ least: mm(least), usual: mm((least + most) / 2), most: mm(most) });
};

/** Least wall outside the relief for a pitch, mm: 3 at 10 to the inch, 2.5 at 16, a straight line through both, never below 1 (common practice, no source). */
export const leastWall = (pitch: Millimetres): Result<Millimetres> => {
  const refusal = outside({ pitch });
  return refusal ? refuse(refusal) : ok(mm(Math.max(1, byPitch(pitch, 2.5, 3))));
};

/** Share of a pair's clearance that lean may eat before a set-up stands outside its tolerance. A choice of this project, no outside source. */
export const LEAN_SHARE = 0.25;

/** What eats a joint's clearance, and what gives some back. */
interface Demands {
  /** What must be left to run freely, diametral. */
  readonly runningClearance: Millimetres;
  /** Clearance that the woods' going oval will take over the season, diametral. */
  readonly ovalMovement: Millimetres;
  readonly engagedHeight: Millimetres;
  /** Difference in lean between the two grooves. */
  readonly mismatch: Radians;
  readonly film: Millimetres;
  readonly recessFlankShift: Millimetres;
  readonly tenonFlankShift: Millimetres;
}

/** Diametral clearance that a difference in lean eats, mm: he |mismatch|/(sin A cos A), A the half angle. Plain numbers; first order. */
export const leanLoss = (engagedHeight: number, mismatch: number): number =>
  (engagedHeight * Math.abs(mismatch)) / (Math.sin(HALF_ANGLE) * Math.cos(HALF_ANGLE));

/** Diametral clearance to cut, and its parts, mm; `helix` counts the other way. */
export interface Budget {
  readonly running: Millimetres;
  readonly oval: Millimetres;
  readonly mismatch: Millimetres;
  readonly film: Millimetres;
  readonly helix: Millimetres;
  readonly toCut: Millimetres;
}

/** Left to run freely when the turner has not said otherwise, diametral mm. An estimate, no source. */
export const RUNNING_CLEARANCE: Millimetres = mm(0.1);

/**
 * Clearance to cut so that the running clearance is left when all demands have been met:
 * running + oval + he |mismatch|/(sin A cos A) + 4 film/sin A - 2 (sf + sm)/tan A, never below nothing. First order in the mismatch.
 */
export const clearanceBudget = (demands: Demands): Result<Budget> => {
  const { engagedHeight, mismatch, recessFlankShift, tenonFlankShift } = demands;
  const refusal = outside({
    runningClearance: demands.runningClearance,
    ovalMovement: demands.ovalMovement,
    engagedHeight,
    mismatch,
    recessFlankShift,
    tenonFlankShift,
  });
  if (refusal) return refuse(refusal);
  const film = filmLoss(demands.film);
  if (!film.ok) return film;
  const leaning = leanLoss(engagedHeight, mismatch);
  const helix = (2 * (recessFlankShift + tenonFlankShift)) / SLOPE;
  const sum = demands.runningClearance + demands.ovalMovement + leaning + film.value.clearance - helix;
  return ok({
    running: demands.runningClearance,
    oval: demands.ovalMovement,
    mismatch: mm(leaning),
    film: film.value.clearance,
    helix: mm(helix),
    toCut: mm(Math.max(0, sum)),
  });
};
