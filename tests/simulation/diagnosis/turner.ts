import type { Random } from '../../../src/domain/random.ts';
import type { Hand } from './feel.ts';

/** How good a workshop is at telling: the everyday one, and one in which advice has a hard time. */
export interface Manners {
  /** Chance of one word without any reason, at each trial; of keeping quiet about a sensation. */
  readonly wrongWord: number;
  readonly silent: number;
  /** Factor on the chance that a field is filled in unasked. */
  readonly tells: number;
  /** Exponent on how often each upset happens: 1 as it is, towards 0 all alike. */
  readonly evenness: number;
}

export const EVERYDAY: Manners = { wrongWord: 0.07, silent: 0.12, tells: 1, evenness: 1 };
export const WORSE: Manners = { wrongWord: 0.14, silent: 0.25, tells: 0.5, evenness: 0.25 };

/** One person: a hand, tools, and a way of telling. Every box has another. */
export interface Turner {
  readonly hand: Hand;
  readonly inch: boolean;
  /** Added to every diameter read: of a bore, of a tenon. Nobody knows it. */
  readonly biasBore: number;
  readonly biasTenon: number;
  readonly caliperSpread: number;
  /** What is claimed for one reading. */
  readonly caliperClaimed: number;
  readonly careless: number;
  /** Factor on the chance of each word, by its place in the list of words, and one word said for another. */
  readonly likes: (word: string) => number;
  readonly mixesUp: { readonly word: string; readonly forWord: string; readonly share: number };
}

/** A skewed number above 0 with the given mean: the sum of two exponentials. */
export const skewed = (random: Random, mean: number): number =>
  (-Math.log(1 - random.unit()) - Math.log(1 - random.unit())) * (mean / 2);

/** Both tails fatter than a normal one's. */
export const laplace = (random: Random, scale: number): number => {
  const u = random.unit() - 0.5;
  return -Math.sign(u) * scale * Math.log(1 - 2 * Math.abs(u));
};

/** Words that sound alike to some: said, meant. */
const MIXED: readonly (readonly [string, string])[] = [
  ['drags-more-each-turn', 'stiff-all-the-way'],
  ['stiff-all-the-way', 'drags-more-each-turn'],
  ['gritty', 'stiff-all-the-way'],
  ['stops-dead', 'drags-more-each-turn'],
  ['will-not-start', 'stiff-all-the-way'],
  ['rattles-sideways', 'end-play'],
  ['end-play', 'rattles-sideways'],
  ['tight-once-a-turn', 'tight-twice-a-turn'],
  ['tight-twice-a-turn', 'tight-four-times-a-turn'],
  ['jumps-a-thread', 'rattles-sideways'],
  ['rocks', 'open-one-side'],
  ['open-one-side', 'rocks'],
  ['gap-all-round', 'proud-outside'],
  ['torn', 'chipped'],
];

export const drawTurner = (random: Random, wanted: number): Turner => {
  const [word, forWord] = random.pick(MIXED);
  const salt = random.whole(0, 0x7fffffff);
  return {
    hand: {
      low: wanted * (0.12 + 0.3 * (random.unit() + random.unit())),
      top: wanted * (1.28 + skewed(random, 0.3)) + 0.02,
      dislikes: 0.008 + skewed(random, 0.01),
      strength: 0.16 + skewed(random, 0.2),
      jumpsBelow: random.between(37, 46),
    },
    inch: random.chance(0.6),
    biasBore: random.between(-0.035, 0.02),
    biasTenon: random.between(-0.02, 0.03),
    caliperSpread: random.between(0.008, 0.03),
    caliperClaimed: random.pick([0.02, 0.03, 0.03, 0.05]),
    careless: skewed(random, 0.08),
    likes: (said) => {
      let h = salt;
      for (let i = 0; i < said.length; i++) h = Math.imul(h ^ said.charCodeAt(i), 0x01000193);
      return 0.55 + 0.9 * (((h ^ (h >>> 15)) >>> 0) / 2 ** 32);
    },
    mixesUp: { word, forWord, share: random.between(0, 0.5) },
  };
};

/** A caliper's reading of a diameter: biased, noisy, and now and then a slip of the eye. */
export const reading = (random: Random, turner: Turner, part: 'recess' | 'tenon', truth: number): number => {
  const bias = part === 'recess' ? turner.biasBore : turner.biasTenon;
  const slipped = random.chance(0.025) ? (random.chance(0.5) ? 1 : -1) * random.pick([0.1, 0.2, 0.254]) : 0;
  const read = truth + bias + laplace(random, turner.caliperSpread) + slipped;
  const step = turner.inch ? 0.0254 : 0.01;
  return Math.round(read / step) * step;
};
