import type { ExperimentMeasure } from '../../domain/box/records.ts';
import type { PowerAt } from '../../domain/experiment/experiment-power.ts';
import type { ExperimentStatus } from '../../domain/experiment/experiment-status.ts';
import { boxes, inHundred } from './link-words.ts';

/** Of an experiment that is planned or under way. */
export const experimentWords = {
  title: 'Test a step',
  about:
    'For a question the log cannot answer: lots are drawn beforehand, half the boxes with the step and half without, in blocks of four. Hold points are never varied. It is looked at twice only, half way and at the end.',
  plan: 'Plan a test',
  step: 'Which step?',
  noStep: 'No step of your procedure can be tested.',
  measure: 'What is measured?',
  measures: (measure: ExperimentMeasure): string => {
    switch (measure.kind) {
      case 'reading':
        return `The reading at “${measure.sentence}”`;
      case 'time':
        return 'The time of the set-up';
      case 'fit':
        return 'Right at the first trial fit, or not';
    }
  },
  measureAbout: (measure: ExperimentMeasure): string => {
    switch (measure.kind) {
      case 'reading':
        return 'The first reading of each box counts, before anything is put right. So take one in every box, whatever its lot. The fit is told second.';
      case 'time':
        return 'The first set-up of each box, hold points left out, and only where every time is known exactly: tick the steps singly. The fit is told second.';
      case 'fit':
        return 'Right at once, or eased once to right. A reading, where a step has one, tells more from as many boxes.';
    }
  },
  boxes: 'How many boxes? (a multiple of 4, from 8)',
  chance: (at: PowerAt, measure: ExperimentMeasure): number => inHundred(powerOf(at, measure)),
  power: (at: PowerAt, measure: ExperimentMeasure) => {
    const share = powerOf(at, measure);
    return `With ${at.boxes} boxes: ${inHundred(share)} chances in 100 of a clear answer, ${assumed(measure)}.${
      share < 0.8 ? ' An unclear answer then says little.' : ''
    }`;
  },
  sizes: 'A clear answer',
  size: 'Boxes',
  chances: 'In 100',
  begin: 'Assign boxes',
  underWay: ({ taken, planned, nextLook, look }: ExperimentStatus) =>
    `${taken} of ${boxes(planned)}${nextLook === null ? '' : `; ${look === 'none-yet' ? 'first' : 'last'} look at ${nextLook}`}.`,
  waits: ({ taken, nextLook, unfinished }: ExperimentStatus) =>
    nextLook === null || taken < nextLook
      ? null
      : `The look waits for ${boxes(unfinished)} with a lot and not finished: try ${unfinished === 1 ? 'it' : 'them'} until right, or close ${unfinished === 1 ? 'it' : 'them'}.`,
  asked:
    'The Bench says before a box’s first set-up which lot it draws. Until the look nothing is told of the difference: who looks at every box finds luck.',
  reading: 'Its boxes are being read…',
  giveUp: 'Cancel this test',
  stopHere: 'Stop here and put the result away',
  putAway: 'Put the result away',
  earlier: 'Earlier tests',
} as const;

/** Never certain, however many boxes. */
const powerOf = (at: PowerAt, { kind }: ExperimentMeasure): number =>
  Math.min(0.99, kind === 'fit' ? at.fit : at.reading);

const assumed = (measure: ExperimentMeasure): string => {
  if (measure.kind === 'fit') return 'if 15 boxes in 100 do not fit with the step and 35 without';
  const what = measure.kind === 'time' ? 'took longer' : 'read more';
  return `if of two boxes, one of each lot, the one without the step ${what} 7 times in 10 (a shift of 0.8 of the spread)`;
};
