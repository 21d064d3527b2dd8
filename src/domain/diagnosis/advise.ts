import { type Dial, dialTarget } from '../joint/dial.ts';
import { SLOPE } from '../joint/profile.ts';
import { askFor } from './ask.ts';
import { type Aim, movesFor } from './candidate-moves.ts';
import { CAUSE_COUNT, CAUSES, type Cause, causeIndex } from './causes.ts';
import { LEAST_REPAIR, planFrom, worthOf } from './choose.ts';
import { type AdvisedMove, calibrated, chanceWordOf, type Diagnosis, type RankedCause } from './diagnosis.ts';
import type { Facts } from './facts.ts';
import type { JointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';
import { barredBy, type Limit, type Why } from './limits.ts';
import { CUTS } from './moves.ts';
import { type Ensemble, type Outcome, outcomeOf } from './outcomes.ts';
import { emptyStanding, standingOf } from './standing.ts';
import type { DiagnosisView, MoveKind } from './view.ts';

/** A barred move must beat the best legal one by this factor to be named. */
const NAMED_WHEN_BETTER = 1.15;

export interface Shares {
  /** Share of each cause in each joint, joint by joint. */
  readonly each: Float64Array;
  readonly of: Float64Array;
}

/** Where the size of a new tenon should land: the middle of what each likely joint would need, a shoulder for the wanted clearance. */
const aimOf = (joints: readonly Latent[], box: JointNumbers, view: DiagnosisView): Aim => {
  const at = emptyStanding();
  const sizes = joints
    .map((joint) => {
      standingOf(joint, box, at);
      const kept = joint.slipRecess / SLOPE - 0.6 * at.leanLoss - at.filmLoss / 2 - 2 * joint.springRecess;
      return joint.tenon - 2 * joint.depthTenon + at.clearance + kept - (joint.low + joint.top) / 2;
    })
    .sort((a, b) => a - b);
  return { sizeAtNothing: sizes[sizes.length >> 1] as number, depthTenon: view.joint.depth.tenon };
};

/** Causes whose share is under this are not worth a move of their own. */
export const LEAST_CAUSE = 0.015;
/** Moves that serve one cause alone are not tried where it is hardly there. */
const ONLY_AGAINST: Readonly<Partial<Record<MoveKind, readonly Cause[]>>> = {
  'start-backwards': ['cross-start'],
  'slacken-jaws': ['squeezed'],
  'find-dent': ['dent'],
  'chamfer-start': ['no-lead-in'],
  'trim-last-thread': ['last-thread'],
  'clear-floor': ['bottoming'],
  'deepen-relief': ['relief'],
  'face-shoulder': ['shoulder', 'struck', 'tilt'],
  'true-bore': ['tapered-bore'],
  'true-tenon': ['tapered-tenon'],
  'harden-and-recut': ['weak-wood'],
};

const isWorthTrying = (kind: MoveKind, shares: Float64Array): boolean => {
  const causes = ONLY_AGAINST[kind];
  return !causes || causes.some((cause) => (shares[causeIndex[cause]] as number) >= LEAST_CAUSE);
};

export interface Weighed {
  readonly view: DiagnosisView;
  readonly box: JointNumbers;
  readonly now: Ensemble;
  readonly facts: Facts;
  readonly shares: Shares;
  readonly limits: readonly Limit[];
}

/** The cause a move is against: the one whose joints it repairs most. */
const causeAgainst = ({ off }: Outcome, { each }: Shares): Cause => {
  let [most, best] = [-1, 0];
  for (let c = 0; c < CAUSE_COUNT; c++) {
    let repaired = 0;
    for (let j = 0; j < off.length; j++)
      repaired += (off[j] as number) * (each[j * CAUSE_COUNT + c] as number);
    if (repaired > most) [most, best] = [repaired, c];
  }
  return CAUSES[best] as Cause;
};

const asAdvice = (outcome: Outcome, weighed: Weighed, ranked: readonly RankedCause[]): AdvisedMove => {
  const { move, right } = outcome;
  const { bench } = weighed.view;
  const against = causeAgainst(outcome, weighed.shares);
  const dial: Dial | null = bench.dial && {
    travelPerTurn: bench.dial.travelPerTurn,
    ...(bench.dial.marksPerTurn === null ? {} : { marksPerTurn: bench.dial.marksPerTurn }),
  };
  const deep = move.kind === 'deepen' ? move.by : move.kind === 'new-tenon' ? move.depth : null;
  const target = dial === null || deep === null ? null : dialTarget(deep, dial);
  let count = 0;
  for (const is of right) count += is;
  const chance = calibrated(count / right.length);
  return {
    kind: move.kind,
    part: move.part,
    by: move.by,
    size: move.size,
    depth: move.depth,
    reset: move.reset,
    chance,
    chanceWord: chanceWordOf(chance),
    dial: target?.ok ? target.value : null,
    against,
    because: ranked.find(({ cause }) => cause === against)?.for.slice(0, 2) ?? [],
  };
};

/** A second cut is only talked of once the first was tried and its play felt. */
const mayFollow = (first: Outcome, next: Outcome): boolean => {
  const cuts = (outcome: Outcome): boolean => CUTS.has(outcome.move.kind);
  if (first.move.kind === next.move.kind) return false;
  const spoilsSetting = first.move.kind === 'slacken-jaws' || first.move.kind === 'new-tenon';
  return !(cuts(next) && (cuts(first) || spoilsSetting)) && first.move.kind !== 'leave-it';
};

interface Barred {
  readonly outcome: Outcome;
  readonly why: string;
  readonly worth: number;
}

/** Barred moves that would beat the best legal one, each kind once. */
const barredAbove = (barred: readonly Barred[], best: number): Diagnosis['barred'] => {
  const byKind = new Map<MoveKind, Barred>();
  for (const one of barred) {
    const { kind } = one.outcome.move;
    if (kind === 'leave-it' || one.worth < NAMED_WHEN_BETTER * best) continue;
    if (one.worth > (byKind.get(kind)?.worth ?? 0)) byKind.set(kind, one);
  }
  return [...byKind.values()]
    .sort((a, b) => b.worth - a.worth)
    .map(({ outcome, why }) => ({ kind: outcome.move.kind, why: why as Why }));
};

/** Share of its joints that the best legal move for a cause repairs, below which nothing mends it. */
const HARDLY = 0.25;
const WORTH_SAYING = 0.25;

const beyondRepair = (legal: readonly Outcome[], { each, of }: Shares): readonly Cause[] =>
  CAUSES.filter((cause, c) => {
    if (cause === 'nothing-wrong' || (of[c] as number) < WORTH_SAYING) return false;
    return legal.every(({ off }) => {
      let [repaired, all] = [0, 0];
      for (let j = 0; j < off.length; j++) {
        const share = each[j * CAUSE_COUNT + c] as number;
        all += share;
        repaired += share * (off[j] as number);
      }
      return repaired < HARDLY * all;
    });
  });

type Advised = Pick<
  Diagnosis,
  'move' | 'next' | 'ask' | 'tellsApart' | 'barred' | 'beyondRepair' | 'minutes'
>;

/** What to do and what to ask about joints as likely as these. */
export const advise = (
  weighed: Weighed,
  ranked: readonly RankedCause[],
  joints: readonly Latent[],
): Advised => {
  const { view, box, now, facts, shares, limits } = weighed;
  const aim = aimOf(joints, box, view);
  const outcomes = movesFor({ ...view.bench, finished: facts.finished }, box, aim)
    .filter(({ kind }) => isWorthTrying(kind, shares.of))
    .map((move) => outcomeOf(move, now));
  const judged = outcomes.map((outcome) => ({
    outcome,
    why: barredBy({ move: outcome.move, outcome, now, facts }, limits),
  }));
  const legal = judged.filter(({ why }) => why === null).map(({ outcome }) => outcome);
  const even = new Float64Array(joints.length).fill(1);
  const leave = legal.find(({ move }) => move.kind === 'leave-it');
  const plan = planFrom(legal, even);
  const first = leave ?? plan.moves[0] ?? null;
  const next = first && (plan.moves.find((after) => after !== first && mayFollow(first, after)) ?? null);
  const best = first ? worthOf(first, even, even.length).worth : 0;
  // Only what an answer can change is judged again for each answer.
  const fixed = limits.filter(({ byReading }) => !byReading);
  const changeable = limits.filter(({ byReading }) => byReading);
  const open = outcomes.filter(
    (outcome) =>
      barredBy({ move: outcome.move, outcome, now, facts }, fixed) === null &&
      worthOf(outcome, even, even.length).repaired > LEAST_REPAIR * even.length,
  );
  const barred = judged.flatMap(({ outcome, why }) => {
    const { worth, repaired } = worthOf(outcome, even, even.length);
    return why === null || repaired <= LEAST_REPAIR * even.length ? [] : [{ outcome, why, worth }];
  });
  const legalUnder = (changed: Facts): readonly Outcome[] =>
    open.filter(
      (outcome) => barredBy({ move: outcome.move, outcome, now, facts: changed }, changeable) === null,
    );
  const asked = leave
    ? { question: null, tellsApart: null }
    : askFor({ view, facts, joints, box, shares: shares.each, plan, legalUnder, barred, best });
  return {
    move: first && asAdvice(first, weighed, ranked),
    next: next && asAdvice(next, weighed, ranked),
    ask: asked.question,
    tellsApart: asked.tellsApart,
    barred: barredAbove(barred, best),
    beyondRepair: beyondRepair(legal, shares),
    minutes: plan.minutes,
  };
};
