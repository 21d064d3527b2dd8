import type { JointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';
import type { Standing } from './standing.ts';
import type { DiagnosisView, TrialView } from './view.ts';

/** Readings of a trial or of the pieces; NaN is not taken. One record for each trial. */
export interface Readings {
  readonly endPlay: number;
  readonly turnsOn: number;
  readonly bottomGap: number;
  readonly crestRecess: number;
  readonly crestTenon: number;
  /** Of the pieces as they are now: weighed once, at the last trial. */
  readonly boreTaper: number;
  readonly tenonTaper: number;
  readonly outOfRound: number;
}

export const noReadings: Readings = {
  endPlay: Number.NaN,
  turnsOn: Number.NaN,
  bottomGap: Number.NaN,
  crestRecess: Number.NaN,
  crestTenon: Number.NaN,
  boreTaper: Number.NaN,
  tenonTaper: Number.NaN,
  outOfRound: Number.NaN,
};

const orNot = (value: number | null): number => value ?? Number.NaN;

export const readingsOf = (trial: TrialView, view: DiagnosisView, isLast: boolean): Readings => ({
  endPlay: orNot(trial.endPlay),
  turnsOn: orNot(trial.turnsOn),
  bottomGap: orNot(trial.bottomGap),
  crestRecess: trial.crestFlat?.part === 'recess' ? trial.crestFlat.width : Number.NaN,
  crestTenon: trial.crestFlat?.part === 'tenon' ? trial.crestFlat.width : Number.NaN,
  boreTaper: isLast ? orNot(view.joint.boreTaper) : Number.NaN,
  tenonTaper: isLast ? orNot(view.joint.tenonTaper) : Number.NaN,
  outOfRound: isLast ? orNot(view.joint.outOfRound) : Number.NaN,
});

/** Density of a reading around what is predicted; a share of readings is simply wrong, anywhere in `range`. */
export const density = (
  reading: number,
  predicted: number,
  sd: number,
  lost: number,
  range: number,
): number => {
  const z = (reading - predicted) / sd;
  return lost / range + ((1 - lost) * Math.exp((-z * z) / 2)) / (sd * 2.5066);
};

const LOST = 0.06;
/** A play that is not there can hardly be felt, so a wrong reading of it is small, or a part or a multiple of what there is. */
const playDensity = (reading: number, play: number): number => {
  const range = 0.05 + 2.5 * play;
  const wrong = reading <= range ? LOST / range : 1e-4;
  return wrong + (1 - LOST) * density(reading, play, playSd(play), 0, 1);
};

/** Turns before it stops or sticks. A hand turns on until the tightness, grown with the turns, holds it. */
export const turnsPredicted = (joint: Latent, box: JointNumbers, at: Standing): number => {
  const stuck = Math.max(at.tightness, at.lateness / 2);
  const byForce = stuck > 0.01 ? (0.5 * joint.hand) / stuck : box.threads;
  return Math.max(0, Math.min(box.threads, byForce, box.threads - Math.max(0, at.stop) / box.pitch));
};

const playSd = (play: number): number => 0.03 + 0.08 * play;
const outOfRoundSd = (oval: number): number => 0.04 + 0.35 * oval;

/** By how much the readings at hand speak for this joint: a product of densities, 1 without any reading. */
export const readingsDensity = (of: Readings, joint: Latent, box: JointNumbers, at: Standing): number => {
  let product = 1;
  if (!Number.isNaN(of.endPlay)) product *= playDensity(of.endPlay, at.play);
  if (!Number.isNaN(of.turnsOn))
    product *= density(of.turnsOn, turnsPredicted(joint, box, at), 0.55, 0.12, box.threads + 1);
  if (!Number.isNaN(of.bottomGap)) product *= density(of.bottomGap, joint.floor, 0.13, LOST, 4);
  if (!Number.isNaN(of.crestRecess))
    product *= density(of.crestRecess, Math.max(0, at.flatRecess), 0.07, LOST, box.pitch);
  if (!Number.isNaN(of.crestTenon))
    product *= density(of.crestTenon, Math.max(0, at.flatTenon), 0.07, LOST, box.pitch);
  if (!Number.isNaN(of.boreTaper)) product *= density(of.boreTaper, joint.taperBore, 0.05, LOST, 1.5);
  if (!Number.isNaN(of.tenonTaper)) product *= density(of.tenonTaper, joint.taperTenon, 0.05, LOST, 1.5);
  if (!Number.isNaN(of.outOfRound))
    product *= density(of.outOfRound, joint.oval, outOfRoundSd(joint.oval), LOST, 1.5);
  return product;
};
