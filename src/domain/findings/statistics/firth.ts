import { cholesky, inverse, logDeterminant, solve, without } from './cholesky.ts';

/** Binary outcomes and what goes with them: row after row of `p` numbers, the first of each row a one. */
export interface Design {
  readonly x: Float64Array;
  readonly p: number;
  readonly y: Float64Array;
  /** How many equal rows each stands for; one each when not given. */
  readonly weight?: Float64Array;
}

/** A design from its columns, all of one length. */
export const designFrom = (
  columns: readonly Float64Array[],
  y: Float64Array,
  weight?: Float64Array,
): Design => {
  const p = columns.length;
  const x = new Float64Array(y.length * p);
  columns.forEach((column, j) => {
    for (let i = 0; i < y.length; i++) x[i * p + j] = column[i] as number;
  });
  return { x, p, y, ...(weight ? { weight } : {}) };
};

/** Row i of a design times the coefficients. */
export const predictor = ({ x, p }: Design, beta: Float64Array, i: number): number => {
  let eta = 0;
  for (let j = 0; j < p; j++) eta += (x[i * p + j] as number) * (beta[j] as number);
  return eta;
};

export interface FirthFit {
  readonly beta: Float64Array;
  /** Penalised log likelihood: log likelihood plus half the log determinant of the information. */
  readonly logLikelihood: number;
  /** Inverse of the information at the fit, row by row. */
  readonly covariance: Float64Array;
  readonly iterations: number;
}

interface At {
  readonly logLikelihood: number;
  readonly information: Float64Array;
  /** Score with Firth's correction. */
  readonly score: Float64Array;
  readonly covariance: Float64Array;
}

/** A step of a coefficient longer than this is cut short; enough halvings always climb. */
const LONGEST_STEP = 5;
const MOST_ITERATIONS = 250;
const MOST_HALVINGS = 30;
/** A step that ends on a slope back steeper than this share of the one it began with went too far; it would swing to and fro. */
const OVERSHOT = 0.5;
const SETTLED = 1e-8;

/**
 * Logistic regression with Firth's penalty (Biometrika 1993, 80: 27-38; for separation: Heinze and Schemper 2002, Statistics in
 * Medicine 21: 2409-2419): finite also when a step was always followed by a fault. Modified score
 * X'(y - pi + h (1/2 - pi)), h the leverages. With `fixed`, that coefficient is held and the others are fitted under the
 * penalty of the full model, as a profile needs. Null when the columns are not independent, or it does not settle.
 */
export const firth = (
  design: Design,
  fixed?: { readonly index: number; readonly value: number },
  start?: Float64Array,
): FirthFit | null => {
  const { p } = design;
  let beta = start ? start.slice() : new Float64Array(p);
  if (fixed) beta[fixed.index] = fixed.value;
  let at = evaluate(design, beta);
  for (let iteration = 1; at && iteration <= MOST_ITERATIONS; iteration++) {
    const step = newtonStep(at, p, fixed?.index);
    if (!step) return null;
    const longest = step.reduce((most, s) => Math.max(most, Math.abs(s)), 0);
    let scale = Math.min(1, LONGEST_STEP / longest);
    let next: At | null = null;
    let tried = beta;
    const slope = dot(at.score, step);
    for (let halving = 0; halving < MOST_HALVINGS; halving++, scale /= 2) {
      tried = beta.map((b, i) => b + scale * (step[i] as number));
      next = evaluate(design, tried);
      const isHigher = next && next.logLikelihood >= at.logLikelihood - 1e-12 * Math.abs(at.logLikelihood);
      if (next && isHigher && dot(next.score, step) >= -OVERSHOT * slope) break;
      next = null;
    }
    const settled = longest * Math.min(1, scale) < SETTLED || next === null;
    if (next) {
      beta = tried;
      at = next;
    }
    if (settled)
      return { beta, logLikelihood: at.logLikelihood, covariance: at.covariance, iterations: iteration };
  }
  return null;
};

const dot = (a: Float64Array, b: Float64Array): number =>
  a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);

const newtonStep = (at: At, p: number, held: number | undefined): Float64Array | null => {
  if (held === undefined) {
    const step = new Float64Array(p);
    for (let i = 0; i < p; i++)
      for (let j = 0; j < p; j++)
        step[i] = (step[i] as number) + (at.covariance[i * p + j] as number) * (at.score[j] as number);
    return step;
  }
  if (p === 1) return new Float64Array(1);
  const l = cholesky(without(at.information, p, held), p - 1);
  if (!l) return null;
  const free = solve(
    l,
    p - 1,
    at.score.filter((_, i) => i !== held),
  );
  return Float64Array.from({ length: p }, (_, i) =>
    i === held ? 0 : (free[i < held ? i : i - 1] as number),
  );
};

/** Everything Newton needs at one point; null where the information is not positive definite. */
const evaluate = (design: Design, beta: Float64Array): At | null => {
  const { x, p, y, weight } = design;
  const n = y.length;
  const pi = new Float64Array(n);
  const information = new Float64Array(p * p);
  let likelihood = 0;
  for (let i = 0; i < n; i++) {
    const eta = predictor(design, beta, i);
    const w = weight ? (weight[i] as number) : 1;
    const tail = Math.exp(-Math.abs(eta));
    const mean = eta >= 0 ? 1 / (1 + tail) : tail / (1 + tail);
    pi[i] = mean;
    likelihood += w * ((y[i] as number) * eta - Math.max(0, eta) - Math.log1p(tail));
    const v = (w * tail) / ((1 + tail) * (1 + tail));
    const row = i * p;
    for (let j = 0; j < p; j++) {
      const vx = v * (x[row + j] as number);
      for (let k = 0; k <= j; k++)
        information[j * p + k] = (information[j * p + k] as number) + vx * (x[row + k] as number);
    }
  }
  for (let j = 0; j < p; j++)
    for (let k = 0; k < j; k++) information[k * p + j] = information[j * p + k] as number;
  const l = cholesky(information, p);
  if (!l) return null;
  const covariance = inverse(l, p);
  const score = new Float64Array(p);
  for (let i = 0; i < n; i++) {
    const row = i * p;
    let quadratic = 0;
    for (let j = 0; j < p; j++) {
      let cross = 0;
      for (let k = 0; k < j; k++) cross += (covariance[j * p + k] as number) * (x[row + k] as number);
      const xj = x[row + j] as number;
      quadratic += xj * (2 * cross + (covariance[j * p + j] as number) * xj);
    }
    const mean = pi[i] as number;
    const w = weight ? (weight[i] as number) : 1;
    // The leverage of one row of weight one; w rows share the same.
    const leverage = mean * (1 - mean) * quadratic;
    const residual = w * ((y[i] as number) - mean + leverage * (0.5 - mean));
    for (let j = 0; j < p; j++) score[j] = (score[j] as number) + residual * (x[row + j] as number);
  }
  return { logLikelihood: likelihood + logDeterminant(l, p) / 2, information, score, covariance };
};
