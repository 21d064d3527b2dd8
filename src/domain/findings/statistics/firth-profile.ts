import { chiSquareTail } from './distributions.ts';
import { type Design, type FirthFit, firth } from './firth.ts';

/** One coefficient seen by its profile. */
interface Profile {
  readonly value: number;
  /** Penalised likelihood-ratio test of zero, under the penalty of the full model. */
  readonly chiSquare: number;
  readonly p: number;
}

interface ProfileEnd {
  /** End of the interval for the coefficient. */
  readonly value: number;
  /** All coefficients there, the others fitted. */
  readonly beta: Float64Array;
}

/** Likelihood-ratio test of one coefficient. Null when the constrained fit does not settle. */
export const profileTest = (design: Design, fit: FirthFit, index: number): Profile | null => {
  const held = heldAt(design, fit, index, 0);
  if (!held) return null;
  const chiSquare = Math.max(0, 2 * (fit.logLikelihood - held.logLikelihood));
  return { value: fit.beta[index] as number, chiSquare, p: chiSquareTail(chiSquare, 1) };
};

const FARTHEST = 50;
const CLOSE = 1e-8;

/**
 * One end of the profile penalised likelihood interval: where twice the loss of log likelihood reaches z squared, below the fit (-1) or
 * above it (1). Found by the secant on the signed root of that loss, which is nearly a straight line, with halving as its safety. Null
 * when it is not reached within 50 of the fit.
 */
export const profileEnd = (
  design: Design,
  fit: FirthFit,
  index: number,
  side: -1 | 1,
  z: number,
): ProfileEnd | null => {
  const { p } = design;
  const centre = fit.beta[index] as number;
  const error = Math.sqrt(fit.covariance[index * p + index] as number);
  /** Signed root of the loss at a distance, less z: negative inside. */
  let last = fit;
  const rootAt = (distance: number): { root: number; beta: Float64Array } | null => {
    const held = heldAt(design, last, index, centre + side * distance);
    if (!held) return null;
    last = held;
    return {
      root: Math.sqrt(Math.max(0, 2 * (fit.logLikelihood - held.logLikelihood))) - z,
      beta: held.beta,
    };
  };
  let [inside, insideRoot] = [0, -z];
  let outside = Math.min(FARTHEST, z * error);
  let found = rootAt(outside);
  while (found && found.root < 0 && outside < FARTHEST) {
    [inside, insideRoot] = [outside, found.root];
    outside = Math.min(FARTHEST, outside * 1.6);
    found = rootAt(outside);
  }
  if (!found || found.root < 0) return null;
  let outsideRoot = found.root;
  let best = { distance: outside, beta: found.beta, root: found.root };
  for (let i = 0; i < 60 && Math.abs(best.root) > CLOSE && outside - inside > 1e-10; i++) {
    const secant = inside - (insideRoot * (outside - inside)) / (outsideRoot - insideRoot);
    const middle = (inside + outside) / 2;
    // Every third step halves, should one end of the secant stay put.
    const distance = i % 3 === 2 || !(secant > inside && secant < outside) ? middle : secant;
    const at = rootAt(distance);
    if (!at) return null;
    if (at.root < 0) [inside, insideRoot] = [distance, at.root];
    else [outside, outsideRoot] = [distance, at.root];
    if (Math.abs(at.root) < Math.abs(best.root)) best = { distance, ...at };
  }
  return { value: centre + side * best.distance, beta: best.beta };
};

/** Starts where the covariance of a fit nearby says the others will go, and from nothing should that fail. */
const heldAt = (design: Design, near: FirthFit, index: number, value: number): FirthFit | null => {
  const { p } = design;
  const move = (value - (near.beta[index] as number)) / (near.covariance[index * p + index] as number);
  const start = near.beta.map((b, i) => b + move * (near.covariance[i * p + index] as number));
  return firth(design, { index, value }, start) ?? firth(design, { index, value });
};
