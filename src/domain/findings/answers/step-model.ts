import { groupBy } from '../../group-by.ts';
import { exposureOf, otherSkips, type Seen } from '../rows/exposure.ts';
import type { JointRow, StepMeaning } from '../rows/joint-row.ts';
import type { Interval } from '../statistics/counts.ts';
import { type Level, zOf } from '../statistics/distributions.ts';
import { type Design, designFrom, type FirthFit, firth, predictor } from '../statistics/firth.ts';
import { profileEnd, profileTest } from '../statistics/firth-profile.ts';
import { median } from '../statistics/rank-statistics.ts';

/** A covariate of the model; those that do not vary, or only repeat others, are left out of it. */
export type Covariate = 'other-skips' | 'hardness' | 'pitch' | 'experience' | 'other-step' | 'log';

export interface StepModel {
  readonly design: Design;
  readonly fit: FirthFit;
  /** In the model beside the step itself. */
  readonly covariates: readonly Covariate[];
  readonly p: number;
  readonly logOdds: number;
  /** Failed share if every joint here had missed the step, less that if none had. */
  readonly difference: number;
}

/** Column of the step itself, after the ones. */
export const STEP = 1;
const MOST_SKIPS = 4;

/**
 * Firth's model of one step over the joints seen from it, optionally with one other step beside it; null when the step or the
 * outcome does not vary, or no fit is found.
 */
export const stepModel = (
  seen: readonly Seen[],
  step: StepMeaning,
  hardness: (row: JointRow) => number | null,
  beside?: string,
): StepModel | null => {
  const { design, covariates } = designOf(seen, step, hardness, beside);
  if (design.p <= STEP) return null;
  const fit = firth(design);
  const test = fit && profileTest(design, fit, STEP);
  if (!test) return null;
  return {
    design,
    fit,
    covariates,
    p: test.p,
    logOdds: test.value,
    difference: standardised(design, fit.beta),
  };
};

/** Interval of the step's log odds ratio and of the standardised difference, from the same profile. */
export const modelInterval = (
  model: StepModel,
  level: Level,
): { readonly logOdds: Interval; readonly difference: Interval } => {
  const low = profileEnd(model.design, model.fit, STEP, -1, zOf(level));
  const high = profileEnd(model.design, model.fit, STEP, 1, zOf(level));
  return {
    logOdds: { low: low?.value ?? Number.NEGATIVE_INFINITY, high: high?.value ?? Number.POSITIVE_INFINITY },
    difference: {
      low: low ? standardised(model.design, low.beta) : -1,
      high: high ? standardised(model.design, high.beta) : 1,
    },
  };
};

/** Upper end alone, for the rule of words. */
export const modelUpper = (model: StepModel, level: Level): number | null => {
  const high = profileEnd(model.design, model.fit, STEP, 1, zOf(level));
  return high && standardised(model.design, high.beta);
};

/** Log hardness of a joint's wood; where no table has it, the median of its wood group here, else of all. */
export const hardnessOf = (all: readonly JointRow[]): ((row: JointRow) => number | null) => {
  const known = all.filter((row) => row.hardness !== null && row.hardness > 0);
  const middle = (rows: readonly JointRow[]) => median(rows.map((row) => Math.log(row.hardness as number)));
  const ofGroup = new Map(
    [...groupBy(known, (row) => row.woodGroup)].map(([group, rows]) => [group, middle(rows)]),
  );
  const ofAll = middle(known);
  return (row) =>
    row.hardness !== null && row.hardness > 0
      ? Math.log(row.hardness)
      : (ofGroup.get(row.woodGroup) ?? ofAll);
};

const designOf = (
  seen: readonly Seen[],
  step: StepMeaning,
  hardness: (row: JointRow) => number | null,
  beside: string | undefined,
) => {
  const column = (of: (one: Seen) => number) => {
    const values = new Float64Array(seen.length);
    seen.forEach((one, i) => {
      values[i] = of(one);
    });
    return values;
  };
  const logs = [...new Set(seen.map(({ row }) => row.log))].sort().slice(1);
  const wished: readonly (readonly [Covariate, Float64Array])[] = [
    ['other-skips', column(({ row }) => Math.min(MOST_SKIPS, otherSkips(row, step.key)))],
    ['hardness', column(({ row }) => hardness(row) ?? 0)],
    ['pitch', column(({ row }) => row.pitch)],
    ['experience', column(({ row }) => Math.log(Math.max(1, row.experience)))],
    ...(beside === undefined
      ? []
      : [['other-step', column(({ row }) => (exposureOf(row, beside) === 'missed' ? 1 : 0))] as const]),
    ...logs.map((log) => ['log', column(({ row }) => (row.log === log ? 1 : 0))] as const),
  ];
  const columns: Float64Array[] = [];
  const basis: Float64Array[] = [];
  const covariates: Covariate[] = [];
  const admitted = (candidate: Float64Array): boolean => {
    const left = leftOver(candidate, basis);
    if (!left) return false;
    basis.push(left);
    columns.push(candidate);
    return true;
  };
  admitted(new Float64Array(seen.length).fill(1));
  if (admitted(column(({ missed }) => (missed ? 1 : 0))))
    for (const [name, values] of wished) if (admitted(standardScale(values))) covariates.push(name);
  return {
    design: designFrom(
      columns,
      column(({ event }) => (event ? 1 : 0)),
    ),
    covariates,
  };
};

/** Mean 0 and spread 1: the step's coefficient and its likelihood do not depend on a covariate's unit. */
const standardScale = (values: Float64Array): Float64Array => {
  const mean = values.reduce((sum, x) => sum + x, 0) / values.length;
  const spread = Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / values.length);
  return spread > 1e-9 * Math.max(1, Math.abs(mean))
    ? values.map((x) => (x - mean) / spread)
    : new Float64Array(values.length);
};

/** What of a column the others do not already say, scaled to length 1; null when that is nothing. */
const leftOver = (column: Float64Array, basis: readonly Float64Array[]): Float64Array | null => {
  const length = norm(column);
  if (length === 0) return null;
  const left = column.slice();
  for (const unit of basis) {
    let along = 0;
    for (let i = 0; i < left.length; i++) along += (left[i] as number) * (unit[i] as number);
    for (let i = 0; i < left.length; i++) left[i] = (left[i] as number) - along * (unit[i] as number);
  }
  const rest = norm(left);
  return rest > 1e-6 * length ? left.map((x) => x / rest) : null;
};

const norm = (column: Float64Array): number => Math.sqrt(column.reduce((sum, x) => sum + x * x, 0));

const standardised = (design: Design, beta: Float64Array): number => {
  const { x, p, y } = design;
  const own = beta[STEP] as number;
  let difference = 0;
  for (let i = 0; i < y.length; i++) {
    const without = predictor(design, beta, i) - own * (x[i * p + STEP] as number);
    difference += 1 / (1 + Math.exp(-without - own)) - 1 / (1 + Math.exp(-without));
  }
  return difference / y.length;
};
