import type { SilentBecause } from '../rows/exposure.ts';
import { inTimeOrder, type JointRow, type JointTable, type Symptom } from '../rows/joint-row.ts';
import { type Interval, rateDifference, type TwoByTwo } from '../statistics/counts.ts';
import type { ExactTest } from '../statistics/exact.ts';
import { newcombeDifference, relativeRiskInterval } from '../statistics/intervals.ts';
import { homogeneity, type PooledOdds, pooledOdds } from '../statistics/mantel-haenszel.ts';
import { type HowManyMore, howManyMore } from './how-many-more.ts';
import { mechanismOf } from './mechanism.ts';
import { type Covariate, modelInterval, type StepModel } from './step-model.ts';
import { type Weighed, weighSteps, wordingsOf } from './weigh-steps.ts';
import { checkpoint, type Wording } from './wording.ts';

/** One step against the first trial fit, as numbers. Rates are shares (0 to 1); the page shows boxes in 100. */
export interface StepLink {
  readonly step: string;
  /** The wording, from the boxes up to the last checkpoint. */
  readonly wording: Wording;
  /** a: missed and failed in a way it can explain; b: missed and not; c, d: the same where it was done. */
  readonly table: TwoByTwo;
  /** Boxes that tell nothing about this step, by reason. */
  readonly silent: Readonly<Record<SilentBecause, number>>;
  readonly explains: readonly Symptom[];
  readonly cannot: readonly Symptom[];
  /** Failed share among missed minus among done; null while one side is empty. */
  readonly difference: (Interval & { readonly value: number }) | null;
  /** Failed share among missed over that among done; null while nothing failed or a side is empty. */
  readonly relativeRisk: (Interval & { readonly value: number | null }) | null;
  /** Share of the failures among the missed beyond the rate among the done; only when that is surely more than none. */
  readonly shareBeyond: number | null;
  /** The exact test within wood group and pitch. */
  readonly exact: ExactTest;
  readonly pooled: PooledOdds | null;
  /** p of "the same link in every wood group and pitch"; null when the cells are too small to ask. */
  readonly sameEverywhere: number | null;
  /** The model beside it: odds ratio, standardised difference, p; null while the step or the outcome does not vary. */
  readonly model: ModelNumbers | null;
  /** p of the test that allows for clusters of boxes (one day, one set-up); null when there are none. */
  readonly clusterP: number | null;
  /** Largest p of the three tests. */
  readonly p: number;
  /** The same step against faults it cannot cause. */
  readonly control: { readonly table: TwoByTwo; readonly p: number };
  /** Steps missed in exactly the same boxes: the log cannot tell them apart. */
  readonly sameBoxesAs: readonly string[];
  readonly howManyMore: HowManyMore | null;
  /** Boxes in it whose wood's hardness no table has. */
  readonly hardnessAssumed: number;
}

interface ModelNumbers {
  readonly odds: Interval & { readonly value: number };
  readonly difference: Interval & { readonly value: number };
  readonly p: number;
  readonly covariates: readonly Covariate[];
}

export interface StepLinks {
  readonly links: readonly StepLink[];
  /** Boxes with a first trial. */
  readonly boxes: number;
  /** How many of them, the oldest first, the wordings are based on; 0: none yet. */
  readonly wordsAt: number;
  readonly wordsNext: number;
}

/** Every step of the table against the first trial fit. Order of rows does not matter; nothing in, nothing but zeros out. */
export const stepLinks = (table: JointTable): StepLinks => {
  const rows = inTimeOrder(table.rows).filter((row) => row.firstTry !== 'unknown');
  const untried = table.rows.filter((row) => row.firstTry === 'unknown');
  const words = checkpoint(rows.length);
  const now = weighSteps(rows, table.steps);
  const then = words.at === rows.length ? now : weighSteps(rows.slice(0, words.at), table.steps);
  const wordings = wordingsOf(then);
  return {
    links: now.map((weighed, i) => linkOf(weighed, wordings[i] as Wording, untried)),
    boxes: rows.length,
    wordsAt: words.at,
    wordsNext: words.next,
  };
};

const linkOf = (weighed: Weighed, wording: Wording, untried: readonly JointRow[]): StepLink => {
  const { step, seen, silent, table, strata, exact, model, clusterP, p, control, sameBoxesAs } = weighed;
  const value = rateDifference(table);
  const risk = relativeRiskInterval(table);
  const ratio = table.c === 0 ? null : table.a / (table.a + table.b) / (table.c / (table.c + table.d));
  return {
    step: step.key,
    wording,
    table,
    silent: { ...silent, 'never-tried': silent['never-tried'] + untried.length },
    ...mechanismOf(step.guards),
    difference: value === null ? null : { value, ...newcombeDifference(table) },
    relativeRisk: risk && { value: ratio, ...risk },
    shareBeyond: risk && ratio !== null && risk.low > 1 ? 1 - 1 / ratio : null,
    exact,
    pooled: pooledOdds(strata),
    sameEverywhere: homogeneity(strata)?.p ?? null,
    model: model && modelNumbers(model),
    clusterP,
    p,
    control,
    sameBoxesAs,
    howManyMore: howManyMore(table),
    hardnessAssumed: seen.filter(({ row }) => row.hardness === null).length,
  };
};

const modelNumbers = (model: StepModel): ModelNumbers => {
  const { logOdds, difference } = modelInterval(model, 0.95);
  return {
    odds: { value: Math.exp(model.logOdds), low: Math.exp(logOdds.low), high: Math.exp(logOdds.high) },
    difference: { value: model.difference, ...difference },
    p: model.p,
    covariates: model.covariates,
  };
};
