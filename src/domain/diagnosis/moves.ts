import { benchStep } from '../joint/dial.ts';
import { SLOPE } from '../joint/profile.ts';
import type { Part } from '../setup/events.ts';
import { type JointNumbers, RUBBED_TO_DEPTH } from './joint-numbers.ts';
import { CLEAR, type Latent } from './latent.ts';
import type { MoveKind, MoveMade } from './view.ts';

/** Minutes that each move takes. Bench order: what is cheap and cannot spoil comes first because it costs least. Judgement, no source. */
export const MINUTES: Readonly<Record<MoveKind, number>> = {
  'leave-it': 0,
  'start-backwards': 0.8,
  'brush-out': 1,
  'on-and-off-by-hand': 1.5,
  wax: 1.6,
  'slacken-jaws': 2.5,
  'find-dent': 3,
  'chamfer-start': 3.5,
  'trim-last-thread': 3.5,
  'same-setting-again': 3,
  deepen: 4,
  'clear-floor': 4.5,
  'deepen-relief': 5,
  'face-shoulder': 5,
  'ease-crests': 6.5,
  'true-bore': 7,
  'true-tenon': 6,
  'rub-flanks': 6,
  'harden-and-recut': 18,
  'new-tenon': 55,
};
/**
 * Minutes for trying the lid again after any move, walking and all; for setting up again and picking the thread up. Judgement, no source:
 * with 1.5 for a try, cheap moves that seldom help came first so often that fewer lids were right after three moves in simulation.
 */
export const TRY = 4;
export const SET_UP_AGAIN = 14;

/** Moves that cut with the jig, and so need a setting that holds. */
export const CUTS: ReadonlySet<MoveKind> = new Set(['same-setting-again', 'deepen', 'harden-and-recut']);

/** A move that may be made; `reset` sets up and picks the thread up before it. */
export interface Move extends MoveMade {
  readonly reset: boolean;
}

export const minutesOf = (move: Move): number => MINUTES[move.kind] + (move.reset ? SET_UP_AGAIN : 0);

/** A number between 0 and 1 of its own for each kind of chance a joint takes. */
const luckOf = (joint: Latent, n: number): number => (joint.luck + n * 0.618034) % 1;

const again = (joint: Latent, part: Part): void => {
  if (part === 'recess') {
    joint.springRecess *= 0.3;
    joint.creepRecess *= 0.8;
  } else {
    joint.springTenon *= 0.3;
    joint.creepTenon *= 0.8;
  }
  joint.fuzz *= 0.5;
};

const deepen = (joint: Latent, part: Part, by: number): void => {
  if (part === 'recess') {
    joint.depthRecess += by;
    joint.springRecess *= 0.4;
  } else {
    joint.depthTenon += by;
    joint.springTenon *= 0.4;
  }
  joint.fuzz *= 0.7;
};

/** What stands above the turned crest goes first; beyond it the diameter is turned down, and the groove is that much shallower from it. */
const ease = (joint: Latent, part: Part, by: number): void => {
  if (part === 'recess') {
    const raised = Math.min(joint.raisedRecess, by);
    joint.raisedRecess -= raised;
    joint.bore += 2 * (by - raised);
    joint.depthRecess -= by - raised;
    joint.taperBore *= 0.6;
  } else {
    const raised = Math.min(joint.raisedTenon, by);
    joint.raisedTenon -= raised;
    joint.tenon -= 2 * (by - raised);
    joint.depthTenon -= by - raised;
    joint.taperTenon *= 0.6;
  }
};

