import { groupBy } from '../log/group-by.ts';
import { clusterScore } from './cluster-score.ts';
import { rateDifference, type TwoByTwo } from './counts.ts';
import { type ExactTest, exactOverStrata } from './exact.ts';
import { type Seen, type SilentBecause, seenFrom, stratumOf } from './exposure.ts';
import { newcombeDifference } from './intervals.ts';
import type { JointRow, StepMeaning } from './joint-row.ts';
import { mechanismOf } from './mechanism.ts';
import { holm } from './several-tests.ts';
import { hardnessOf, modelUpper, type StepModel, stepModel } from './step-model.ts';
import { type Evidence, isGated, type Verdict, wordFor } from './words.ts';

/** What the tests say of one step, before it is dressed for showing. */
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
}

/** All tests for all steps, over rows in time order that were all tried. */
export const weighSteps = (rows: readonly JointRow[], steps: readonly StepMeaning[]): readonly Weighed[] => {
  const hardness = hardnessOf(rows);
  const views = steps.map((step) => ({ step, ...seenFrom(rows, step) }));
  const patterns = views.map(({ seen }) => missedIds(seen));
  return views.map(({ step, seen, silent }, i) => {
    const exact = exactOverStrata(strataOf(seen, ({ event }) => event));
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
      strata: strataOf(seen, ({ event }) => event),
      exact,
      model,
      clusterP: cluster?.p ?? null,
      p: Math.max(exact.midP, model?.p ?? 1, cluster?.p ?? 0),
      control: controlOf(seen),
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

/** Only a harmful lean counts against a step: boxes that missed it had more of the faults it cannot cause. */
const controlOf = (seen: readonly Seen[]): Weighed['control'] => {
  const test = exactOverStrata(strataOf(seen, ({ control }) => control));
  return {
    table: tableOf(seen, ({ control }) => control),
    p: test.seen > test.expected ? test.midP : 1,
  };
};

/** The word for each step, Holm's adjustment over those that pass the gate included. */
export const verdictsOf = (all: readonly Weighed[]): readonly Verdict[] => {
  const evidence = all.map(evidenceOf);
  const gated = evidence.filter(isGated);
  const adjusted = holm(gated.map(({ p }) => p));
  return evidence.map((e) => wordFor(e, adjusted[gated.indexOf(e)] ?? 1));
};

const evidenceOf = (weighed: Weighed): Evidence => {
  const { table, exact, model } = weighed;
  const evidence = {
    missed: table.a + table.b,
    done: table.c + table.d,
    events: table.a + table.c,
    nonEvents: table.b + table.d,
    p: weighed.p,
    directions: [rateDifference(table) ?? 0, exact.seen - exact.expected, model?.logOdds ?? 0].map(signOf),
    controlP: weighed.control.p,
    explainsSomething: mechanismOf(weighed.step.guards).explains.length > 0,
    sameBoxesAs: weighed.sameBoxesAs,
    upper: [] as readonly (number | null)[],
  };
  // The model's upper end costs a profile; it is only asked for where it can matter.
  if (!isGated(evidence)) return evidence;
  const crude = newcombeDifference(table, 0.9).high;
  return { ...evidence, upper: [crude, crude < 1 && model ? modelUpper(model, 0.9) : null] };
};

/** Rounding must not make a direction out of nothing. */
const signOf = (x: number): number => (Math.abs(x) < 1e-9 ? 0 : Math.sign(x));

const tableOf = (seen: readonly Seen[], happened: (one: Seen) => boolean): TwoByTwo => {
  let [a, b, c, d] = [0, 0, 0, 0];
  for (const one of seen)
    if (one.missed) happened(one) ? a++ : b++;
    else happened(one) ? c++ : d++;
  return { a, b, c, d };
};

const strataOf = (seen: readonly Seen[], happened: (one: Seen) => boolean): readonly TwoByTwo[] =>
  [...groupBy(seen, ({ row }) => stratumOf(row)).values()].map((joints) => tableOf(joints, happened));
