import type { FirstFit, Standing } from '../../domain/box/story.ts';
import type { ToothState } from '../drawings/tooth-shape.ts';

export const standingWord: Readonly<Record<Standing, string>> = {
  'on-the-lathe': 'on the lathe',
  kept: 'kept',
  second: 'a second',
  scrapped: 'scrapped',
};

export const fitWord: Readonly<Record<FirstFit, string>> = {
  right: 'right at the first trial',
  eased: 'eased to right',
  'not-right': 'not right',
};

/** The tooth that stands for a first fit: whole, cut off, chipped. */
export const fitTooth: Readonly<Record<FirstFit, ToothState>> = {
  right: 'passed',
  eased: 'reopened',
  'not-right': 'failed',
};

export const boxesWords = {
  title: 'Boxes',
  none: 'No box yet. The first one starts on the Bench.',
  first: 'New box',
  find: 'Find',
  wood: 'Wood',
  anyWood: 'Any wood',
  pitch: 'Pitch',
  anyPitch: 'Any pitch',
  standing: 'How it stands',
  anyStanding: 'Any state',
  showAll: 'Show all',
  notTried: 'no trial fit',
  name: (number: number, name: string) => `${number}${name ? ` ${name}` : ''}`,
  count: (found: number, all: number) =>
    found === all ? `${all} ${all === 1 ? 'box' : 'boxes'}` : `${found} of ${all} boxes`,
  counting: 'Reading the older ones…',
  more: (count: number) => `Show ${count} more`,
  noSuch: 'There is no such box in this log.',
  back: 'All boxes',
  onTheBench: 'It is on the Bench',
  sizes: 'Sizes',
  lid: 'Lid',
  base: 'Base',
  insert: (piece: string) => `Insert ring in the ${piece}`,
  grain: { end: 'end grain', side: 'side grain' },
  pitchIs: 'Pitch',
  opening: 'Recess planned',
  bore: (where: string) => `Bore, ${where}`,
  tenon: (where: string) => `Tenon, by the ${where}`,
  overCrests: 'over crests',
  route: { 'recess-first': 'recess first', 'both-turned': 'both turned, one set-up' },
  setUps: 'Set-ups',
  askedAgain: (count: number) => (count === 1 ? 'One step asked again.' : `${count} steps asked again.`),
  likelyCauses: 'Likely causes',
  aboutCauses:
    'Of the last trial that was not right: from its symptoms, your set-up and your readings. Likely, not proved.',
  cuts: 'Passes',
  cut: (part: string, depth: string, correction: boolean) =>
    `${part}: ${depth} deep${correction ? ', a correction' : ''}`,
  trials: 'Trial fits',
  trial: (at: number) => `Trial ${at}`,
  right: 'right',
  endPlay: (play: string) => `end play ${play}`,
  closing: 'Close',
  later: 'Later',
  photos: 'Photos',
  hardener: { none: 'no hardener', 'thin-ca': 'thin CA', sealer: 'sealer', wax: 'wax' },
  spent: (time: string) => `${time} in all`,
  passedAway: (time: string) => `away ${time}`,
  undone: 'undone',
} as const;
