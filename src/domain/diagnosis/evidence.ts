import { goingOn, seated, threads } from '../box/trial-words.ts';
import type { JointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';
import { type Readings, readingsDensity, readingsOf } from './readings.ts';
import { faultsOf, type Standing } from './standing.ts';
import type { DiagnosisView, TrialView } from './view.ts';
import {
  marksChance,
  SEATED_FROM,
  THREADS_FROM,
  WORD_COUNT,
  type WordChances,
  wordIndex,
} from './words-chance.ts';

/** One trial as the hot loop reads it. */
export interface TrialEvidence {
  readonly right: boolean;
  /** By word: 1 said, 0 not said, -1 not asked about. */
  readonly said: Int8Array;
  readonly marks: TrialView['marks'];
  readonly readings: Readings;
  readonly onlyLoose: boolean;
  /** Words of one person are not independent: they count by this power. */
  readonly power: number;
}

/** Words at the first trial count more than later ones: those repeat what was said. Judgement, no source. */
const FIRST = 0.8;
const LATER = 0.65;
/** A joint with nothing wrong that is said not to be right: seldom, but play alone is taken for a fault now and then. Judgement. */
const SOUND_BUT_NOT_RIGHT = 0.03;
const SOUND_BUT_LOOSE = 0.2;
const FAULTY_BUT_RIGHT = 0.04;

const LOOSE_ALONE: ReadonlySet<string> = new Set(['end-play', 'rattles-sideways', 'free']);

const saidOf = (trial: TrialView): Int8Array => {
  const said = new Int8Array(WORD_COUNT);
  for (const word of trial.goingOn) if (goingOn.includes(word)) said[wordIndex[word]] = 1;
  said.fill(-1, SEATED_FROM);
  if (trial.seated !== null && seated.includes(trial.seated)) said[wordIndex[trial.seated]] = 1;
  if (trial.threads.length > 0) {
    said.fill(0, THREADS_FROM);
    for (const word of trial.threads) if (threads.includes(word)) said[wordIndex[word]] = 1;
    // Sound says only that nothing else was seen.
    said[wordIndex.sound] = -1;
  }
  return said;
};

export const trialEvidence = (view: DiagnosisView): readonly TrialEvidence[] =>
  view.trials.map((trial, i) => ({
    right: trial.right,
    said: saidOf(trial),
    marks: trial.marks,
    readings: readingsOf(trial, view, i === view.trials.length - 1),
    onlyLoose:
      trial.goingOn.every((word) => LOOSE_ALONE.has(word)) &&
      trial.threads.every((word) => word === 'sound') &&
      (trial.seated === null || trial.seated === 'flush') &&
      trial.marks === null,
    power: i === 0 ? FIRST : LATER,
  }));

const wordsProduct = (said: Int8Array, of: Float64Array): number => {
  let product = 1;
  for (let i = 0; i < WORD_COUNT; i++) {
    const is = said[i] as number;
    if (is < 0) continue;
    const chance = of[i] as number;
    product *= is > 0 ? chance : 1 - chance;
  }
  return product;
};

const LEAST = 1e-300;

/** Logarithm of how likely a trial's words and readings are for a joint that stands like this. */
export const logEvidence = (
  trial: TrialEvidence,
  joint: Latent,
  box: JointNumbers,
  at: Standing,
  chances: WordChances,
): number => {
  const isSound = faultsOf(at) === 0;
  const readings = Math.log(readingsDensity(trial.readings, joint, box, at) + LEAST);
  if (trial.right) return readings + Math.log(isSound ? 1 : FAULTY_BUT_RIGHT);
  let words = wordsProduct(trial.said, chances.of);
  if (trial.marks !== null) words *= marksChance(trial.marks, joint, at, chances);
  const reported = isSound ? (trial.onlyLoose ? SOUND_BUT_LOOSE : SOUND_BUT_NOT_RIGHT) : 1;
  return readings + trial.power * Math.log(words + LEAST) + Math.log(reported);
};
