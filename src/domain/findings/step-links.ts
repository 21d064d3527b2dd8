import { counted, EMPTY_TABLE, type Interval, rateDifference, type TwoByTwo } from './counts.ts';
import { type ExactTest, exactOverStrata } from './exact.ts';
import { type Seen, type SilentBecause, seenFrom, stratumOf } from './exposure.ts';
import { newcombeDifference, relativeRiskInterval } from './intervals.ts';
import { inTimeOrder, type JointTable, type StepMeaning, type Symptom } from './joint-row.ts';
import { homogeneity, type PooledOdds, pooledOdds } from './mantel-haenszel.ts';
import { mechanismOf } from './mechanism.ts';

/** One step against the first trial fit, as numbers. Rates are shares (0 to 1); the page shows boxes in 100. */
export interface StepLink {
  readonly step: string;
  /** a: missed and failed in a way it can explain; b: missed and not; c, d: the same where it was done. */
  readonly table: TwoByTwo;
  /** Boxes that say nothing of this step, by reason. */
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
}

/** Every step of the table against the first trial fit. Order of rows does not matter; nothing in, nothing but zeros out. */
export const stepLinks = (table: JointTable): readonly StepLink[] => {
  const rows = inTimeOrder(table.rows);
  return table.steps.map((step) => linkOf(step, seenFrom(rows, step)));
};

const linkOf = (step: StepMeaning, { seen, silent }: ReturnType<typeof seenFrom>): StepLink => {
  const table = tableOf(seen);
  const strata = strataOf(seen);
  const value = rateDifference(table);
  const risk = relativeRiskInterval(table);
  const ratio = table.c === 0 ? null : table.a / (table.a + table.b) / (table.c / (table.c + table.d));
  return {
    step: step.key,
    table,
    silent,
    ...mechanismOf(step.guards),
    difference: value === null ? null : { value, ...newcombeDifference(table) },
    relativeRisk: risk && { value: ratio, ...risk },
    shareBeyond: risk && ratio !== null && risk.low > 1 ? 1 - 1 / ratio : null,
    exact: exactOverStrata(strata),
    pooled: pooledOdds(strata),
    sameEverywhere: homogeneity(strata)?.p ?? null,
  };
};

const tableOf = (seen: readonly Seen[]): TwoByTwo =>
  seen.reduce((table, { missed, event }) => counted(table, missed, event), EMPTY_TABLE);

const strataOf = (seen: readonly Seen[]): readonly TwoByTwo[] => {
  const strata = new Map<string, TwoByTwo>();
  for (const { row, missed, event } of seen) {
    const key = stratumOf(row);
    strata.set(key, counted(strata.get(key) ?? EMPTY_TABLE, missed, event));
  }
  return [...strata.values()];
};
