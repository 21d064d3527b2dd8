import type { HowManyMore } from '../../domain/findings/how-many-more.ts';
import type { Symptom } from '../../domain/findings/joint-row.ts';
import type { StepLink } from '../../domain/findings/step-links.ts';
import type { Because, Word } from '../../domain/findings/words.ts';
import { goingOnWord, seatedWord, threadWord } from './trial-words.ts';

export const linkWord: Readonly<Record<Word, string>> = {
  strong: 'Strong link',
  possible: 'Possible link',
  'the-other-way': 'The other way round',
  'no-sign': 'No sign of one',
  'too-few': 'Too few boxes to tell',
};

const becauseWord: Readonly<Record<Because, string>> = {
  gate: 'Fewer than five of one kind: missed, done, failed or right.',
  wide: 'The figures still leave room for a large difference either way.',
  disagree: 'The plain figures and the model do not point one way.',
  'several-steps': 'Asked of several steps at once, one such link comes by luck now and then.',
  'no-mechanism': 'No way is known by which this step could do it.',
  'other-faults-too': 'Boxes where it was skipped also had faults it cannot cause: perhaps rushed days.',
  'same-boxes': 'Another step was missed in exactly the same boxes: the log cannot tell them apart.',
};

/** "3 in 10", or "7 of 11" when there are few. */
const inTen = (events: number, total: number): string =>
  total < 10 ? `${events} of ${total}` : `${Math.round((10 * events) / total)} in 10`;

const inHundred = (share: number): number => Math.round(100 * share);

/** The plain sentence of a link; never says that one thing made the other. */
export const linkSentence = ({ table: { a, b, c, d } }: StepLink): string => {
  if (a + b === 0) return 'Never missed in your log.';
  if (c + d === 0) return 'Never done in your log.';
  return `Where it was missed, ${inTen(a, a + b)} did not fit at first in a way it could explain; where it was done, ${inTen(c, c + d)}.`;
};

export const symptomWord = (symptom: Symptom): string =>
  ({ ...goingOnWord, ...seatedWord, ...threadWord })[symptom].toLowerCase();

