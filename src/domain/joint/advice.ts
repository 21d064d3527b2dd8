import { ok, type Result } from '../result.ts';
import type { Cause } from './advice-table.ts';
import { weighings } from './cause-weights.ts';
import type { FitState, FitTarget } from './fit-target.ts';
import { type Remedy, remediesFor, stateAfter } from './remedies.ts';
import {
  type Evidence,
  evidenceOfField,
  type Field,
  type Findings,
  findingsOf,
  type KnownJoint,
  type TrialFit,
} from './trial-evidence.ts';

export type Confidence = 'likely' | 'possible' | 'slight';

export interface RankedCause {
  readonly cause: Cause;
  readonly confidence: Confidence;
  /** What of the told and measured speaks for it and against it, weightiest first. */
  readonly for: readonly Evidence[];
  readonly against: readonly Evidence[];
}

/** One thing still to tell that sets the first two causes apart: what it would have to show, and which of them that favours. */
export interface Telling {
  readonly field: Field;
  readonly evidence: Evidence;
  readonly favours: Cause;
}

/** Where what was felt, what was measured and what was cut cannot all be true. */
export type Disagreement =
  | 'tight-but-sizes-open'
  | 'loose-but-sizes-tight'
  | 'tight-but-play-large'
  | 'loose-but-no-play'
  | 'sizes-and-play-differ';

export interface Advice {
  readonly target: FitTarget;
  /** Most likely first; empty when nothing told points anywhere. */
  readonly causes: readonly RankedCause[];
  /** Against the causes that stand close to the first, in the order of the bench. */
  readonly remedies: readonly Remedy[];
  /** The fit now and after these remedies, null where it is not known. */
  readonly before: FitState;
  readonly after: FitState;
  readonly tellApart: readonly Telling[];
  /** What to tell or measure next, most telling first. */
  readonly ask: readonly Field[];
  readonly disagreements: readonly Disagreement[];
}

const LIKELY = 2.5;
const POSSIBLE = 1.2;
const SLIGHT = 0.6;
/** Causes this close to the first are acted on with it; three at most. */
const CLOSE = 1;
const MOST_SUSPECTS = 3;
/** A weight that points; a cause with nothing better than hints is not named. */
const TELLING = 1;
/** Sizes and play that differ by more than this cannot both be right, mm of clearance. An estimate, no source. */
const DIFFERENT = 0.2;

interface Scored extends RankedCause {
  readonly score: number;
}

const weightOf = (cause: Cause, evidence: Evidence): number => weighings[cause].weights[evidence] ?? 0;

const scored = (cause: Cause, evidence: ReadonlySet<Evidence>): Scored => {
  const weighed = [...evidence]
    .map((each) => [each, weightOf(cause, each)] as const)
    .sort(([, a], [, b]) => Math.abs(b) - Math.abs(a));
  const supports = weighed.filter(([, weight]) => weight > 0).map(([each]) => each);
  const score = weighed.reduce((sum, [, weight]) => sum + weight, weighings[cause].prior);
  return {
    cause,
    score: weighed.some(([, weight]) => weight >= TELLING) ? score : Number.NEGATIVE_INFINITY,
    confidence: score >= LIKELY ? 'likely' : score >= POSSIBLE ? 'possible' : 'slight',
    for: supports,
    against: weighed.filter(([, weight]) => weight < 0).map(([each]) => each),
  };
};

const rank = (evidence: ReadonlySet<Evidence>): readonly Scored[] =>
  (Object.keys(weighings) as Cause[])
    .map((cause) => scored(cause, evidence))
    .filter(({ score }) => score >= SLIGHT)
    .sort((a, b) => b.score - a.score);

