import type { Marks, Trial } from '../../../domain/box/records.ts';
import type { GoingOn, MarksAt, MarksOn, Seated, ThreadState } from '../../../domain/box/trial-words.ts';

export const goingOnWord: Readonly<Record<GoingOn, string>> = {
  'will-not-start': 'Will not start',
  'drags-more-each-turn': 'Drags more each turn',
  'stops-dead': 'Stops dead',
  'stiff-all-the-way': 'Stiff all the way',
  gritty: 'Gritty',
  'tight-once-a-turn': 'Tight once a turn',
  'tight-twice-a-turn': 'Tight twice a turn',
  'tight-four-times-a-turn': 'Tight four times a turn',
  'rattles-sideways': 'Rattles sideways',
  'end-play': 'End play',
  'jumps-a-thread': 'Jumps a thread',
  free: 'Free',
};

export const seatedWord: Readonly<Record<Seated, string>> = {
  flush: 'Flush',
  'open-one-side': 'Open on one side',
  'gap-all-round': 'Gap all round',
  rocks: 'Rocks',
  'proud-outside': 'Proud outside',
};

export const threadWord: Readonly<Record<ThreadState, string>> = {
  sound: 'Sound',
  chipped: 'Chipped',
  furry: 'Furry',
  torn: 'Torn',
  burnt: 'Burnt',
  'thin-or-double-cut': 'Thin or double-cut',
  'cross-threaded': 'Cross-threaded',
  'shoulder-hit': 'Shoulder hit',
};

export const marksOnWord: Readonly<Record<MarksOn, string>> = {
  crest: 'On the crests',
  flank: 'On the flanks',
};

export const marksAtWord: Readonly<Record<MarksAt, string>> = {
  start: 'At the start',
  'by-shoulder': 'By the shoulder',
  'all-along': 'All along',
};

export const trialWords = {
  first: 'Off at the wall before a hand goes near. The chuck stays on the jig.',
  right: 'Right: goes on easily, pulls up firm.',
  else: 'Else: how is it?',
  goingOn: 'Going on',
  seated: 'Seated',
  threads: 'Threads',
  marks: 'Marks after a twist',
  marksHint: 'Pencil on the crests shows them.',
  marksAt: 'Where along',
  endPlay: 'Play, measured',
  endPlayHint: 'Pull and push the lid half a turn off its seat.',
  bottomGap: 'Recess deeper than tenon',
  bottomGapHint: 'Recess depth less tenon length, measured.',
  turnsOn: 'Turns it went on',
  afterFinish: 'After finish or drying: a new fit',
  whatNow: 'What now?',
  sayOne: 'Say at least one thing that is not right.',
  tried: 'Tried it again',
  undo: 'Undo: this was not so',
  earlier: 'Earlier trials',
  allRight: 'Right. On to the seat and the grain.',
  again: 'Another trial',
  cutSoFar: (recess: string, tenon: string) => `Cut: recess ${recess}, tenon ${tenon}.`,
  changeCut: 'Not so?',
  notCut: 'not yet',
} as const;

/** One trial in a line, for a list of them. */
export const trialLine = (trial: Trial): string => {
  if (trial.right) return trialWords.right;
  const said = [
    ...trial.goingOn.map((word) => goingOnWord[word]),
    ...(trial.seated ? [seatedWord[trial.seated]] : []),
    ...trial.threads.map((word) => threadWord[word]),
    ...(trial.marks ? [marksLine(trial.marks)] : []),
    ...(trial.endPlay ? [`end play ${trial.endPlay.text}`] : []),
    ...(trial.bottomGap ? [`recess deeper by ${trial.bottomGap.text}`] : []),
    ...(trial.turnsOn === null ? [] : [`${trial.turnsOn} turns on`]),
  ];
  return said.map((word, i) => (i === 0 ? word : word.toLowerCase())).join(', ');
};

const marksLine = ({ on, at }: Marks): string =>
  `marks ${marksOnWord[on].toLowerCase()}, ${marksAtWord[at].toLowerCase()}`;
