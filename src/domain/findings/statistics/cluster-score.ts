import { STEP, type StepModel } from '../answers/step-model.ts';
import { cholesky, solve } from './cholesky.ts';
import { tTails } from './distributions.ts';
import { type Design, firth, predictor } from './firth.ts';

interface ClusterTest {
  readonly t: number;
  readonly df: number;
  readonly p: number;
}

/**
 * Score test of a step that lets joints of one day or set-up share their luck: the score of each joint under "no link" is
 * summed within its cluster, and the clusters' sums are asked, as a one-sample t with G - 1 degrees of freedom, whether
 * they differ from nothing. The step's column is first freed of what the covariates say (weighted), so that only its own
 * part scores. Null when no two joints share a cluster, or fewer than three clusters are there.
 */
export const clusterScore = (model: StepModel, clusters: readonly string[]): ClusterTest | null => {
  const groups = new Set(clusters).size;
  if (groups === clusters.length || groups < 3) return null;
  const { design } = model;
  const held = firth(design, { index: STEP, value: 0 }, model.fit.beta);
  if (!held) return null;
  const { x, p, y } = design;
  const mean = y.map((_, i) => 1 / (1 + Math.exp(-predictor(design, held.beta, i))));
  const explained = explainedStep(
    design,
    mean.map((m) => m * (1 - m)),
  );
  if (!explained) return null;
  const sums = new Map<string, number>();
  for (let i = 0; i < y.length; i++) {
    const own = (x[i * p + STEP] as number) - (explained[i] as number);
    const score = own * ((y[i] as number) - (mean[i] as number));
    const cluster = clusters[i] as string;
    sums.set(cluster, (sums.get(cluster) ?? 0) + score);
  }
  const scores = [...sums.values()];
  const average = scores.reduce((sum, s) => sum + s, 0) / groups;
  const spread = scores.reduce((sum, s) => sum + (s - average) ** 2, 0) / (groups - 1);
  if (!(spread > 1e-18)) return { t: 0, df: groups - 1, p: 1 };
  const t = average / Math.sqrt(spread / groups);
  return { t, df: groups - 1, p: tTails(t, groups - 1) };
};

/** What the other columns say of the step's: fitted values of a weighted least-squares regression. */
const explainedStep = ({ x, p, y }: Design, weight: Float64Array): Float64Array | null => {
  const q = p - 1;
  const at = (i: number, j: number): number => x[i * p + (j < STEP ? j : j + 1)] as number;
  const normal = new Float64Array(q * q);
  const right = new Float64Array(q);
  for (let i = 0; i < y.length; i++)
    for (let j = 0; j < q; j++) {
      const wx = (weight[i] as number) * at(i, j);
      right[j] = (right[j] as number) + wx * (x[i * p + STEP] as number);
      for (let k = 0; k < q; k++) normal[j * q + k] = (normal[j * q + k] as number) + wx * at(i, k);
    }
  const l = cholesky(normal, q);
  if (!l) return null;
  const beta = solve(l, q, right);
  return y.map((_, i) => beta.reduce((sum, b, j) => sum + b * at(i, j), 0));
};
