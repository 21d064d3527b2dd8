import { CAUSE_COUNT, upsetBy } from './causes.ts';
import type { Draws } from './draws.ts';
import type { JointNumbers } from './joint-numbers.ts';
import { CLEAR, type Latent } from './latent.ts';

const DEGREE = Math.PI / 180;
/** Everyday size of creep, spring, fuzz and raised crests, mm. Judgement, no source. */
const LITTLE = 0.015;
const SECOND_UPSET = 0.28;

/** A reading of a size: now and then somebody reads the wrong mark, so one in twenty is three times as wide. */
const reading = (draws: Draws, sd: number): number => draws.normal(0, draws.chance(0.05) ? 3 * sd : sd);

/** The errors that every joint has. Spreads are common practice (readings) and judgement (the rest), no source. */
const everyday = (joint: Latent, box: JointNumbers, draws: Draws): void => {
  joint.bore = box.bore + reading(draws, box.boreSd);
  joint.tenon = box.tenon + reading(draws, box.tenonSd);
  joint.depthRecess = box.depthRecess + draws.normal(-0.01, 0.03);
  joint.depthTenon = box.depthTenon + draws.normal(0, 0.03);
  joint.tip = box.tip + draws.normal(0, box.tipSd);
  joint.slipRecess = 0;
  joint.slipTenon = 0;
  joint.lean = draws.half(0.5 * DEGREE);
  joint.creepRecess = draws.half(LITTLE / 2);
  joint.creepTenon = draws.half(LITTLE / 2);
  joint.springRecess = draws.half(LITTLE / 2);
  joint.springTenon = draws.half(LITTLE / 2);
  joint.raisedRecess = draws.half(LITTLE);
  joint.raisedTenon = draws.half(LITTLE);
  joint.taperBore = draws.normal(0, 0.04);
  joint.taperTenon = draws.normal(0, 0.04);
  joint.eccentric = draws.half(0.03);
  joint.eccentricFelt = 0;
  joint.float = 0;
  joint.tilt = draws.half(0.04 * DEGREE);
  joint.film = draws.half(0.003);
  joint.fuzz = draws.half(LITTLE);
  joint.chips = 0;
  joint.oval = 0;
  joint.ovalOne = 0;
  joint.squeeze = 0;
  joint.floor = box.floor + draws.normal(0, 0.2);
  joint.relief = -CLEAR;
  joint.last = -CLEAR;
  joint.hump = 0;
  joint.struck = 0;
  joint.dent = 0;
  joint.lead = 0;
  joint.crossed = 0;
  joint.weak = 0;
  joint.burnt = 0;
  joint.wax = 0;
  joint.low = box.wanted * draws.normal(0.45, 0.1);
  joint.top = box.wanted * draws.normal(1.55, 0.12) + 0.03;
  joint.hand = Math.exp(draws.normal(0, 0.3));
  joint.luck = draws.unit();
  joint.nextSize = draws.normal(0, 0.04);
  joint.nextDepth = draws.normal(0, 0.03);
  joint.nextRaised = draws.half(LITTLE);
  joint.pickUp = draws.half(0.07);
};

/** How many joints to draw for each cause, and the weight that makes rare causes count no more than they are. */
export interface Sampling {
  readonly count: number;
  /** Cause and weight of each joint, by its number. */
  readonly causeOf: Uint8Array;
  readonly weightOf: Float64Array;
  readonly priors: readonly number[];
}

export const samplingFor = (priors: readonly number[], joints: number): Sampling => {
  const active = priors.filter((prior) => prior > 0).length;
  const counts = priors.map((prior) =>
    prior > 0 ? Math.max(1, Math.round(joints * (0.55 * prior + 0.45 / active))) : 0,
  );
  const count = counts.reduce((a, b) => a + b, 0);
  const causeOf = new Uint8Array(count);
  const weightOf = new Float64Array(count);
  let at = 0;
  for (let cause = 0; cause < CAUSE_COUNT; cause++) {
    const of = counts[cause] as number;
    causeOf.fill(cause, at, at + of);
    weightOf.fill((priors[cause] as number) / of, at, at + of);
    at += of;
  }
  return { count, causeOf, weightOf, priors };
};

const pickByPrior = (priors: readonly number[], unit: number): number => {
  let left = unit;
  for (let cause = 0; cause < priors.length; cause++) {
    left -= priors[cause] as number;
    if (left < 0) return cause;
  }
  return 0;
};

/** Write the joint of a number into `joint`: everyday errors, its cause, and in some a second one. The same number is the same joint. */
export const drawJoint = (
  number: number,
  sampling: Sampling,
  box: JointNumbers,
  draws: Draws,
  joint: Latent,
): void => {
  draws.restart(number);
  everyday(joint, box, draws);
  upsetBy(sampling.causeOf[number] as number, joint, box, draws);
  if (draws.chance(SECOND_UPSET)) upsetBy(pickByPrior(sampling.priors, draws.unit()), joint, box, draws);
  joint.depthRecess = Math.max(0, joint.depthRecess);
  joint.depthTenon = Math.max(0, joint.depthTenon);
  joint.tip = Math.max(0, joint.tip);
  joint.low = Math.max(0.02 * box.wanted, joint.low);
  joint.top = Math.max(joint.low, joint.top);
};
