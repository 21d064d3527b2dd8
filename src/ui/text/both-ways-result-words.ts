import { OVER } from '../../domain/alignment/in-hand.ts';
import type { Arm, Comparison } from '../../domain/findings/both-ways.ts';
import type { Look } from '../../domain/findings/both-ways-standing.ts';
import type { TrialMeasure } from '../../domain/log/records.ts';
import { mm } from '../../domain/units/brands.ts';
import { writeLength } from '../../domain/units/write-quantity.ts';
import { clockWords } from './clock-words.ts';
import { boxes, inHundred } from './findings-link-words.ts';

type Unit = 'in' | 'mm';

/** A value of a measure, and a difference of two ("0.14 mm less"), in the user's units. */
interface Scale {
  readonly value: (value: number) => string;
  readonly amount: (difference: number) => string;
  /** Before and after the amount, in a sentence that says what it is of. */
  readonly of: readonly [string, string];
}

const lessOrMore = (difference: number): string => (difference < 0 ? 'less' : 'more');

const scaleOf = (measure: TrialMeasure, unit: Unit): Scale => {
  if (measure.kind === 'time') {
    const percent = (log: number) => Math.round(100 * Math.abs(Math.exp(log) - 1));
    return {
      value: (log) => clockWords(Math.exp(log)),
      amount: (log) => `${percent(log)} % ${lessOrMore(log)}`,
      of: ['The first set-up took ', ' time with the step.'],
    };
  }
  if (measure.kind === 'fit')
    return {
      value: (share) => `${inHundred(share)} in 100`,
      amount: (share) => `${inHundred(Math.abs(share))} in 100 ${share < 0 ? 'fewer' : 'more'}`,
      of: ['', ' were right with the step.'],
    };
  if (measure.of === 'turns')
    return {
      value: (turns) => `${turns.toFixed(2)} turns`,
      amount: (turns) => `${Math.abs(turns).toFixed(2)} turns ${lessOrMore(turns)}`,
      of: ['The first reading was ', ' with the step.'],
    };
  const gap = (angle: number) =>
    unit === 'in'
      ? writeLength(mm(OVER * Math.tan(angle)), 'thou', { places: 1 })
      : writeLength(mm(OVER * Math.tan(angle)), 'mm');
  return {
    value: gap,
    amount: (angle) => `${gap(Math.abs(angle))} ${lessOrMore(angle)}`,
    of: [
      'The first reading was ',
      ` with the step, over a length of ${unit === 'in' ? '3 1/8 in' : '80 mm'}.`,
    ],
  };
};

const FIT: TrialMeasure = { kind: 'fit' };

const differenceWords = (found: Comparison, scale: Scale): string => {
  const { difference, interval } = found;
  const [before, after] = scale.of;
  const said = `${before}${scale.amount(difference)}${after}`;
  return interval
    ? `${said} The boxes leave open from ${scale.amount(interval.low)} to ${scale.amount(interval.high)}.`
    : said;
};

/** What a trial showed at its last look. */
export const resultWords = {
  headline: ({ look, measured }: Look): string => {
    const when = look === 'half' ? 'Half way' : 'At the end';
    if (measured.state === 'nothing') return `${when}: nothing to compare.`;
    if (measured.state === 'alike') return `${when}: no difference to be seen.`;
    return `${when}: ${measured.clear ? 'a clear answer.' : 'no clear answer.'}`;
  },
  difference: ({ measured }: Look, measure: TrialMeasure, unit: Unit): string => {
    if (measured.state === 'nothing')
      return 'No four that were drawn together hold a measured box of either lot.';
    if (measured.state === 'alike')
      return 'Every box measured the same as those drawn with it, so nothing tells luck from the step.';
    const said = differenceWords(measured, scaleOf(measure, unit));
    if (measured.interval) return said;
    return measured.clear
      ? `${said} Nothing but the lot differs in them, so they set no limits to it.`
      : `${said} So few boxes leave everything open.`;
  },
  meaning: ({ look, measured }: Look, { kind }: TrialMeasure): string => {
    if (!measured.clear)
      return look === 'half'
        ? 'Go on to the end; until then nothing more is told.'
        : 'That is no leave to skip it.';
    const made =
      'The lots chose the boxes, so it was the step that made the difference, or luck (under 1 in 20 over both looks). You knew the lot, and lots cannot even that out.';
    const better = kind === 'fit' ? measured.difference > 0 : measured.difference < 0;
    if (better) return made;
    return `${made} ${
      kind === 'time'
        ? 'What it guards against is not in the time: that is no leave to skip it.'
        : 'See why, before you leave it out.'
    }`;
  },
  fit: ({ fit }: Look): string | null => {
    if (!fit) return null;
    if (fit.state !== 'compared') return 'Second, the fit: no difference to be seen.';
    return `Second, the fit, which decides nothing here: ${differenceWords(fit, scaleOf(FIT, 'mm'))}`;
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
  mean: ({ kind }: TrialMeasure): string =>
    kind === 'time' ? 'Typical time' : kind === 'fit' ? 'Right' : 'Mean',
  right: 'Right at first',
  value: ({ mean }: Arm, measure: TrialMeasure, unit: Unit): string =>
    mean === null ? '—' : scaleOf(measure, unit).value(mean),
  rightOf: ({ mean, measured }: Arm): string =>
    mean === null ? '—' : `${Math.round(mean * measured)} of ${measured}`,
  basis: ({ measured: { z }, bound }: Look): string =>
    `z ${z.toFixed(2)}, clear from ${bound.toFixed(2)} on: the difference against all drawings that the blocks of four could have given. What is left open turns the same test round; over both looks it holds the truth in 19 trials of 20.`,
} as const;
