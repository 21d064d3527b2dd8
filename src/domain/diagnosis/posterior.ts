import { drawJoint, type Sampling } from './draw-joint.ts';
import type { Draws } from './draws.ts';
import { logEvidence, type TrialEvidence } from './evidence.ts';
import type { JointNumbers } from './joint-numbers.ts';
import { emptyLatent, type Latent } from './latent.ts';
import { applyMove } from './moves.ts';
import { emptyStanding, standingOf } from './standing.ts';
import type { DiagnosisView, MoveMade } from './view.ts';
import { emptyChances, wordChances } from './words-chance.ts';

const THINNED = 280;
const LEAST_EFFECTIVE = 40;
const FLATTEN = 0.7;

/** The likely joints, all of the same weight, as they stood at the last trial. */
export interface Posterior {
  readonly joints: readonly Latent[];
  /** What was said contradicts every joint that was drawn, so the weights had to be flattened. */
  readonly contradiction: boolean;
  /** Moves made since that trial, as they were really made. */
  readonly pending: readonly MoveMade[];
}

const effective = (weights: Float64Array): number => {
  let [sum, squares] = [0, 0];
  for (const weight of weights) {
    sum += weight;
    squares += weight * weight;
  }
  return squares > 0 ? (sum * sum) / squares : 0;
};

/** Weights from logarithms, raised to a power until enough joints count. */
const flattened = (logs: Float64Array): { readonly weights: Float64Array; readonly flattened: number } => {
  let most = Number.NEGATIVE_INFINITY;
  for (const log of logs) most = Math.max(most, log);
  const weights = new Float64Array(logs.length);
  for (let times = 0, power = 1; ; times++, power *= FLATTEN) {
    for (let i = 0; i < logs.length; i++) weights[i] = Math.exp(power * ((logs[i] as number) - most));
    if (effective(weights) >= LEAST_EFFECTIVE || times >= 30) return { weights, flattened: times };
  }
};

/** Numbers of equally weighted joints: every place of an even comb over the weights takes the joint it falls on. */
const thinned = (weights: Float64Array, offset: number): readonly number[] => {
  let sum = 0;
  for (const weight of weights) sum += weight;
  const chosen: number[] = [];
  let [at, passed] = [0, weights[0] as number];
  for (let i = 0; i < THINNED; i++) {
    const place = ((i + offset) / THINNED) * sum;
    while (passed < place && at < weights.length - 1) {
      at++;
      passed += weights[at] as number;
    }
    chosen.push(at);
  }
  return chosen;
};

/** The last new tenon of a record has the size that was measured on it, not the one that was advised. */
const movesAsMade = (view: DiagnosisView, box: JointNumbers): readonly (readonly MoveMade[])[] => {
  const { remade } = box;
  const lastAt = view.trials.findLastIndex(({ moves }) => moves.some(({ kind }) => kind === 'new-tenon'));
  return view.trials.map(({ moves }, i) => {
    if (remade === null || i !== lastAt) return moves;
    const which = moves.findLastIndex(({ kind }) => kind === 'new-tenon');
    return moves.map((move, at) =>
      at === which
        ? { ...move, size: remade.tenon as MoveMade['size'], depth: remade.depth as MoveMade['depth'] }
        : move,
    );
  });
};

export const posteriorOf = (
  view: DiagnosisView,
  box: JointNumbers,
  sampling: Sampling,
  trials: readonly TrialEvidence[],
  draws: Draws,
): Posterior => {
  const moves = movesAsMade(view, box);
  const at = emptyStanding();
  const chances = emptyChances();
  /** Write the joint of a number as it stood at the last trial, and say how well it predicted all of them. */
  const follow = (number: number, joint: Latent, weigh: boolean): number => {
    drawJoint(number, sampling, box, draws, joint);
    let log = 0;
    for (let t = 0; t < trials.length; t++) {
      if (t > 0) for (const move of moves[t - 1] as readonly MoveMade[]) applyMove(move, joint, box);
      if (!weigh) continue;
      standingOf(joint, box, at);
      wordChances(joint, box, at, chances);
      log += logEvidence(trials[t] as TrialEvidence, joint, box, at, chances);
    }
    return log;
  };
  const logs = new Float64Array(sampling.count);
  const joint = emptyLatent();
  for (let i = 0; i < sampling.count; i++)
    logs[i] = Math.log(sampling.weightOf[i] as number) + follow(i, joint, true);
  const { weights, flattened: times } = flattened(logs);
  draws.restart(-2);
  const joints = thinned(weights, draws.unit()).map((number) => {
    const likely = emptyLatent();
    follow(number, likely, false);
    return likely;
  });
  return { joints, contradiction: times >= 2, pending: moves.at(-1) ?? [] };
};
