import {
  type GoingOn,
  goingOn,
  type Seated,
  seated,
  type ThreadState,
  threads as threadWords,
} from '../../../src/domain/box/trial-words.ts';
import type { DiagnosisView, TrialView } from '../../../src/domain/diagnosis/view.ts';
import type { Random } from '../../../src/domain/random.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { type Feel, feelOf, SENSATIONS, type Sensation } from './feel.ts';
import { laplace } from './turner.ts';
import type { Bench } from './workshop.ts';

/** What can be asked of a turner. */
export const QUESTIONS = [
  'seated',
  'threads',
  'marks',
  'end-play',
  'turns-on',
  'bottom-gap',
  'crest-flat-recess',
  'crest-flat-tenon',
  'bore-taper',
  'tenon-taper',
  'out-of-round',
] as const;
export type Question = (typeof QUESTIONS)[number];

type Odds<Word extends string> = readonly (readonly [Word | null, number])[];

/** What a sensation may be called while the lid is turned. null: no word at all. */
const sayings: Partial<Record<Sensation, Odds<GoingOn>>> = {
  start: [
    ['will-not-start', 0.8],
    ['stiff-all-the-way', 0.12],
    ['gritty', 0.03],
    [null, 0.05],
  ],
  stiff: [
    ['stiff-all-the-way', 0.66],
    ['drags-more-each-turn', 0.22],
    ['gritty', 0.05],
    [null, 0.07],
  ],
  late: [
    ['drags-more-each-turn', 0.7],
    ['stiff-all-the-way', 0.1],
    ['stops-dead', 0.1],
    [null, 0.1],
  ],
  stop: [
    ['stops-dead', 0.82],
    ['drags-more-each-turn', 0.06],
    [null, 0.12],
  ],
  once: [
    ['tight-once-a-turn', 0.68],
    ['tight-twice-a-turn', 0.1],
    ['drags-more-each-turn', 0.08],
    [null, 0.14],
  ],
  twice: [
    ['tight-twice-a-turn', 0.66],
    ['tight-once-a-turn', 0.1],
    ['tight-four-times-a-turn', 0.08],
    [null, 0.16],
  ],
  four: [
    ['tight-four-times-a-turn', 0.6],
    ['tight-twice-a-turn', 0.12],
    ['gritty', 0.1],
    [null, 0.18],
  ],
  loose: [
    ['end-play', 0.46],
    ['rattles-sideways', 0.42],
    ['free', 0.06],
    [null, 0.06],
  ],
  rough: [
    ['gritty', 0.7],
    ['stiff-all-the-way', 0.12],
    [null, 0.18],
  ],
  jumps: [
    ['jumps-a-thread', 0.72],
    ['rattles-sideways', 0.12],
    [null, 0.16],
  ],
  crumbly: [
    ['gritty', 0.15],
    [null, 0.85],
  ],
  thin: [
    ['rattles-sideways', 0.1],
    [null, 0.9],
  ],
};

const seats: Partial<Record<Sensation, Odds<Seated>>> = {
  open: [
    ['open-one-side', 0.68],
    ['rocks', 0.2],
    [null, 0.12],
  ],
  rocks: [
    ['rocks', 0.6],
    ['open-one-side', 0.15],
    ['gap-all-round', 0.12],
    [null, 0.13],
  ],
  gap: [
    ['gap-all-round', 0.45],
    ['open-one-side', 0.2],
    ['rocks', 0.15],
    [null, 0.2],
  ],
  proud: [
    ['proud-outside', 0.75],
    [null, 0.25],
  ],
  stop: [
    ['gap-all-round', 0.7],
    [null, 0.3],
  ],
};

/** The word a turner finds for something; weaker feelings are passed over more often. */
const wordFor = <Word extends string>(
  random: Random,
  { turner, manners }: Bench,
  odds: Odds<Word>,
  severity: number,
): Word | null => {
  if (random.chance(manners.silent / Math.max(1, severity - 0.5))) return null;
  const [word] = random.weighted(odds, ([said, share]) =>
    said === null ? share / Math.max(1, severity - 0.5) : share * turner.likes(said),
  );
  const { mixesUp } = turner;
  return word === mixesUp.forWord &&
    odds.some(([said]) => said === mixesUp.word) &&
    random.chance(mixesUp.share)
    ? (mixesUp.word as Word)
    : word;
};

