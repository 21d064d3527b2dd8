import { firstRefusal, ok, type Result, refuse, within } from '../../result.ts';
import { crestsHeld, type JointRow, type JointTable } from '../rows/joint-row.ts';
import { bisect } from '../statistics/bisect.ts';
import { cholesky, inverse, logDeterminant, solve } from '../statistics/cholesky.ts';
import type { Interval } from '../statistics/counts.ts';
import { normalCdf } from '../statistics/distributions.ts';

/** What woods of a hardness do at a pitch: plain numbers, so that a worker can send it. Read it with `heldAt`. */
interface HardnessCurve {
  /** One normal belief for each spread of woods tried: weight, coefficients that all woods share, their covariance. */
  readonly parts: readonly {
    readonly weight: number;
    readonly spread: number;
    readonly mean: readonly number[];
    readonly covariance: readonly number[];
  }[];
  /** How much woods of one hardness still differ: standard deviation of the log odds. */
  readonly woodSpread: number;
  readonly joints: number;
  readonly woods: number;
  /** Joints never tried, or whose wood's hardness no table has. */
  readonly silent: number;
}

const LEVEL = 0.9;
/** Standard deviations tried for the wood effect, with the prior weight of a half-normal of 1. */
const SPREADS = [0.05, 0.15, 0.3, 0.5, 0.75, 1, 1.3, 1.7, 2.2, 2.8];
/** Weak normal priors: intercept, log hardness and log pitch (per doubling), hardener. */
const PRIOR_MEAN = [1, 0.5, 0.5, 0.5];
const PRIOR_ERROR = [2, 1, 1, 1];
const COMMON = PRIOR_MEAN.length;
/** Where log hardness and log pitch are counted from, so that the intercept is a middling wood at a middling pitch. */
const MIDDLE = { hardness: Math.log2(5000), pitch: Math.log2(1.8) };

/**
 * Logistic curve of "crests held" on log hardness, log pitch and hardener, with an effect of its own for each wood. The wood
 * effects are integrated out (Laplace) for each spread on a grid, and the curve averaged over the grid; the interval for a new
 * wood includes how much woods differ. (Without wood effects such intervals are far too short.) Null without any joint.
 */
export const hardnessCurve = (table: JointTable): HardnessCurve | null => {
  const tried = table.rows.filter((row) => row.firstTry !== 'unknown');
  const rows = tried.filter((row) => row.hardness !== null && row.hardness > 0);
  if (rows.length === 0) return null;
  const woods = [...new Set(rows.map((row) => row.wood))].sort();
  const cells = cellsOf(rows, woods);
  const fits = SPREADS.map((spread) => laplace(cells, woods.length, spread));
  const top = Math.max(...fits.map((fit) => fit.logEvidence));
  const weights = fits.map((fit) => Math.exp(fit.logEvidence - top));
  const all = weights.reduce((sum, w) => sum + w, 0);
  const p = COMMON + woods.length;
  const parts = fits.map(({ mean, covariance }, i) => ({
    weight: (weights[i] as number) / all,
    spread: SPREADS[i] as number,
    mean: [...mean.slice(0, COMMON)],
    covariance: [0, 1, 2, 3].flatMap((j) => [...covariance.slice(j * p, j * p + COMMON)]),
  }));
  return {
    parts,
    woodSpread: parts.reduce((sum, { weight, spread }) => sum + weight * spread, 0),
    joints: rows.length,
    woods: woods.length,
    silent: table.rows.length - rows.length,
  };
};

/**
 * Held share of crests to expect of a wood never tried: middle and 90 % interval, from its hardness (newton, above 0) and the
 * pitch (mm, above 0), without hardener.
 */
export const heldAt = (
  curve: HardnessCurve,
  hardness: number,
  pitch: number,
): Result<Interval & { readonly value: number }> => {
  const refusal = firstRefusal(
    within('hardness', hardness, 1, 1e6, 'ratio'),
    within('pitch', pitch, 0.01, 100),
  );
  if (refusal) return refuse(refusal);
  const x = common(hardness, pitch, false);
  const normals = curve.parts.map(({ weight, spread, mean, covariance }) => ({
    weight,
    mean: x.reduce((sum, value, j) => sum + value * (mean[j] as number), 0),
    error: Math.sqrt(quadratic(covariance, x) + spread ** 2),
  }));
  const cdf = (eta: number) =>
    normals.reduce((sum, n) => sum + n.weight * normalCdf((eta - n.mean) / n.error), 0);
  const share = (q: number) => 1 / (1 + Math.exp(-bisect((eta) => cdf(eta) - q, -30, 30, 1e-9)));
  return ok({ value: share(0.5), low: share((1 - LEVEL) / 2), high: share((1 + LEVEL) / 2) });
};

