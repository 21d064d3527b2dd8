import { SLOPE } from '../joint/profile.ts';
import type { Draws } from './draws.ts';
import type { JointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';

export const CAUSES = [
  'nothing-wrong',
  'tight',
  'loose',
  'spring',
  'crests',
  'tapered-bore',
  'tapered-tenon',
  'lean',
  'creep',
  'slip',
  'tilt',
  'eccentric',
  'float',
  'oval',
  'squeezed',
  'bottoming',
  'relief',
  'last-thread',
  'shoulder',
  'struck',
  'fuzz',
  'dent',
  'film',
  'no-lead-in',
  'cross-start',
  'weak-wood',
  'hot-cutter',
  'low-engagement',
] as const;
export type Cause = (typeof CAUSES)[number];
export const CAUSE_COUNT = CAUSES.length;
export const causeIndex = Object.fromEntries(CAUSES.map((cause, i) => [cause, i])) as Readonly<
  Record<Cause, number>
>;

type Upset = (joint: Latent, box: JointNumbers, draws: Draws) => void;

interface CauseRow {
  /** How often it is behind a lid that is not right, before anything is known of this one. */
  readonly prior: number | ((box: JointNumbers) => number);
  /** What it does to a joint. */
  readonly upset: Upset;
}

const onEither = (draws: Draws, tenonShare: number): 'Tenon' | 'Recess' =>
  draws.chance(tenonShare) ? 'Tenon' : 'Recess';

/** Clearance off by a share of the wanted one: as depth of either part, as a diameter, or as the tip of the cutter. */
const clearanceOff =
  (sign: number, most: number): Upset =>
  (joint, box, draws) => {
    const by = sign * draws.between(0.3, most) * box.wanted;
    const how = draws.unit();
    if (how < 0.275) joint.depthRecess += by / 2;
    else if (how < 0.55) joint.depthTenon += by / 2;
    else if (how < 0.725) joint.bore += by;
    else if (how < 0.9) joint.tenon -= by;
    else joint.tip += (SLOPE * by) / 2;
  };

const DEGREE = Math.PI / 180;

/**
 * Priors and ranges, uniform. Priors and shares are judgement of the trade, no source; what each does to a joint is geometry where
 * `standing.ts` names a formula, judgement elsewhere. Lengths in mm.
 */
const ROWS: Readonly<Record<Cause, CauseRow>> = {
  'nothing-wrong': { prior: 0.24, upset: () => undefined },
  tight: { prior: 0.13, upset: clearanceOff(-1, 1.6) },
  loose: { prior: 0.06, upset: clearanceOff(1, 1.7) },
  spring: {
    prior: 0.06,
    upset: (joint, _, draws) => {
      const part = onEither(draws, 0.6);
      joint[`spring${part}`] += draws.between(0.05, 0.21);
      if (draws.chance(0.4)) joint[`creep${part}`] += draws.between(0, 0.06);
    },
  },
  crests: {
    prior: 0.045,
    upset: (joint, _, draws) => {
      const by = draws.between(0.05, 0.3);
      if (draws.chance(0.7)) joint[`raised${onEither(draws, 0.5)}`] += by;
      else {
        // A blunt tip with shallow cuts that keep the clearance.
        joint.tip += 2 * SLOPE * by;
        joint.depthRecess -= by;
        joint.depthTenon -= by;
      }
    },
  },
  'tapered-bore': {
    prior: 0.04,
    upset: (joint, _, draws) => {
      joint.taperBore += draws.between(0.15, 1);
    },
  },
  'tapered-tenon': {
    prior: 0.04,
    upset: (joint, _, draws) => {
      joint.taperTenon += draws.between(0.15, 1);
    },
  },
  lean: {
    prior: 0.035,
    upset: (joint, _, draws) => {
      joint.lean += draws.between(1.5, 6.5) * DEGREE;
    },
  },
  creep: {
    prior: 0.05,
    upset: (joint, _, draws) => {
      joint[`creep${onEither(draws, 0.5)}`] += draws.between(0.05, 0.3);
    },
  },
  slip: {
    prior: 0.06,
    upset: (joint, box, draws) => {
      joint[`slip${onEither(draws, 0.65)}`] += draws.between(0.06, 0.32) * box.pitch;
    },
  },
  tilt: {
    prior: 0.06,
    upset: (joint, _, draws) => {
      joint.tilt += draws.between(0.12, 0.9) * DEGREE;
    },
  },
  eccentric: {
    prior: 0.035,
    upset: (joint, _, draws) => {
      joint.eccentric += draws.between(0.1, 0.5);
      joint.eccentricFelt = draws.chance(0.55) ? 1 : 0;
    },
  },
  float: {
    prior: 0.015,
    upset: (joint, _, draws) => {
      joint.float += draws.between(0.03, 0.15);
    },
  },
  oval: {
    prior: (box) => 0.045 * Math.min(2, Math.max(0.4, box.bore / 50)),
    upset: (joint, box, draws) => {
      joint.oval += box.ovalPerPoint * draws.between(1, 7);
      joint.ovalOne = draws.chance(0.3) ? 1 : 0;
    },
  },
  squeezed: {
    prior: 0.025,
    upset: (joint, _, draws) => {
      joint.squeeze += draws.between(0.1, 0.55);
    },
  },
  bottoming: {
    prior: 0.05,
    upset: (joint, _, draws) => {
      joint.floor = -draws.between(0.05, 1.35);
    },
  },
  relief: {
    prior: 0.025,
    upset: (joint, _, draws) => {
      joint.relief = draws.between(0.02, 0.37);
    },
  },
  'last-thread': {
    prior: 0.025,
    upset: (joint, _, draws) => {
      joint.last = draws.between(0.05, 0.65);
    },
  },
  shoulder: {
    prior: 0.035,
    upset: (joint, _, draws) => {
      joint.hump += draws.between(0.06, 0.41);
    },
  },
  struck: {
    prior: 0.025,
    upset: (joint, _, draws) => {
      joint.struck += draws.between(0.1, 0.6);
    },
  },
  fuzz: {
    prior: (box) => 0.07 * (0.6 + box.furs),
    upset: (joint, _, draws) => {
      if (draws.chance(0.6)) joint.fuzz += draws.between(0.06, 0.31);
      else joint.chips = 1;
    },
  },
  dent: {
    prior: 0.035,
    upset: (joint, _, draws) => {
      joint.dent += draws.between(0.08, 0.4);
    },
  },
  film: {
    prior: (box) => (box.finished ? 0.5 : 0),
    upset: (joint, _, draws) => {
      joint.film += draws.between(0.01, 0.05);
    },
  },
  'no-lead-in': {
    prior: 0.03,
    upset: (joint, _, draws) => {
      joint.lead += draws.between(0.15, 0.6);
    },
  },
  'cross-start': {
    prior: 0.025,
    upset: (joint, _, draws) => {
      joint.crossed = draws.between(0.3, 1);
    },
  },
  'weak-wood': {
    prior: (box) => 0.05 * (0.4 + 1.8 * box.crumbles),
    upset: (joint, _, draws) => {
      joint.weak = draws.between(0.25, 1);
    },
  },
  'hot-cutter': {
    prior: 0.02,
    upset: (joint, _, draws) => {
      joint.burnt = 1;
      if (draws.chance(0.3)) joint.fuzz += draws.between(0.06, 0.31);
    },
  },
  // It follows from the sizes, so nothing has to go wrong besides.
  'low-engagement': { prior: 0, upset: () => undefined },
};

const rowList = CAUSES.map((cause) => ROWS[cause]);
export const upsetBy = (cause: number, joint: Latent, box: JointNumbers, draws: Draws): void =>
  (rowList[cause] as CauseRow).upset(joint, box, draws);

/** Priors of all causes for this box, each times what its set-up log says, in the order of `CAUSES`; they sum to 1. */
export const priorsOf = (box: JointNumbers, factorOf: (cause: Cause) => number): readonly number[] => {
  const raw = CAUSES.map((cause) => {
    const { prior } = ROWS[cause];
    return (typeof prior === 'number' ? prior : prior(box)) * factorOf(cause);
  });
  const sum = raw.reduce((a, b) => a + b, 0);
  return raw.map((value) => value / sum);
};