export const findingsWords = {
  title: 'Findings',
  wait: 'Reading your log…',
  progress: (share: number) => `${Math.round(100 * share)} % read`,
  cancel: 'Stop',
  failed: 'The findings could not be reckoned. Your log is safe.',
  tryAgain: 'Try again',
  none: 'No box has been tried yet. The first trial fit starts the findings; the Bench gives you sizes and advice from box one.',
  tomorrow: 'What to change tomorrow',
  nothing: 'Nothing yet. Your log shows no step whose missing goes with lids that do not fit.',
  nothingFew: (more: number) =>
    `Nothing yet. The words are weighed first at ${more} boxes; until then your own last boxes are the best guide.`,
  change: (sentence: string, word: string) =>
    `Don’t miss this one: “${sentence}” (${word.toLowerCase()} with lids that did not fit).`,
  together: 'They go together; the log cannot say why.',
  rightFirst: (right: number, eased: number, of: number) =>
    `${of} boxes tried: ${right} right at the first trial, ${eased} eased once to right.`,
  steps: 'Steps missed, and first fits',
  stepsAbout: 'Hold points are never scored. A tight lid eased once to right counts as right.',
  luck: 'With ten steps, about one log in six shows a “possible” by luck.',
  wordsAt: (at: number, next: number) =>
    at === 0
      ? `Words are given from ${next} boxes on; the numbers are always there.`
      : `Words as at ${at} boxes; they are weighed again at ${next}, so that looking often does not find luck.`,
  numbers: 'Numbers',
  because: (because: Because) => becauseWord[because],
  noSign: 'If there is one, it is under 20 in 100. Not a reason to skip.',
  otherWay: 'Missed, it went better. Not a reason to skip.',
  fewer: 'fewer failed',
  more: 'more failed',
  difference: (value: number, low: number, high: number) =>
    `${inHundred(value)} more in 100 failed where it was missed (95 %: ${inHundred(low)} to ${inHundred(high)}).`,
  tableHead: { what: '', failed: 'Did not fit', right: 'Fitted' },
  missed: 'Missed',
  done: 'Done',
  exact: (p: string) => `Exact test within wood group and pitch, mid-p: ${p}`,
  pooled: (odds: string, low: string, high: string) => `Odds ratio, pooled: ${odds} (${low} to ${high})`,
  model: (odds: string, low: string, high: string) =>
    `Model with hardness, pitch, box number and other skips: odds ratio ${odds} (${low} to ${high})`,
  cluster: (p: string) => `Allowing for boxes of one day or set-up: p ${p}`,
  largest: (p: string) => `The largest p counts: ${p}`,
  ratio: (ratio: string, low: string, high: string) => `Risk ratio ${ratio} (${low} to ${high})`,
  control: (p: string) => `The same step against faults it cannot cause: p ${p}`,
  explains: (what: string) => `By mechanism it can show as: ${what}.`,
  explainsNothing: 'No fault of a first fit is known to come from this step.',
  howMany: ({ fifty, eighty }: HowManyMore) =>
    fifty === 'past'
      ? 'More boxes than a log will give would be needed to settle it. Try it both ways.'
      : eighty === 'past'
        ? `About ${fifty} more boxes would give an even chance of settling it.`
        : `About ${fifty} to ${eighty} more boxes would settle it, if it is as it looks.`,
  silent: (count: number) => `${count} boxes say nothing of it (not needed, not recorded, or never tried).`,
  woods: 'Woods by pitch',
  woodsAbout:
    'Crests that came out whole, with what the other woods lend. The line is where the truth lies 9 times in 10.',
  allWoods: 'All woods',
  allowance: 'The clearance that works for you',
  allowanceAt: (pitch: string, clearance: string) => `At ${pitch}: about ${clearance}`,
  allowanceBetween: (low: string, high: string, joints: number) =>
    `Between ${low} and ${high}, 8 times in 10; ${joints} joints stand behind it.`,
  allowanceUsual: (usual: string) => `The usual for the pitch is ${usual}.`,
  allowanceContradictory: (count: number) =>
    count === 1
      ? 'One joint’s trials contradict each other; only its first counts.'
      : `${count} joints’ trials contradict each other; only their first counts.`,
  allowanceStrip: (tight: number, right: number, slack: number) =>
    `${tight} trials tight, ${right} right, ${slack} slack, by clearance from small to large`,
  allowanceSilent: (count: number) =>
    `${count} joints say nothing of size: not measured, or bound for another reason.`,
  tight: 'tight',
  right: 'right',
  slack: 'slack',
  times: 'Where set-up time goes',
  timesAbout: 'Exact times only. Hold points have none: a clock there would hurry.',
  timesShare: (share: number) => `${Math.round(100 * share)} in 100 of the timed steps`,
  timesHurried: (count: number) => `done in under half the usual ${count} times`,
  timesNone: 'No step has an exact time yet.',
  leftOut: 'Boxes left out',
  leftOutWhy: {
    'nothing-cut-yet': 'nothing cut yet',
    'set-up-contested': 'two devices wrote its set-up unseen',
    'from-newer-version': 'written by a newer version',
  },
  csv: 'The rows as a table (CSV)',
  columns: 'What its columns hold',
  lastBoxes: (wood: string, pitch: string) => `Your last boxes in ${wood} at ${pitch}`,
  lastNone: 'None yet in this wood and pitch.',
} as const;

/** A p as it is printed: three places, or "below 0.001". */
export const pWords = (p: number): string => (p < 0.001 ? 'below 0.001' : p.toFixed(3));

/** An odds or risk ratio; a limit that runs off is said in words. */
export const ratioWords = (ratio: number | null): string =>
  ratio === null || !Number.isFinite(ratio) ? 'no limit' : ratio >= 100 ? 'over 100' : ratio.toFixed(2);