/** Everything that came with the old tenon goes; what the recess has stays. Where either piece may have had it, it goes with half of them. */
const remake = (joint: Latent, size: number, depth: number): void => {
  joint.tenon = size + joint.nextSize;
  joint.depthTenon = Math.max(0, depth + joint.nextDepth);
  joint.slipTenon = 0;
  joint.creepTenon = joint.nextRaised / 2;
  joint.springTenon = joint.nextRaised / 2;
  joint.raisedTenon = joint.nextRaised;
  joint.taperTenon = 0;
  joint.eccentric = Math.min(joint.eccentric, 0.03);
  joint.eccentricFelt = 0;
  joint.float = 0;
  joint.lean *= 0.6;
  joint.tilt *= luckOf(joint, 1) < 0.5 ? 0.2 : 1;
  joint.film /= 2;
  joint.fuzz /= 2;
  joint.chips = 0;
  if (joint.oval > 0) joint.ovalOne = 1;
  joint.hump = luckOf(joint, 2) < 0.7 ? 0 : joint.hump;
  joint.struck = luckOf(joint, 3) < 0.7 ? 0 : joint.struck;
  joint.dent = luckOf(joint, 4) < 0.5 ? 0 : joint.dent;
  joint.weak *= luckOf(joint, 5) < 0.5 ? 0 : 1;
  joint.last = luckOf(joint, 6) < 0.5 ? -CLEAR : joint.last;
  joint.lead = luckOf(joint, 7) < 0.5 ? 0 : joint.lead;
  joint.crossed *= 0.5;
  joint.wax = 0;
};

const clean = (joint: Latent): void => {
  if (luckOf(joint, 8) < 0.82) joint.chips = 0;
  joint.fuzz *= 0.35 + 0.4 * luckOf(joint, 9);
};

const face = (joint: Latent, by: number): void => {
  joint.hump *= 0.15;
  joint.struck = Math.max(0, joint.struck - by);
  joint.tilt *= 0.28;
  joint.floor -= by;
};

/** A thread picked up again is a slip, of which a deeper cut takes some away without a trace (joint-model, slip between passes). */
export const pickUp = ({ part, by }: Move, joint: Latent): void => {
  const slip = joint.pickUp - (by ?? 0) * SLOPE;
  if (part === 'recess') joint.slipRecess = Math.max(joint.slipRecess, slip);
  else joint.slipTenon = Math.max(joint.slipTenon, slip);
};

/** One piece rubbed takes half of the film of both; beyond it, wood. */
const rub = (joint: Latent, part: Part, by: number): void => {
  const film = Math.min(joint.film, by / 2);
  joint.film -= film;
  const wood = RUBBED_TO_DEPTH * (by - 2 * film);
  if (part === 'recess') joint.depthRecess += wood;
  else joint.depthTenon += wood;
};

/** Do a move to a joint. An amount that was not noted is one step; a new tenon of unknown size stands as planned. */
export const applyMove = (move: MoveMade, joint: Latent, box: JointNumbers): void => {
  const by = move.by ?? benchStep.metric;
  const part = move.part ?? 'tenon';
  switch (move.kind) {
    case 'leave-it':
      return;
    case 'start-backwards':
      joint.crossed *= 0.4;
      return;
    case 'brush-out':
      clean(joint);
      return;
    case 'on-and-off-by-hand':
      joint.fuzz *= 0.4;
      joint.raisedRecess *= 0.75;
      joint.raisedTenon *= 0.75;
      return;
    case 'wax':
      joint.wax = 0.03;
      return;
    case 'slacken-jaws':
      joint.squeeze *= 0.15;
      return;
    case 'find-dent':
      if (luckOf(joint, 10) < 0.8) joint.dent *= 0.1;
      return;
    case 'chamfer-start':
      joint.lead = 0;
      return;
    case 'trim-last-thread':
      if (luckOf(joint, 11) < 0.85) joint.last = -CLEAR;
      return;
    case 'same-setting-again':
      again(joint, part);
      return;
    case 'deepen':
      deepen(joint, part, by);
      return;
    case 'clear-floor':
      joint.floor += by;
      return;
    case 'deepen-relief':
      joint.relief = -CLEAR;
      return;
    case 'face-shoulder':
      face(joint, by);
      return;
    case 'ease-crests':
      ease(joint, part, by);
      return;
    case 'true-bore':
      joint.taperBore = 0;
      return;
    case 'true-tenon':
      joint.taperTenon = 0;
      return;
    case 'rub-flanks':
      rub(joint, part, by);
      return;
    case 'harden-and-recut':
      joint.weak *= 0.45;
      again(joint, part);
      return;
    case 'new-tenon':
      remake(joint, move.size ?? box.tenon, move.depth ?? box.plannedDepth);
      return;
  }
};
