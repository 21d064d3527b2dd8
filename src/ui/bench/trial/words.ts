import type { Marks, Trial } from '../../../domain/box/records.ts';
import type { GoingOn, MarksAt, MarksOn, Seated, ThreadState } from '../../../domain/box/trial-words.ts';

/** How the lid goes on, where nothing beside it says of what it speaks. */
export const goingOnWord: Readonly<Record<GoingOn, string>> = {
  'will-not-start': 'Won’t start',
  'drags-more-each-turn': 'Drags more each turn',
  'stops-dead': 'Stops dead',
  'stiff-all-the-way': 'Stiff all the way',
  gritty: 'Gritty',
  'tight-once-a-turn': 'Catches once a turn',
  'tight-twice-a-turn': 'Catches twice a turn',
  'tight-four-times-a-turn': 'Catches four times a turn',
  'rattles-sideways': 'Rattles sideways',
  'end-play': 'End play',
  'jumps-a-thread': 'Jumps a thread',
  free: 'Runs freely',
};

/** The same under its heading. */
export const goingOnShort: Readonly<Partial<Record<GoingOn, string>>> = {
  'tight-once-a-turn': 'Once a turn',
  'tight-twice-a-turn': 'Twice a turn',
  'tight-four-times-a-turn': 'Four times a turn',
};

export const seatedWord: Readonly<Record<Seated, string>> = {
  flush: 'Flush',
  'open-one-side': 'Open one side',
  'gap-all-round': 'Gap all round',
  rocks: 'Rocks',
  'proud-outside': 'Step outside',
};

export const threadWord: Readonly<Record<ThreadState, string>> = {
  sound: 'Sound',
  chipped: 'Chipped',
  furry: 'Woolly',
  torn: 'Torn',
  burnt: 'Burnt',
  'thin-or-double-cut': 'Double-cut',
  'cross-threaded': 'Cross-threaded',
  'shoulder-hit': 'Shoulder hit',
};

export const marksOnWord: Readonly<Record<MarksOn, string>> = { crest: 'Crests', flank: 'Flanks' };

export const marksAtWord: Readonly<Record<MarksAt, string>> = {
  start: 'Start',
  'by-shoulder': 'Shoulder',
  'all-along': 'All along',
};

export const trialWords = {
  title: 'Trial fit',
  stages: 'Stages',
  back: 'Back to the trial fit',
  unplug: 'Unplug first. The chuck stays on the jig.',
  good: 'Good: runs on freely, pulls up firm',
  tight: 'Tight',
  catches: 'Catches',
  loose: 'Loose',
  pickAll: 'pick all that apply',
  seat: 'Seat',
  threads: 'Threads',
  marks: 'Marks',
  marksHint: 'pencil the crests, twist on and off',
  afterFinish: 'After finish or drying: a new fit',
  clear: 'Clear',
  getAdvice: (count: number) => (count > 0 ? `Get advice (${count})` : 'Get advice'),
  pickOne: 'Pick at least one',
  doneSince: (moves: string) => `Done since the last trial: ${moves}.`,
  undoMove: 'Undo',
  undo: 'Undo this trial',
  earlier: 'Earlier trials',
  cutSoFar: (recess: string, tenon: string) => `Cut: recess ${recess}, tenon ${tenon}.`,
  changeCut: 'Correct it',
  notCut: 'not yet',
} as const;

/** One trial in a line, for a list of them. */
export const trialLine = (trial: Trial): string => {
  if (trial.right) return trialWords.good;
  const said = [
    ...trial.goingOn.map((word) => goingOnWord[word]),
    ...(trial.seated ? [seatedWord[trial.seated]] : []),
    ...trial.threads.map((word) => threadWord[word]),
    ...(trial.marks ? [marksLine(trial.marks)] : []),
    ...(trial.endPlay ? [`end play ${trial.endPlay.text}`] : []),
    ...(trial.crestFlat ? [`crest of the ${trial.crestFlat.part} ${trial.crestFlat.width.text} wide`] : []),
    ...(trial.bottomGap ? [`recess deeper by ${trial.bottomGap.text}`] : []),
    ...(trial.turnsOn == null ? [] : [`${trial.turnsOn} turns before it stopped`]),
  ];
  return said.map((word, i) => (i === 0 ? word : word.toLowerCase())).join(', ');
};

const WHERE: Readonly<Record<MarksAt, string>> = {
  start: 'at the start',
  'by-shoulder': 'by the shoulder',
  'all-along': 'all along',
};

const marksLine = ({ on, at }: Marks): string => `${marksOnWord[on].toLowerCase()} marked ${WHERE[at]}`;
