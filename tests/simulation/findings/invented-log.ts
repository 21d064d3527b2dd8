import type {
  JointRow,
  JointTable,
  StepAtCut,
  StepMeaning,
  Symptom,
} from '../../../src/domain/findings/rows/joint-row.ts';
import { type Random, seededRandom } from '../../../src/domain/random.ts';
import { mm } from '../../../src/domain/units/brands.ts';

/** Ten invented steps that guard against lean and creep; every fault of size or taper is one they could explain. */
export const STEPS: readonly StepMeaning[] = Array.from({ length: 10 }, (_, i) => ({
  key: `step-${i}`,
  sentence: `Step ${i}.`,
  guards: ['lean', 'creep'],
}));

/** Share of boxes that miss each step: uneven, as in a workshop. */
const MISSED = [0.15, 0.2, 0.1, 0.25, 0.15, 0.3, 0.12, 0.18, 0.2, 0.15];

/** What truly goes on in an invented log. */
export interface Truth {
  readonly boxes: number;
  /** Failing in a way the steps explain, when all is done; and in a way they do not. */
  readonly fails: number;
  readonly failsOtherwise: number;
  /** The one step that matters, how much (odds ratio), and how often it is missed. */
  readonly link?: { readonly step: number; readonly odds: number; readonly missed: number };
  /** Soft wood both fails oftener and gets less care: log odds along the hardness, or beyond a threshold. */
  readonly softWood?: 'linear' | 'threshold';
  /** Beginners fail oftener and skip more. */
  readonly experience?: boolean;
  /** Boxes in threes and fours share what was skipped, and their luck (log odds, standard deviation). */
  readonly sharedSetUps?: number;
  /** Steps are skipped together: chance that a box skips by one common decision. */
  readonly together?: number;
  /** Unmeasured hurry on some days: multiplies the odds of failing in any way, and of skipping. */
  readonly haste?: number;
}

/** Woods as in a workshop: hardness in newton, all of one handbook group, so that the group tells nothing of it. */
const WOODS: readonly (readonly [string, number])[] = [
  ['w1', 2000],
  ['w2', 2600],
  ['w3', 3600],
  ['w4', 4200],
  ['w5', 4800],
  ['w6', 5800],
  ['w7', 6500],
  ['w8', 9000],
];

const EXPLAINED: readonly Symptom[] = ['stiff-all-the-way', 'will-not-start', 'drags-more-each-turn'];
const UNEXPLAINED: readonly Symptom[] = ['chipped', 'gritty', 'tight-twice-a-turn'];

const logit = (p: number): number => Math.log(p / (1 - p));
const share = (eta: number): number => 1 / (1 + Math.exp(-eta));

/** A log drawn from a truth. The same truth, seed and stream give the same log. */
export const inventedLog = (truth: Truth, seed: number, stream: number): JointTable => {
  const random = seededRandom(seed, stream);
  const rows: JointRow[] = [];
  let left = 0;
  let setUp = 0;
  let luck = 0;
  let skipped: readonly boolean[] = [];
  for (let i = 0; i < truth.boxes; i++) {
    const [wood, hardness] = random.pick(WOODS);
    const soft = Math.log(4500 / hardness) / 0.45;
    const softness =
      truth.softWood === 'linear' ? 0.8 * soft : truth.softWood === 'threshold' && hardness < 3000 ? 1.6 : 0;
    const green = truth.experience ? Math.max(0, 1.2 - 0.5 * Math.log10(i + 1)) : 0;
    const haste = truth.haste && random.chance(0.3) ? Math.log(truth.haste) : 0;
    if (left === 0) {
      setUp++;
      left = truth.sharedSetUps === undefined ? 1 : random.whole(3, 4);
      luck = truth.sharedSetUps === undefined ? 0 : random.normal(0, truth.sharedSetUps);
      skipped = skips(random, truth, softness + green + haste);
    }
    left--;
    const harm = truth.link && skipped[truth.link.step] ? Math.log(truth.link.odds) : 0;
    const burden = softness + green + haste + luck;
    const symptoms: Symptom[] = [];
    if (random.chance(share(logit(truth.fails) + burden + harm))) symptoms.push(random.pick(EXPLAINED));
    if (random.chance(share(logit(truth.failsOtherwise) + burden))) symptoms.push(random.pick(UNEXPLAINED));
    rows.push(rowOf(i, setUp, { wood, hardness }, random.pick([2.54, 1.5875]), skipped, symptoms));
  }
  return { rows, steps: STEPS, leftOut: {} };
};

const skips = (random: Random, truth: Truth, burden: number): readonly boolean[] => {
  const together = truth.together !== undefined && random.chance(truth.together);
  return STEPS.map((_, step) => {
    const usual = truth.link?.step === step ? truth.link.missed : (MISSED[step] as number);
    return random.chance(together ? 0.7 : share(logit(usual) + 0.8 * burden));
  });
};

const rowOf = (
  i: number,
  setUp: number,
  { wood, hardness }: { readonly wood: string; readonly hardness: number },
  pitch: number,
  skipped: readonly boolean[],
  symptoms: readonly Symptom[],
): JointRow => {
  const steps: Record<string, StepAtCut> = {};
  STEPS.forEach(({ key }, step) => {
    steps[key] = { outcome: skipped[step] ? 'skipped' : 'done', carriedOver: false, exactMs: null };
  });
  return {
    id: `joint-${i}`,
    log: 'invented',
    boxNumber: i + 1,
    day: String(100_000 + setUp),
    cluster: `set-up-${setUp}`,
    rig: 'rig',
    experience: i + 1,
    wood,
    woodGroup: 'hardwood',
    hardness,
    pitch: mm(pitch),
    hardener: 'none',
    insertRing: false,
    steps: { recess: steps, tenon: {} },
    firstTry: symptoms.length > 0 ? 'failed' : 'right',
    symptoms,
    clearanceTrials: [],
    tipFlatKnown: true,
  };
};
