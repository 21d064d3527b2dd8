import type { Covariate } from '../../domain/findings/answers/step-model.ts';
import type { SilentBecause } from '../../domain/findings/rows/exposure.ts';
import type { TwoByTwo } from '../../domain/findings/statistics/counts.ts';
import { boxes } from './link-words.ts';

const silentWord: Readonly<Record<SilentBecause, string>> = {
  'never-tried': 'never tried',
  'not-needed': 'it was not needed',
  'not-recorded': 'not recorded',
};

const covariateWord: Readonly<Record<Covariate, string>> = {
  'other-skips': 'other steps skipped',
  hardness: 'hardness of the wood',
  pitch: 'pitch',
  experience: 'boxes made before',
  'other-step': 'the other step',
  log: 'whose log',
};

/** What stands behind the word for a step. */
export const numberWords = {
  missed: 'Missed',
  done: 'Done',
  failed: 'Fault',
  fitted: 'None',
  event: 'Fault: at the first trial, one that this step can explain, or scrapped for its thread.',
  /** How many boxes a figure rests on, and how many it leaves out, by reason. */
  basis: (of: number, silent: Readonly<Record<SilentBecause, number>>) => {
    const out = (Object.keys(silentWord) as SilentBecause[]).filter((why) => silent[why] > 0);
    const left = out.map((why) => `${silent[why]} ${silentWord[why]}`).join(', ');
    return `From ${boxes(of)}; ${left === '' ? 'none left out' : `left out: ${left}`}.`;
  },
  estimate: '95 % interval',
  p: 'p',
  rows: {
    difference: 'More that did not fit, in 100 (Newcombe)',
    risk: 'Risk ratio (Miettinen, Nurminen)',
    exact: 'Exact test within wood group and pitch, mid-p',
    pooled: 'Odds ratio pooled over them (Mantel, Haenszel)',
    same: 'The same in each of them (Tarone)',
    model: 'Model (Firth): odds ratio',
    modelDifference: 'Model: more that did not fit, in 100',
    cluster: 'Boxes of one day or set-up sharing their luck',
    largest: 'Largest of the three p; it counts',
    control: 'The same step, faults it cannot cause',
    beyond: 'Of those missed that failed, beyond what done ones do',
  },
  controlCounts: ({ a, b, c, d }: TwoByTwo) => `${a} of ${a + b}; ${c} of ${c + d}`,
  model: (covariates: readonly Covariate[]) =>
    covariates.length === 0
      ? 'Nothing else varies, so the model holds the step alone.'
      : `The model also holds: ${covariates.map((name) => covariateWord[name]).join(', ')}.`,
  noPooled: 'No pooled odds ratio: too few boxes alike in wood group and pitch.',
  hardnessAssumed: (count: number) =>
    `${boxes(count)} in a wood without a tabled hardness, treated as the middle of its group.`,
} as const;

/** A p as it is printed: three places, or "below 0.001". */
export const pWords = (p: number): string => (p < 0.001 ? 'below 0.001' : p.toFixed(3));

/** An odds or risk ratio; a limit without end is written in words. */
export const ratioWords = (ratio: number | null): string =>
  ratio === null || !Number.isFinite(ratio) ? 'no limit' : ratio >= 100 ? 'over 100' : ratio.toFixed(2);
