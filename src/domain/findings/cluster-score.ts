import { cholesky, solve } from './cholesky.ts';
import { tTails } from './distributions.ts';
import { firth } from './firth.ts';
import type { StepModel } from './step-model.ts';

export interface ClusterTest {
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
  const { columns, y } = model.design;
  const held = firth(model.design, { index: 1, value: 0 }, model.fit.beta);
  if (!held) return null;
  const others = columns.filter((_, j) => j !== 1);
  const step = columns[1] as Float64Array;
  const n = y.length;
  const mean = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let eta = 0;
    for (let j = 0; j < columns.length; j++)
      eta += (held.beta[j] as number) * ((columns[j] as Float64Array)[i] as number);
    mean[i] = 1 / (1 + Math.exp(-eta));
  }
  const explained = weightedFit(
    others,
    step,
    mean.map((m) => m * (1 - m)),
  );
  if (!explained) return null;
  const sums = new Map<string, number>();
  for (let i = 0; i < n; i++) {
    const own = (step[i] as number) - (explained[i] as number);
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

/** Fitted values of a weighted least-squares regression of `target` on the columns. */
const weightedFit = (
  columns: readonly Float64Array[],
  target: Float64Array,
  weight: Float64Array,
): Float64Array | null => {
  const p = columns.length;
  const normal = new Float64Array(p * p);
  const right = new Float64Array(p);
  for (let i = 0; i < target.length; i++)
    for (let j = 0; j < p; j++) {
      const wx = (weight[i] as number) * ((columns[j] as Float64Array)[i] as number);
      right[j] = (right[j] as number) + wx * (target[i] as number);
      for (let k = 0; k < p; k++)
        normal[j * p + k] = (normal[j * p + k] as number) + wx * ((columns[k] as Float64Array)[i] as number);
    }
  const l = cholesky(normal, p);
  if (!l) return null;
  const beta = solve(l, p, right);
  return target.map((_, i) =>
    beta.reduce((sum, b, j) => sum + b * ((columns[j] as Float64Array)[i] as number), 0),
  );
};
