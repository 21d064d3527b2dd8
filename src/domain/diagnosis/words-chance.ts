import { goingOn, type MarksAt, type MarksOn, seated, threads } from '../box/trial-words.ts';
import type { JointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';
import { JUMPS_BELOW, type Standing } from './standing.ts';

/** Where the words of each question begin in one list of all of them. */
export const WORDS = [...goingOn, ...seated, ...threads] as const;
export type Word = (typeof WORDS)[number];
export const SEATED_FROM = goingOn.length;
export const THREADS_FROM = SEATED_FROM + seated.length;
export const WORD_COUNT = WORDS.length;
export const wordIndex = Object.fromEntries(WORDS.map((word, i) => [word, i])) as Readonly<
  Record<Word, number>
>;
const W = wordIndex;

/** A soft step: near 0 below `at`, near 1 above, over some `width`. */
const soft = (value: number, at: number, width: number): number => {
  const z = (value - at) / width;
  return z > 12 ? 1 : z < -12 ? 0 : 1 / (1 + Math.exp(-z));
};

/** Either, where both may be: 1 - (1 - a)(1 - b). */
const or = (a: number, b: number): number => a + b - a * b;

/** The chances of all words for one joint, and what else is worth knowing of it: one record, written again for each joint. */
export interface WordChances {
  readonly of: Float64Array;
  /** Chance that the lid does not even start; that it comes home. */
  blocked: number;
  home: number;
  /** Tight all along; tight late only. */
  tight: number;
  late: number;
}

export const emptyChances = (): WordChances => ({
  of: new Float64Array(WORD_COUNT),
  blocked: 0,
  home: 1,
  tight: 0,
  late: 0,
});

const goingOnChances = (joint: Latent, { of, blocked, tight, late }: WordChances, at: Standing): void => {
  const starts = 1 - blocked;
  const stops = soft(at.stop, 0, 0.02);
  const loose = soft(at.looseness, 0, 0.025);
  const room = Math.max(0, at.one);
  const dent = soft(joint.dent, room / 2 + 0.02, 0.02);
  const felt = joint.eccentricFelt > 0 ? soft(joint.eccentric, 0.12, 0.03) : 0;
  const floats = joint.float > 0 ? soft(joint.float, at.play + 0.01, 0.02) : 0;
  const once = or(or(dent, felt), floats);
  const twice = joint.oval > 0 && joint.ovalOne === 0 ? soft(joint.oval, room + 0.01, 0.03) : 0;
  const four = joint.squeeze > 0 ? soft(joint.squeeze, room + 0.01, 0.03) : 0;
  const fuzzy = soft(joint.fuzz, 0.07, 0.02);
  const slight = at.play > 0.03 && at.play < 0.15 ? 0.05 : 0;
  of[W['will-not-start']] = or(0.008, 0.8 * blocked);
  // A lump that pinches at one place is stiff to a hand that does not count turns; a shoulder that meets on one side drags at the end.
  const pinches = or(once, or(twice, four));
  const meets = 0.12 * soft(at.opening, 0.05, 0.03);
  of[W['stiff-all-the-way']] = starts * or(0.02, or(0.6 * tight, or(0.08 * late, 0.35 * pinches)));
  of[W['drags-more-each-turn']] =
    starts * or(0.02, or(0.27 * tight, or(0.68 * late, or(0.1 * pinches, meets))));
  of[W['stops-dead']] = starts * or(0.02, 0.78 * stops);
  of[W.gritty] = starts * or(0.02, or(0.75 * joint.chips, 0.2 * fuzzy));
  of[W['tight-once-a-turn']] = starts * or(0.012, or(0.73 * once, 0.05 * or(twice, four)));
  of[W['tight-twice-a-turn']] = starts * or(0.006, or(0.73 * twice, 0.05 * or(once, four)));
  of[W['tight-four-times-a-turn']] = starts * or(0.006, or(0.73 * four, 0.05 * or(once, twice)));
  of[W['rattles-sideways']] = starts * or(0.015, 0.5 * loose);
  of[W['end-play']] = starts * or(0.015, or(0.68 * loose, slight));
  of[W['jumps-a-thread']] = starts * or(0.005, 0.65 * soft(JUMPS_BELOW - at.engaged, 0, 0.02));
  of[W.free] = starts * or(0.02, 0.2 * (1 - tight) * (1 - late));
};

/** Of a lid that sticks on its way few say how it sits. Judgement, no source. */
const SAID_THOUGH_STUCK = 0.25;

/** Only one of these can be told, so they share the whole among them; a lid on its way has not sat down and shares less. */
const seatedChances = (joint: Latent, { of, home }: WordChances, at: Standing, stops: number): void => {
  const open = soft(at.opening, 0.05, 0.03);
  const hump = soft(joint.hump, 0.05, 0.02);
  const struck = soft(joint.struck, 0.06, 0.03);
  const step = soft(joint.eccentric, 0.16, 0.03);
  const stopped = (1 - home) * stops;
  const stuck = (1 - home) * (1 - stops) * SAID_THOUGH_STUCK;
  const one = or(0.02, or(0.62 * open, or(0.25 * hump, 0.1 * struck)));
  const gap = or(0.02, 0.4 * struck);
  const rocks = or(0.015, or(0.45 * hump, or(0.15 * open, 0.15 * struck)));
  const proud = or(0.015, 0.5 * step);
  const told = one + gap + rocks + proud;
  const scale = (told > 0.95 ? 0.95 / told : 1) * home;
  of[SEATED_FROM] = home - told * scale + 0.25 * stopped + 0.3 * stuck;
  of[SEATED_FROM + 1] = one * scale + 0.05 * stopped + 0.1 * stuck;
  of[SEATED_FROM + 2] = gap * scale + 0.6 * stopped + 0.5 * stuck;
  of[SEATED_FROM + 3] = rocks * scale + 0.05 * stopped + 0.05 * stuck;
  of[SEATED_FROM + 4] = proud * scale + 0.05 * stopped + 0.05 * stuck;
};

const threadChances = (joint: Latent, box: JointNumbers, { of }: WordChances): void => {
  const slip = (joint.slipRecess + joint.slipTenon) / box.pitch;
  const thin = slip > 0 ? soft(slip, 0.05, 0.015) : 0;
  const weak = joint.weak > 0 ? soft(joint.weak, 0.25, 0.08) : 0;
  of[W.chipped] = or(0.025, or(0.5 * weak, 0.1 * thin));
  of[W.furry] = or(0.02, 0.45 * soft(joint.fuzz, 0.07, 0.02));
  of[W.torn] = or(0.015, 0.25 * weak);
  of[W.burnt] = or(0.01, 0.6 * joint.burnt);
  of[W['thin-or-double-cut']] = or(0.02, 0.6 * thin);
  of[W['cross-threaded']] = or(0.01, 0.6 * soft(joint.crossed, 0.25, 0.05));
  of[W['shoulder-hit']] = or(0.01, 0.55 * soft(joint.struck, 0.08, 0.03));
  of[W.sound] = 0.5;
};

/**
 * How likely each word is for a joint as it stands: what a turner notices when the fault is there, and a little without any reason. All but
 * "will not start" need the lid to start. Chances are judgement, no source.
 */
export const wordChances = (joint: Latent, box: JointNumbers, at: Standing, out: WordChances): void => {
  out.blocked = or(
    or(soft(at.tightness / joint.hand, 0.26, 0.05), joint.lead > 0 ? soft(joint.lead, 0.16, 0.03) : 0),
    0.8 * joint.crossed,
  );
  out.tight = soft(at.tightness, 0.005, 0.012);
  out.late = (1 - out.tight) * soft(at.lateness, 0.035, 0.015);
  const forced = soft(Math.max(at.tightness, at.lateness) / joint.hand, 0.18, 0.04);
  const stops = soft(at.stop, 0, 0.02);
  out.home = (1 - out.blocked) * (1 - stops) * (1 - forced);
  goingOnChances(joint, out, at);
  seatedChances(joint, out, at, stops);
  threadChances(joint, box, out);
};

/** Chance of the rubbing marks of one kind and place: crest or flank as the geometry says; all along for tight, by the shoulder for late. */
export const marksChance = (
  marks: { readonly on: MarksOn; readonly at: MarksAt },
  joint: Latent,
  at: Standing,
  { tight, late }: WordChances,
): number => {
  const flank = Math.max(joint.low - at.one, late > tight ? joint.low - at.deep : Number.NEGATIVE_INFINITY);
  const crest = -2 * (late > tight ? at.gapDeep : at.gap);
  const isContact = Math.max(flank, crest) > -0.02;
  const onCrest = isContact ? 0.2 + 0.6 * soft(crest - flank, 0, 0.02) : 0.5;
  const where = { start: 0.2, 'by-shoulder': 0.15, 'all-along': 0.65 };
  const whenLate = { start: 0.05, 'by-shoulder': 0.75, 'all-along': 0.2 };
  const share = Math.max(0, Math.min(1, tight + late));
  const place = (1 - share) / 3 + tight * where[marks.at] + late * whenLate[marks.at];
  return Math.max(0.02, (marks.on === 'crest' ? onCrest : 1 - onCrest) * place);
};
