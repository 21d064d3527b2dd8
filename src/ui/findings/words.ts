import type { LeftOut } from '../../domain/findings/rows/rows-from-log.ts';

const number = (count: number): string => count.toLocaleString('en');
const boxes = (count: number): string => (count === 1 ? '1 box' : `${number(count)} boxes`);

const leftOutWhy: Readonly<Record<LeftOut, string>> = {
  'nothing-cut-yet': 'nothing cut yet',
  'set-up-contested': 'two devices wrote its set-up unseen',
  'from-newer-version': 'written by a newer version',
};

export const findingsWords = {
  title: 'Findings',
  wait: 'Reading your log…',
  progress: (share: number) => `Reading your log: ${Math.round(100 * share)} %`,
  /** Over the findings of the last time, while it is read. */
  progressAsOf: (share: number, moment: string) =>
    `Reading what is new: ${Math.round(100 * share)} %. Below is what was found on ${moment}.`,
  cancel: 'Stop',
  stopped: 'Stopped. Nothing was changed.',
  stoppedAsOf: (moment: string) => `Stopped. Below is what was found on ${moment}.`,
  again: 'Read it now',
  failed: 'The findings could not be worked out. Your log is safe.',
  tryAgain: 'Try again',
  inMemory:
    'Not available here: findings are worked out from stored boxes, and this browser stores nothing. Import a backup in a browser that does.',
  none: 'No box has been tried yet. The first trial fit starts the findings; the Bench gives you sizes and advice from box one.',
  toBench: 'To the Bench',
  tomorrow: 'What to change tomorrow',
  nothing: 'Nothing yet. Your log shows no step whose missing goes with lids that do not fit.',
  nothingAbout: 'That is not a reason to skip one: a weak link hides in a log of this size.',
  nothingFew: (next: number) =>
    `Nothing yet. Links are weighed first at ${next} boxes; until then your own last boxes are the best guide.`,
  change: (sentence: string, word: string) =>
    `Don’t miss this one: “${sentence}” (${word.toLowerCase()} with lids that did not fit).`,
  together: 'They go together; the log cannot say why.',
  rightFirst: (right: number, eased: number, of: number) =>
    `${boxes(of)} tried: ${number(right)} right at the first trial${eased > 0 ? `, ${number(eased)} eased once to right` : ''}.`,
  leftOut: (leftOut: Readonly<Record<string, number>>) => {
    const reasons = Object.entries(leftOut).filter(([, count]) => count > 0);
    const why = (key: string) => leftOutWhy[key as LeftOut] ?? key;
    return reasons.length === 0
      ? ''
      : `Left out: ${reasons.map(([key, count]) => `${number(count)} ${why(key)}`).join(', ')}.`;
  },
  untried: 'never tried',
  steps: 'Steps missed, and first fits',
  stepsAbout:
    'Hold points are never scored. A tight lid eased once to right counts as right. Missed is skipped, or left failing.',
  luck: 'With ten steps, about one log in five shows a “possible” by luck.',
  wordsAt: (at: number, next: number) =>
    at === 0
      ? `Words are given from ${boxes(next)} on; the numbers are always there.`
      : `Words as at ${boxes(at)}; they are weighed again at ${number(next)}, so that looking often does not find luck.`,
  numbers: 'Numbers',
  lastBoxes: (wood: string, pitch: string) => `Your last boxes in ${wood} at ${pitch}`,
  lastNone: 'None tried yet in this wood and pitch.',
  csv: 'The rows as a table (CSV)',
  columns: 'What its columns hold',
  csvFailed: 'The table could not be made. Your log is safe.',
} as const;
