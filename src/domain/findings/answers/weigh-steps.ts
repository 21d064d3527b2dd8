import { groupBy } from '../../group-by.ts';
import { type Seen, type SilentBecause, seenFrom, stratumOf } from '../rows/exposure.ts';
import type { JointRow, StepMeaning } from '../rows/joint-row.ts';
import { clusterScore } from '../statistics/cluster-score.ts';
import { rateDifference, type TwoByTwo } from '../statistics/counts.ts';
import { type ExactTest, exactOverStrata } from '../statistics/exact.ts';
import { newcombeDifference } from '../statistics/intervals.ts';
import { holm } from '../statistics/several-tests.ts';
import { mechanismOf } from './mechanism.ts';
import { hardnessOf, modelUpper, type StepModel, stepModel } from './step-model.ts';
import { isGated, type LinkEvidence, NO_SIGN_BELOW, type Wording, wordFor } from './wording.ts';

/** What the tests say about one step. */
export interface Weighed {
  readonly step: StepMeaning;
  readonly seen: readonly Seen[];
  readonly silent: Readonly<Record<SilentBecause, number>>;
  readonly table: TwoByTwo;
  readonly strata: readonly TwoByTwo[];
  readonly exact: ExactTest;
  readonly model: StepModel | null;
  readonly clusterP: number | null;
  readonly p: number;
  readonly control: { readonly table: TwoByTwo; readonly p: number };
  readonly sameBoxesAs: readonly string[];
  readonly hardness: (row: JointRow) => number | null;
}

/** All tests for all steps, over rows in time order that were all tried. */
export const weighSteps = (rows: readonly JointRow[], steps: readonly StepMeaning[]): readonly Weighed[] => {
  const hardness = hardnessOf(rows);
  const views = steps.map((step) => ({ step, ...seenFrom(rows, step) }));
  const strataByRow = new Map(rows.map((row) => [row, stratumOf(row)]));
  const stratum = (row: JointRow): string => strataByRow.get(row) ?? '';
  const patterns = views.map(({ seen }) => missedIds(seen));
  return views.map(({ step, seen, silent }, i) => {
    const strata = strataOf(seen, ({ event }) => event, stratum);
    const exact = exactOverStrata(strata);
    const model = stepModel(seen, step, hardness);
    const cluster =
      model &&
      clusterScore(
        model,
        seen.map(({ row }) => row.cluster),
      );
    return {
      step,
      seen,
      silent,
      table: tableOf(seen, ({ event }) => event),
      strata,
      exact,
      model,
      clusterP: cluster?.p ?? null,
      p: Math.max(exact.midP, model?.p ?? 1, cluster?.p ?? 0),
      control: controlOf(seen, stratum),
      hardness,
      sameBoxesAs: steps.flatMap((other, j) =>
        j !== i && patterns[i] !== '' && patterns[j] === patterns[i] ? other.key : [],
      ),
    };
  });
};

const missedIds = (seen: readonly Seen[]): string =>
  seen
    .filter(({ missed }) => missed)
    .map(({ row }) => `${row.log} ${row.id}`)
    .join('\n');

/** The negative control: it counts only when boxes that missed the step had more of the faults that it cannot cause. */
const controlOf = (seen: readonly Seen[], stratum: (row: JointRow) => string): Weighed['control'] => {
  const test = exactOverStrata(strataOf(seen, ({ control }) => control, stratum));
  return {
    table: tableOf(seen, ({ control }) => control),
    p: test.seen > test.expected ? test.midP : 1,
  };
};

/** The wording for each step, with Holm's adjustment over the steps that pass the gate. */
export const wordingsOf = (all: readonly Weighed[]): readonly Wording[] => {
  const evidence = all.map((weighed) => evidenceOf(weighed, all));
  const gated = evidence.filter(isGated);
  const adjusted = holm(gated.map(({ p }) => p));
  return evidence.map((e) => wordFor(e, adjusted[gated.indexOf(e)] ?? 1));
};

const countsOf = ({ table: { a, b, c, d } }: Weighed) => ({
  missed: a + b,
  done: c + d,
  events: a + c,
  nonEvents: b + d,
});

const evidenceOf = (weighed: Weighed, all: readonly Weighed[]): LinkEvidence => {
  const { table, exact, model } = weighed;
  const evidence = {
    ...countsOf(weighed),
    p: weighed.p,
    directions: [rateDifference(table) ?? 0, exact.seen - exact.expected, model?.logOdds ?? 0].map(signOf),
    controlP: weighed.control.p,
    explainsSomething: mechanismOf(weighed.step.guards).explains.length > 0,
    sameBoxesAs: weighed.sameBoxesAs,
    beside: () => besideStrongest(weighed, all),
    upper: [] as readonly (number | null)[],
  };
  // The model's upper end takes a whole profile, so it is computed only where it can matter.
  if (!isGated(evidence)) return evidence;
  const crude = newcombeDifference(table, 0.9).high;
  return { ...evidence, upper: [crude, crude < NO_SIGN_BELOW && model ? modelUpper(model, 0.9) : null] };
};

/** Steps that are skipped together share their links. This is what is left of one with the strongest other in the model too. */
const besideStrongest = (weighed: Weighed, all: readonly Weighed[]): ReturnType<LinkEvidence['beside']> => {
  const others = all.filter((other) => other !== weighed && isGated(countsOf(other)));
  const strongest = others.sort((a, b) => a.p - b.p || (a.step.key < b.step.key ? -1 : 1))[0];
  if (!strongest) return null;
  const model = stepModel(weighed.seen, weighed.step, weighed.hardness, strongest.step.key);
  return {
    step: strongest.step.key,
    p: model && model.logOdds > 0 ? Math.min(1, model.p * others.length) : 1,
  };
};

/** Rounding must not turn zero into a direction. */
const signOf = (x: number): number => (Math.abs(x) < 1e-9 ? 0 : Math.sign(x));

const tableOf = (seen: readonly Seen[], happened: (one: Seen) => boolean): TwoByTwo => {
  let [a, b, c, d] = [0, 0, 0, 0];
  for (const one of seen)
    if (one.missed) happened(one) ? a++ : b++;
    else happened(one) ? c++ : d++;
  return { a, b, c, d };
};

const strataOf = (
  seen: readonly Seen[],
  happened: (one: Seen) => boolean,
  stratum: (row: JointRow) => string,
): readonly TwoByTwo[] =>
  [...groupBy(seen, ({ row }) => stratum(row)).values()].map((joints) => tableOf(joints, happened));
