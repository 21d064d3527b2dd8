/** Words of the findings that are figures: woods, allowance, time. */
const joints = (count: number): string => (count === 1 ? '1 joint' : `${count} joints`);
const inHundred = (share: number): number => Math.round(100 * share);

export const woodFigureWords = {
  title: 'Woods by pitch',
  about:
    'Crests that came out whole, with what the other woods lend. The line is where the truth lies 9 times in 10.',
  silent: (neverTried: number) =>
    neverTried === 0 ? 'No box is left out.' : `Left out: ${neverTried} never tried.`,
  all: 'All woods',
  little: 'Little tried',
  littleAbout: 'Under five boxes; hardness is the better guide.',
  hardness: 'By hardness',
  hardnessSentence: (pitch: string, soft: Share, hard: Share) =>
    `At ${pitch}, expect about ${inHundred(soft.value)} threads in 100 to hold in a wood of ${newton(soft.hardness)}, about ${inHundred(hard.value)} in one of ${newton(hard.hardness)}.`,
  hardnessAbout: (tried: number, woods: number, silent: number) =>
    `From ${joints(tried)} in ${woods} woods${silent > 0 ? `; left out: ${silent} never tried or of no tabled hardness` : ''}. The band is where a wood not yet tried lies 9 times in 10; without hardener.`,
  hardnessPicture: (pitch: string) => `Threads that hold at ${pitch}, by side hardness from soft to hard`,
  newton: (value: number) => newton(value),
  held: 'Hold, in 100',
  between: '9 times in 10',
  sideHardness: 'Side hardness',
} as const;

interface Share {
  readonly hardness: number;
  readonly value: number;
}
const newton = (value: number): string => `${(Math.round(value / 100) * 100).toLocaleString('en')} N`;

export const allowanceFigureWords = {
  title: 'The clearance that works for you',
  at: (pitch: string, clearance: string) => `At ${pitch}: about ${clearance}`,
  between: (low: string, high: string, count: number) =>
    low === high
      ? `${low} all but surely; ${joints(count)} ${count === 1 ? 'stands' : 'stand'} behind it.`
      : `Between ${low} and ${high}, 8 times in 10; ${joints(count)} ${count === 1 ? 'stands' : 'stand'} behind it.`,
  usual: (usual: string) => `The default for this pitch is ${usual}.`,
  contradictory: (count: number) =>
    count === 1
      ? 'One joint’s trials contradict each other; only its first counts.'
      : `${count} joints’ trials contradict each other; only their first counts.`,
  strip: (tight: number, right: number, slack: number) =>
    `${tight} trials tight, ${right} right, ${slack} slack, by clearance from small to large`,
  silent: (count: number) => `Left out: ${joints(count)} not measured, or bound for another reason.`,
  felt: { tight: 'tight', right: 'right', slack: 'slack' },
  trials: 'Trials',
  from: 'From',
  to: 'To',
  spread: (spread: string, band: string) =>
    `What suits differs from joint to joint by ${spread} (standard deviation); ${band} either way still feels right.`,
} as const;

export const timeFigureWords = {
  title: 'Where set-up time goes',
  about: 'Exact times only. Hold points have none: a clock there would hurry.',
  none: 'No step has an exact time yet.',
  sentence: (step: string, time: string, share: number) =>
    `Longest: “${step}” ${time}, ${inHundred(share)} in 100 of the timed steps.`,
  half: (step: string, usual: string, low: string, high: string) =>
    `${step}: ${usual}, half of the times from ${low} to ${high}`,
  one: (step: string, usual: string) => `${step}: ${usual}`,
  usual: 'Usual time',
  middleHalf: 'Middle half of the times',
  counted: 'Times counted',
  counts: (exact: number, unknown: number) =>
    unknown === 0 ? `${exact}` : `${exact}; ${unknown} not known exactly are left out`,
  hurried: 'Hurried',
  change: 'Change from session to session',
  without: 'The other steps, where it was missed',
  tableAbout:
    'Hurried: in under half of what it took before. Change by Theil and Sen, its p by Mann and Kendall; the other steps’ time by Hodges and Lehmann, 95 % interval.',
  range: (low: string, high: string) => `${low} to ${high}`,
  percent: (factor: number) => percent(factor),
  longer: (factor: number, low: number, high: number) =>
    `${percent(factor)} (${percent(low)} to ${percent(high)})`,
  withP: (what: string, p: string) => `${what}, p ${p}`,
} as const;

/** A factor as a change: 1.1 is +10 %. */
const percent = (factor: number): string => {
  const change = Math.round(1000 * (factor - 1)) / 10;
  return `${change > 0 ? '+' : ''}${change} %`;
};
