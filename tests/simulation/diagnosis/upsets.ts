import type { Random } from '../../../src/domain/random.ts';
import type { Movement } from '../../../src/domain/setup/procedure.ts';
import { skewed } from './turner.ts';
import { crestFlat, type Piece, SLOPE, type Workpiece } from './workpiece.ts';

export interface Wood {
  readonly radial: number;
  readonly tangential: number;
  readonly crumbles: number;
  readonly furs: number;
  readonly stiff: number;
}

interface Circumstances {
  readonly random: Random;
  readonly wood: { readonly recess: Wood; readonly tenon: Wood };
  readonly bore: number;
  readonly finished: boolean;
}

interface Upset {
  /** How often, among upsets; may depend on the box. */
  readonly weight: (of: Circumstances) => number;
  readonly happen: (work: Workpiece, of: Circumstances) => void;
}

const either = (work: Workpiece, { random }: Circumstances, tenon = 0.5): Piece =>
  random.chance(tenon) ? work.tenon : work.recess;

const always = (weight: number) => () => weight;

/** What goes wrong on top of everyday errors. Sizes are skewed: most upsets are small ones, a few are great. */
const upsets = {
  'depth-misread': {
    weight: always(0.14),
    happen: (work, of) => {
      const by = 0.03 + skewed(of.random, 0.09);
      const piece = either(work, of);
      piece.depth += of.random.chance(0.68) ? -by : Math.min(by, 0.25);
    },
  },
  'diameter-misread': {
    weight: always(0.11),
    happen: (work, of) => {
      const by = (of.random.chance(0.65) ? 1 : -1) * (0.06 + skewed(of.random, 0.15));
      if (of.random.chance(0.6)) work.tenon.diameter += by;
      else work.recess.diameter -= by;
    },
  },
  'tip-not-as-thought': {
    weight: always(0.05),
    happen: (work, { random }) => {
      const by = random.chance(0.75) ? skewed(random, 0.09) : -0.5 * skewed(random, 0.09);
      const tip = Math.max(0.02, work.tenon.tip + by);
      work.tenon.tip = tip;
      work.recess.tip = tip;
    },
  },
  'cut-on-a-blunt-tip-shallow': {
    weight: always(0.02),
    happen: (work, { random }) => {
      const by = 0.05 + skewed(random, 0.06);
      for (const piece of [work.recess, work.tenon]) {
        piece.tip += by;
        piece.depth -= by / (2 * SLOPE);
      }
    },
  },
  'gave-under-load': {
    weight: always(0.055),
    happen: (work, of) => {
      const piece = either(work, of, 0.55);
      piece.spring += 0.03 + skewed(of.random, 0.07);
      if (of.random.chance(0.3)) piece.creep += skewed(of.random, 0.04);
    },
  },
  'crests-raised': {
    weight: ({ wood }) => 0.03 + 0.05 * wood.tenon.furs,
    happen: (work, of) => {
      either(work, of).raised += 0.04 + skewed(of.random, 0.12);
    },
  },
  'bore-tapered': {
    weight: always(0.05),
    happen: (work, { random }) => {
      work.recess.taper += (random.chance(0.8) ? 1 : -1) * (0.15 + skewed(random, 0.5));
    },
  },
  'tenon-tapered': {
    weight: always(0.045),
    happen: (work, { random }) => {
      work.tenon.taper += (random.chance(0.8) ? 1 : -1) * (0.15 + skewed(random, 0.5));
    },
  },
  leaned: {
    weight: always(0.05),
    happen: (work, { random }) => {
      work.tenon.lean += (random.chance(0.5) ? 1 : -1) * (1 + skewed(random, 2));
    },
  },
  crept: {
    weight: always(0.05),
    happen: (work, of) => {
      either(work, of).creep += 0.05 + skewed(of.random, 0.1);
    },
  },
  slipped: {
    weight: always(0.05),
    happen: (work, of) => {
      const piece = either(work, of, 0.7);
      // A ridge that is cut right through is thrown away, not tried.
      const most = crestFlat(work, piece) - 0.08;
      piece.slip += Math.max(0, Math.min(most, work.pitch * (0.03 + skewed(of.random, 0.09))));
    },
  },
  'chuck-not-home': {
    weight: always(0.05),
    happen: (work, of) => {
      either(work, of, 0.7).tilt += 0.1 + skewed(of.random, 0.3);
    },
  },
  'off-centre': {
    weight: always(0.035),
    happen: (work, of) => {
      either(work, of, 0.6).offCentre += 0.1 + skewed(of.random, 0.13);
    },
  },
  'spindle-floats': {
    weight: always(0.02),
    happen: (work, of) => {
      either(work, of).wobble += 0.02 + skewed(of.random, 0.05);
    },
  },
  'wood-moved': {
    weight: ({ bore }) => 0.05 * Math.min(2, bore / 60),
    happen: (work, of) => {
      const points = 0.5 + skewed(of.random, 2.2);
      for (const part of ['recess', 'tenon'] as const) {
        const { radial, tangential } = of.wood[part];
        const oval = work[part].diameter * Math.abs(tangential - radial) * points;
        const share = of.random.chance(0.25) ? 0.1 : of.random.between(0.7, 1.1);
        work[part].oval.amplitude += (oval / 4) * share;
      }
    },
  },
  'jaws-disagree': {
    weight: always(0.04),
    happen: (work, of) => {
      const { random } = of;
      const by = 0.03 + skewed(random, 0.07);
      const { pinched } = either(work, of, 0.8);
      if (random.chance(0.7)) {
        pinched.four.amplitude += by;
        // One pair of jaws pulls harder than the other.
        pinched.two.amplitude += by * random.between(0, 0.7);
      } else pinched.three.amplitude += by;
    },
  },
  bottoms: {
    weight: always(0.05),
    happen: (work, { random }) => {
      work.floor = -0.03 - skewed(random, 0.45);
    },
  },
  'relief-short': {
    weight: always(0.03),
    happen: (work, { random }) => {
      work.reliefShort = 0.03 + skewed(random, 0.18);
    },
  },
  'last-thread': {
    weight: always(0.03),
    happen: (work, { random }) => {
      work.lastThread = 0.04 + skewed(random, 0.25);
    },
  },
  'shoulder-hump': {
    weight: always(0.04),
    happen: (work, { random }) => {
      work.hump = 0.06 + skewed(random, 0.12);
    },
  },
  struck: {
    weight: always(0.03),
    happen: (work, { random }) => {
      work.struck = 0.1 + skewed(random, 0.2);
    },
  },
  fuzz: {
    weight: ({ wood }) => 0.02 + 0.1 * wood.tenon.furs,
    happen: (work, of) => {
      either(work, of).fuzz += 0.03 + skewed(of.random, 0.06);
    },
  },
  chips: {
    weight: always(0.035),
    happen: (work, { random }) => {
      work.chips += 0.5 + random.unit();
    },
  },
  dent: {
    weight: always(0.035),
    happen: (work, { random }) => {
      work.dent += 0.05 + skewed(random, 0.1);
    },
  },
  film: {
    weight: ({ finished }) => (finished ? 0.6 : 0),
    happen: (work, { random }) => {
      for (const piece of [work.recess, work.tenon]) piece.film += 0.004 + skewed(random, 0.016);
    },
  },
  'no-lead-in': {
    weight: always(0.03),
    happen: (work, { random }) => {
      work.noLeadIn += 0.1 + skewed(random, 0.16);
    },
  },
  crossed: {
    weight: always(0.02),
    happen: (work, { random }) => {
      work.crossed += 0.3 + 0.7 * random.unit();
    },
  },
  'wood-crumbled': {
    weight: ({ wood }) => 0.01 + 0.09 * Math.max(wood.tenon.crumbles, wood.recess.crumbles),
    happen: (work, of) => {
      either(work, of, 0.7).weak += 0.35 + 0.6 * of.random.unit();
    },
  },
  'cutter-hot': {
    weight: always(0.02),
    happen: (work, of) => {
      const piece = either(work, of);
      piece.burnt = true;
      if (of.random.chance(0.5)) piece.fuzz += skewed(of.random, 0.05);
    },
  },
} satisfies Record<string, Upset>;