interface Cell {
  readonly x: readonly number[];
  readonly wood: number;
  held: number;
  total: number;
}

const common = (hardness: number, pitch: number, hardened: boolean): readonly number[] => [
  1,
  Math.log2(hardness) - MIDDLE.hardness,
  Math.log2(pitch) - MIDDLE.pitch,
  hardened ? 1 : 0,
];

const cellsOf = (rows: readonly JointRow[], woods: readonly string[]): readonly Cell[] => {
  const cells = new Map<string, Cell>();
  for (const row of rows) {
    const hardened = row.hardener !== 'none';
    const key = `${row.wood}\u0000${row.hardness}\u0000${row.pitch}\u0000${hardened}`;
    const cell = cells.get(key) ?? {
      x: common(row.hardness as number, row.pitch, hardened),
      wood: woods.indexOf(row.wood),
      held: 0,
      total: 0,
    };
    cell.total++;
    if (crestsHeld(row)) cell.held++;
    cells.set(key, cell);
  }
  return [...cells.values()];
};

/** Most likely coefficients and wood effects under one spread, their covariance, and the evidence for that spread. */
const laplace = (cells: readonly Cell[], woods: number, spread: number) => {
  const p = COMMON + woods;
  const precision = Float64Array.from({ length: p }, (_, j) =>
    j < COMMON ? 1 / (PRIOR_ERROR[j] as number) ** 2 : 1 / spread ** 2,
  );
  const centre = Float64Array.from({ length: p }, (_, j) => (j < COMMON ? (PRIOR_MEAN[j] as number) : 0));
  let mean: Float64Array = centre.slice();
  let at = posterior(cells, mean, centre, precision);
  for (let i = 0; i < 50; i++) {
    const step = solve(at.factor, p, at.gradient);
    let scale = 1;
    let next = posterior(
      cells,
      mean.map((b, j) => b + (step[j] as number)),
      centre,
      precision,
    );
    while (next.log < at.log && scale > 1e-6) {
      scale /= 2;
      next = posterior(
        cells,
        mean.map((b, j) => b + scale * (step[j] as number)),
        centre,
        precision,
      );
    }
    mean = mean.map((b, j) => b + scale * (step[j] as number));
    at = next;
    if (Math.max(...step.map(Math.abs)) * scale < 1e-9) break;
  }
  const logEvidence =
    at.log +
    (woods * Math.log(1 / spread ** 2)) / 2 -
    logDeterminant(at.factor, p) / 2 -
    spread ** 2 / 2 +
    Math.log(width(spread));
  return { mean, covariance: inverse(at.factor, p), logEvidence };
};

/** Share of the axis that a grid point stands for. */
const width = (spread: number): number => {
  const i = SPREADS.indexOf(spread);
  return ((SPREADS[i + 1] ?? 3.4) - (SPREADS[i - 1] ?? 0)) / 2;
};

const posterior = (
  cells: readonly Cell[],
  b: Float64Array,
  centre: Float64Array,
  precision: Float64Array,
) => {
  const p = b.length;
  const gradient = new Float64Array(p);
  const hessian = new Float64Array(p * p);
  let log = 0;
  for (let j = 0; j < p; j++) {
    const gap = (b[j] as number) - (centre[j] as number);
    log -= ((precision[j] as number) * gap * gap) / 2;
    gradient[j] = -(precision[j] as number) * gap;
    hessian[j * p + j] = precision[j] as number;
  }
  for (const { x, wood, held, total } of cells) {
    const own = COMMON + wood;
    const at = [...x.map((value, j) => [j, value] as const), [own, 1] as const];
    const eta = at.reduce((sum, [j, value]) => sum + (b[j] as number) * value, 0);
    const share = 1 / (1 + Math.exp(-eta));
    log += held * eta - total * (Math.max(0, eta) + Math.log1p(Math.exp(-Math.abs(eta))));
    for (const [j, xj] of at) {
      gradient[j] = (gradient[j] as number) + (held - total * share) * xj;
      for (const [k, xk] of at)
        hessian[j * p + k] = (hessian[j * p + k] as number) + total * share * (1 - share) * xj * xk;
    }
  }
  // Priors make it positive definite whatever the joints say.
  return { log, gradient, factor: cholesky(hessian, p, 0) as Float64Array };
};

/** x' C x. */
const quadratic = (covariance: readonly number[], x: readonly number[]): number =>
  x.reduce(
    (sum, xj, j) => sum + x.reduce((row, xk, k) => row + xj * xk * (covariance[j * COMMON + k] as number), 0),
    0,
  );