/** Evidence still open whose weight differs between two causes by enough to set them apart. */
const tellings = (first: Cause, second: Cause, open: readonly Field[]): readonly Telling[] =>
  open
    .flatMap((field) => evidenceOfField[field].map((evidence) => ({ field, evidence })))
    .map((each) => ({ ...each, lead: weightOf(first, each.evidence) - weightOf(second, each.evidence) }))
    .filter(({ lead }) => Math.abs(lead) >= TELLING)
    .sort((a, b) => Math.abs(b.lead) - Math.abs(a.lead))
    .map(({ field, evidence, lead }) => ({ field, evidence, favours: lead > 0 ? first : second }));

const tightWords: readonly Evidence[] = ['stiff-all-the-way', 'drags-more-each-turn'];
const looseWords: readonly Evidence[] = ['rattles-sideways', 'end-play', 'free'];

/** What makes a lid tight that is open by its sizes. */
const explains: readonly Evidence[] = ['after-finish', 'furry', 'gritty'];

const disagreementsOf = (found: Findings): readonly Disagreement[] => {
  const { evidence, clearanceByPlay, clearanceBySizes } = found;
  const has = (each: Evidence) => evidence.has(each);
  const tight = tightWords.some(has);
  const loose = looseWords.some(has);
  const sizesOpen = has('sizes-crests-clear') && (has('sizes-flanks-right') || has('sizes-flanks-loose'));
  const apart =
    clearanceByPlay !== null &&
    clearanceBySizes !== null &&
    Math.abs(clearanceByPlay - Math.max(0, clearanceBySizes)) > DIFFERENT;
  const checks: readonly (readonly [Disagreement, boolean])[] = [
    ['tight-but-sizes-open', tight && sizesOpen && !explains.some(has)],
    ['loose-but-sizes-tight', loose && has('sizes-flanks-tight')],
    ['tight-but-play-large', tight && has('play-large')],
    ['loose-but-no-play', loose && has('play-none')],
    ['sizes-and-play-differ', apart],
  ];
  return checks.filter(([, holds]) => holds).map(([disagreement]) => disagreement);
};

/** Disagreements in which the sizes are a party: then they are to be measured again, not reckoned from. */
const aboutSizes: readonly Disagreement[] = [
  'tight-but-sizes-open',
  'loose-but-sizes-tight',
  'sizes-and-play-differ',
];

const suspectsOf = (ranked: readonly Scored[]): readonly Cause[] => {
  const best = ranked[0]?.score ?? 0;
  return ranked
    .filter(({ score }) => score >= best - CLOSE)
    .slice(0, MOST_SUSPECTS)
    .map(({ cause }) => cause);
};

const withoutScore = ({ cause, confidence, for: supports, against }: Scored): RankedCause => ({
  cause,
  confidence,
  for: supports,
  against,
});

/**
 * Advice on a trial fit that was not right: causes ranked by a table of weighed evidence, and what to do in the order of the bench with
 * exact amounts. Amounts come from end play where it was felt, else from sizes, else from two tries, else they are one bench step by
 * feel; a deepening is (wanted - now)/2 and so good to half the readings' error and half a step. Geometry alone: rigid wood, sound tools.
 */
export const adviceFor = (trial: TrialFit, known: KnownJoint): Result<Advice> => {
  const findings = findingsOf(trial, known);
  if (!findings.ok) return findings;
  const found = findings.value;
  const ranked = rank(found.evidence);
  const disagreements = disagreementsOf(found);
  const trustSizes = !disagreements.some((each) => aboutSizes.includes(each));
  const remedies = remediesFor(suspectsOf(ranked), { found, known, trustSizes });
  if (!remedies.ok) return remedies;
  const [first, second] = ranked;
  const tellApart = first && second ? tellings(first.cause, second.cause, found.open) : [];
  return ok({
    target: found.target,
    causes: ranked.map(withoutScore),
    remedies: remedies.value,
    before: found.state,
    after: stateAfter(found.state, remedies.value, known),
    tellApart,
    ask: [...new Set(tellApart.map(({ field }) => field))],
    disagreements,
  });
};
