import { OVER } from '../../domain/alignment/in-hand.ts';
import type { ExperimentMeasure } from '../../domain/box/records.ts';
import type { Arm, Comparison } from '../../domain/experiment/compare.ts';
import { FIT } from '../../domain/experiment/experiment-measure.ts';
import type { Look } from '../../domain/experiment/experiment-status.ts';
import type { Interval } from '../../domain/findings/statistics/counts.ts';
import { mm } from '../../domain/units/brands.ts';
import { writeLength } from '../../domain/units/write-quantity.ts';
import { clockWords } from '../words/clock.ts';
import { boxes, inHundred } from './link-words.ts';

type Unit = 'in' | 'mm';

/** How a measure is written in the user's units: a value, the size of a difference, and the words about it. */
interface Scale {
  /** The mean of that many boxes. */
  readonly mean: (mean: number, measured: number) => string;
  readonly size: (difference: number) => string;
  readonly less: string;
  readonly more: string;
  readonly same: string;
  /** The sentence round a difference. */
  readonly sentence: (amount: string) => string;
}

const scaleOf = (measure: ExperimentMeasure, unit: Unit): Scale => {
  const plain = { less: 'less', more: 'more', same: 'no less and no more' };
  if (measure.kind === 'time')
    return {
      ...plain,
      mean: (log) => clockWords(Math.exp(log)),
      size: (log) => `${Math.round(100 * Math.abs(Math.exp(log) - 1))} %`,
      sentence: (amount) => `The first set-up took ${amount} time with the step.`,
    };
  if (measure.kind === 'fit')
    return {
      less: 'fewer in 100',
      more: 'more in 100',
      same: 'Just as many',
      mean: (share, measured) => `${Math.round(share * measured)} of ${measured}`,
      size: (share) => `${Math.abs(inHundred(share))}`,
      sentence: (amount) => `${amount} were right with the step.`,
    };
  if (measure.of === 'turns')
    return {
      ...plain,
      mean: (turns) => `${turns.toFixed(2)} turns`,
      size: (turns) => `${Math.abs(turns).toFixed(2)} turns`,
      sentence: (amount) => `The first reading was ${amount} with the step.`,
    };
  const gap = (angle: number): string => {
    const over = mm(OVER * Math.tan(angle));
    return unit === 'in' ? writeLength(over, 'thou', { places: 1 }) : writeLength(over, 'mm');
  };
  return {
    ...plain,
    mean: gap,
    size: (angle) => gap(Math.abs(angle)),
    sentence: (amount) =>
      `The first reading was ${amount} with the step, over a length of ${unit === 'in' ? '3 1/8 in' : '80 mm'}.`,
  };
};

const sideOf = ({ size, less, more }: Scale, difference: number): string =>
  `${size(difference)} ${difference < 0 ? less : more}`;

/** "1.8 thou to 4.3 thou less"; across zero, "1.2 thou less to 0.3 thou more". */
const rangeWords = (scale: Scale, { low, high }: Interval): string => {
  if (low < 0 && high > 0) return `${sideOf(scale, low)} to ${sideOf(scale, high)}`;
  const [near, far] = low < 0 ? [high, low] : [low, high];
  return `${scale.size(near)} to ${sideOf(scale, far)}`;
};

const differenceWords = ({ difference, interval }: Comparison, scale: Scale): string => {
  const isNought = scale.size(difference) === scale.size(0);
  const said = scale.sentence(isNought ? scale.same : sideOf(scale, difference));
  return interval ? `${said} It may be anything from ${rangeWords(scale, interval)}.` : said;
};

/** What an experiment showed at its last look. */
export const resultWords = {
  headline: ({ look, measured }: Look): string => {
    const when = look === 'half' ? 'Half way' : 'At the end';
    if (measured.state === 'nothing') return `${when}: nothing to compare.`;
    if (measured.state === 'alike') return `${when}: no difference to be seen.`;
    return `${when}: ${measured.clear ? 'a clear answer.' : 'no clear answer.'}`;
  },
  difference: ({ measured }: Look, measure: ExperimentMeasure, unit: Unit): string => {
    if (measured.with.measured + measured.without.measured === 0) return 'No box was measured.';
    if (measured.state === 'nothing')
      return 'No four that were drawn together hold a measured box of each lot.';
    if (measured.state === 'alike')
      return 'Every box measured the same as those drawn with it, so nothing tells luck from the step.';
    const said = differenceWords(measured, scaleOf(measure, unit));
    if (measured.interval) return said;
    return measured.clear
      ? `${said} Nothing but the lot differs in them, so they set no limits to it.`
      : `${said} So few boxes leave everything open.`;
  },
  /** For the picture: what it shows, and what an end of its axis says. */
  end: (difference: number, measure: ExperimentMeasure, unit: Unit): string =>
    sideOf(scaleOf(measure, unit), difference),
  meaning: ({ look, measured }: Look, { kind }: ExperimentMeasure): string => {
    if (!measured.clear)
      return look === 'half'
        ? 'Go on to the end; until then nothing more is told.'
        : 'That is not a reason to skip it.';
    const made =
      'The lots chose the boxes, so it was the step that made the difference, or luck (under 1 in 20 over both looks). You knew the lot, and lots cannot even that out.';
    const better = kind === 'fit' ? measured.difference > 0 : measured.difference < 0;
    if (better) return made;
    return `${made} ${
      kind === 'time'
        ? 'What it guards against is not in the time: that is not a reason to skip it.'
        : 'See why, before you leave it out.'
    }`;
  },
  fit: ({ fit }: Look): string | null => {
    if (!fit) return null;
    if (fit.state !== 'compared') return 'Second, the fit: no difference to be seen.';
    return `Second, the fit, which decides nothing here. ${differenceWords(fit, scaleOf(FIT, 'mm'))}`;
  },
  missing: ({ measured }: Look): string | null => {
    const missing = [measured.with, measured.without].map((arm) => arm.boxes - arm.measured);
    const [withs = 0, without = 0] = missing;
    return withs + without === 0
      ? null
      : `Not measured: ${withs} with the step, ${without} without. They are left out, not guessed.`;
  },
  otherwise: ({ otherwise }: Look): string | null =>
    otherwise === 0
      ? null
      : `In ${boxes(otherwise)} the lot was not kept. By the lot they count all the same.`,
  with: 'With',
  without: 'Without',
  boxes: 'Boxes',
  measured: 'Measured',
  mean: ({ kind }: ExperimentMeasure): string =>
    kind === 'time' ? 'Typical time' : kind === 'fit' ? 'Right' : 'Mean',
  right: 'Right at first',
  value: ({ mean, measured }: Arm, measure: ExperimentMeasure, unit: Unit): string =>
    mean === null ? '—' : scaleOf(measure, unit).mean(mean, measured),
  basis: ({ measured: { z }, bound }: Look): string =>
    `z ${z.toFixed(2)}, clear from ${bound.toFixed(2)} on: the difference against all drawings that the blocks of four could have given. The range turns the same test round; over both looks it holds the truth in 19 experiments of 20.`,
} as const;