/** What this turner minds at this moment: the true severity, felt with a little luck. */
const minded = (random: Random, feel: Feel): readonly (readonly [Sensation, number])[] =>
  SENSATIONS.map((each) => [each, feel.severity[each] * Math.exp(random.normal(0, 0.07))] as const)
    .filter(([, severity]) => severity > 1)
    .sort(([, a], [, b]) => b - a);

const threadsSeen = (random: Random, bench: Bench): readonly ThreadState[] => {
  const { recess, tenon, crossed, struck, pitch } = bench.work;
  const seen = new Set<ThreadState>();
  const sees = (word: ThreadState, chance: number) => {
    if (random.chance(chance * Math.min(1.15, bench.turner.likes(word)))) seen.add(word);
  };
  for (const piece of [recess, tenon]) {
    sees('chipped', 0.75 * Math.max(0, piece.weak - 0.2));
    sees('torn', 0.5 * Math.max(0, piece.weak - 0.3));
    sees('furry', Math.min(0.75, piece.fuzz * 7));
    sees('burnt', piece.burnt ? 0.7 : 0);
    sees('thin-or-double-cut', Math.min(0.8, (piece.slip / pitch) * 6));
  }
  sees('cross-threaded', 0.7 * crossed);
  sees('shoulder-hit', Math.min(0.7, struck * 3));
  if (random.chance(bench.manners.wrongWord))
    seen.add(random.pick(threadWords.filter((word) => word !== 'sound')));
  if (seen.size === 0) seen.add('sound');
  return [...seen];
};

const marksSeen = (random: Random, feel: Feel): TrialView['marks'] => {
  const crest = feel.onCrests > 0.5;
  const at = feel.byShoulder > 0.75 ? 'by-shoulder' : feel.byStart > 0.75 ? 'start' : 'all-along';
  return {
    on: random.chance(0.82) === crest ? 'crest' : 'flank',
    at: random.chance(0.75) ? at : random.pick(['start', 'by-shoulder', 'all-along'] as const),
  };
};

const seatSeen = (
  random: Random,
  bench: Bench,
  sensed: readonly (readonly [Sensation, number])[],
): Seated => {
  for (const [each, severity] of sensed) {
    const odds = seats[each];
    const word = odds && wordFor(random, bench, odds, severity);
    if (word) return word;
  }
  return random.chance(bench.manners.wrongWord) ? random.pick(seated) : 'flush';
};

const stepOf = (bench: Bench): number => (bench.turner.inch ? 0.0254 : 0.02);

const rounded = (value: number, step: number) => mm(Number((Math.round(value / step) * step).toFixed(4)));

/** Reading errors by eye and feeler, each with its share of readings that are simply wrong. */
const playFelt = (random: Random, bench: Bench, feel: Feel) => {
  const wrong = random.chance(0.04);
  const felt = wrong
    ? feel.endPlay * random.between(0.3, 2.2)
    : feel.endPlay * random.between(0.9, 1.1) + laplace(random, 0.018);
  return rounded(Math.max(0, felt), stepOf(bench));
};

const crestSeen = (random: Random, feel: Feel, part: 'recess' | 'tenon') => {
  const wrong = random.chance(0.04) ? random.between(-0.2, 0.25) : 0;
  const width = feel.crest[part] * random.between(0.88, 1.12) + laplace(random, 0.035) + wrong;
  return { part, width: rounded(Math.max(0, width), 0.05) };
};