export type UpsetName = keyof typeof upsets;
export const UPSETS = Object.keys(upsets) as readonly UpsetName[];

/** How much likelier an upset is after a step was missed or something moved. Some of what is in the log does nothing at all. */
const raisedBy: Readonly<Record<string, Partial<Record<UpsetName, number>>>> = {
  'pick-up': { slipped: 6 },
  'banjo-back': { slipped: 3.5, leaned: 1.5 },
  'seat-chuck': { 'chuck-not-home': 5, 'off-centre': 2 },
  'lock-post': { crept: 6, leaned: 1.5 },
  'touch-off': { 'depth-misread': 3.5 },
  'dry-run': { struck: 5, bottoms: 2 },
  cutter: { 'cutter-hot': 2, 'tip-not-as-thought': 1.5 },
  shake: { crept: 1.5, 'gave-under-load': 2 },
  board: { leaned: 2.5 },
  cone: { leaned: 2.5 },
  'square-banjo': { leaned: 2.5 },
  gap: {},
  'it-grabbed': { slipped: 5, crept: 2, 'wood-crumbled': 2, dent: 2 },
  'post-loosened': { leaned: 4, crept: 3 },
  'chuck-off': { 'chuck-not-home': 4, 'off-centre': 4 },
  'dial-knocked': { 'depth-misread': 5 },
  'cutter-changed': { 'tip-not-as-thought': 4 },
  'headstock-swung': { leaned: 4 },
  'banjo-moved': { slipped: 4 },
  'dont-know': {},
};

/** Steps of the procedure that a log may miss; hold points for safety alone are not among them. */
export const LOGGED_STEPS = [
  'board',
  'cone',
  'square-banjo',
  'lock-post',
  'gap',
  'seat-chuck',
  'cutter',
  'banjo-back',
  'shake',
  'pick-up',
  'touch-off',
  'dry-run',
] as const;

export const drawUpset = (
  of: Circumstances,
  log: { readonly missed: readonly string[]; readonly moved: readonly Movement[] },
  evenness: number,
): UpsetName =>
  of.random.weighted(UPSETS, (name) => {
    const weight = upsets[name].weight(of);
    const raised = [...log.missed, ...log.moved].reduce((by, each) => by * (raisedBy[each]?.[name] ?? 1), 1);
    return weight === 0 ? 0 : 0.04 * (weight / 0.04) ** evenness * raised;
  });

export const happen = (name: UpsetName, work: Workpiece, of: Circumstances): void =>
  upsets[name].happen(work, of);