/** Answers one question by what is true, as well as this turner can. Null: not able to say, this time. */
export const answer = (question: Question, bench: Bench, random: Random): DiagnosisView | null => {
  const { work, turner, record } = bench;
  const trial = record.trials.at(-1);
  if (!trial || random.chance(0.07)) return null;
  const feel = feelOf(work, turner.hand);
  const inTrial = (told: Partial<TrialView>): DiagnosisView => ({
    ...record,
    trials: [...record.trials.slice(0, -1), { ...trial, ...told }],
  });
  const inJoint = (read: Partial<DiagnosisView['joint']>): DiagnosisView => ({
    ...record,
    joint: { ...record.joint, ...read },
  });
  const taper = (truth: number) => mm(truth + laplace(random, 0.025) + (random.chance(0.04) ? 0.15 : 0));
  switch (question) {
    case 'seated':
      return feel.home || feel.short > 0
        ? inTrial({ seated: seatSeen(random, bench, minded(random, feel)) })
        : null;
    case 'threads':
      return inTrial({ threads: threadsSeen(random, bench) });
    case 'marks':
      return feel.onCrests + feel.byStart + feel.byShoulder > 0
        ? inTrial({ marks: marksSeen(random, feel) })
        : null;
    case 'end-play':
      return feel.reached >= 1 ? inTrial({ endPlay: playFelt(random, bench, feel) }) : null;
    case 'turns-on':
      return inTrial({ turnsOn: turnsCounted(random, feel) });
    case 'bottom-gap':
      return inTrial({ bottomGap: mm(work.floor + laplace(random, 0.07)) });
    case 'crest-flat-recess':
      return inTrial({ crestFlat: crestSeen(random, feel, 'recess') });
    case 'crest-flat-tenon':
      return inTrial({ crestFlat: crestSeen(random, feel, 'tenon') });
    case 'bore-taper':
      return inJoint({ boreTaper: taper(work.recess.taper) });
    case 'tenon-taper':
      return inJoint({ tenonTaper: taper(work.tenon.taper) });
    case 'out-of-round': {
      const { oval, pinched } = work.recess;
      const truth = 4 * (oval.amplitude + pinched.two.amplitude);
      return inJoint({
        outOfRound: mm(Math.max(0, truth * random.between(0.7, 1.1) + laplace(random, 0.02))),
      });
    }
  }
};

const turnsCounted = (random: Random, feel: Feel): number => {
  const counted = random.chance(0.06) ? feel.reached * random.unit() : feel.reached + laplace(random, 0.2);
  return Math.max(0, Math.round(counted * 4) / 4);
};

/** One trial fit as this turner enters it: what is minded decides "right", habit and luck what is told of it. */
export const tell = (bench: Bench, random: Random): TrialView => {
  const { work, turner, manners, record } = bench;
  const feel = feelOf(work, turner.hand);
  const sensed = minded(random, feel);
  const picky = sensed.length === 0 && random.chance(0.03);
  const words = new Set<GoingOn>();
  for (const [each, severity] of sensed) {
    const odds = sayings[each];
    const word =
      odds && (each === 'start' || feel.severity.start < 1.6) ? wordFor(random, bench, odds, severity) : null;
    if (word) words.add(word);
  }
  const right = sensed.length === 0 && !picky;
  if (!right && random.chance(manners.wrongWord)) words.add(random.pick(goingOn));
  const unasked = (chance: number) => !right && random.chance(chance * manners.tells);
  const main = sensed[0]?.[0];
  const seat = sensed.some(([each]) => seats[each] !== undefined);
  const touched = sensed.some(([each]) => each === 'crumbly' || each === 'thin' || each === 'gap');
  const told: TrialView = {
    right,
    goingOn: [...words],
    seated: feel.home && unasked(seat ? 0.9 : 0.3) ? seatSeen(random, bench, sensed) : null,
    threads: unasked(touched ? 0.75 : 0.3) ? threadsSeen(random, bench) : [],
    marks: feel.onCrests + feel.byStart > 0 && unasked(0.15) ? marksSeen(random, feel) : null,
    endPlay: feel.reached >= 1 && unasked(0.3) ? playFelt(random, bench, feel) : null,
    turnsOn: unasked(feel.home ? 0.1 : 0.4) ? turnsCounted(random, feel) : null,
    bottomGap: unasked(0.07) ? mm(work.floor + laplace(random, 0.07)) : null,
    crestFlat: unasked(0.08) ? crestSeen(random, feel, random.chance(0.7) ? 'tenon' : 'recess') : null,
    afterFinish: record.bench.finished,
    moves: [],
  };
  if (right || told.goingOn.length > 0 || told.threads.some((word) => word !== 'sound')) return told;
  if (told.seated !== null && told.seated !== 'flush') return told;
  // The screen takes nothing that names no fault: the plainest word for what is minded most.
  if (main === 'thin' || main === 'crumbly')
    return { ...told, threads: [main === 'thin' ? 'thin-or-double-cut' : 'chipped'] };
  const seatWord = main && seats[main]?.[0]?.[0];
  if (seatWord && feel.home) return { ...told, seated: seatWord };
  const picked = random.pick(['end-play', 'gritty', 'drags-more-each-turn'] as const);
  return { ...told, goingOn: [(main && sayings[main]?.[0]?.[0]) ?? picked] };
};
