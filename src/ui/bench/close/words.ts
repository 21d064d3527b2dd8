import type { Closing, LidTurns } from '../../../domain/box/records.ts';

type Word<T extends string> = Readonly<Record<T, string>>;

export const outcomeWord: Word<Closing['outcome']> = {
  kept: 'Keep it',
  second: 'A second',
  scrapped: 'Scrapped',
};

export const scrapWord: Word<NonNullable<Closing['scrapReason']>> = {
  thread: 'The thread',
  wood: 'The wood',
  turning: 'The turning',
  other: 'Something else',
};

export const hardenerWord: Word<Closing['hardener']> = {
  none: 'None',
  'thin-ca': 'Thin CA',
  sealer: 'Sealer',
  wax: 'Wax',
};

export const outsideWord: Word<NonNullable<Closing['outsideTurned']>> = {
  before: 'Before threading',
  after: 'After, lid on',
};

export const closeWords = {
  act: (outcome: Closing['outcome']) => `${outcomeWord[outcome]}: close`,
  rest: 'One tap will do. All here is optional.',
  outcome: 'Outcome',
  scrapReason: 'What spoilt it?',
  hardener: 'Hardener on the threads',
  beforePass: 'Before pass',
  beforePassHint: '1, 2, or 3 for a correction',
  caFumes: 'CA fumes: open a window. Fully cured before you cut again.',
  outside: 'Outside turned',
  lidOnForward: 'Lid on: never run in reverse, a right-hand thread unscrews it.',
  lidOnReverse: 'Lid on: never run forward, a left-hand thread unscrews it.',
  noFault: 'Turned with the lid on, a step outside is no fault of the thread.',
  note: 'Note',
  closed: (outcome: Closing['outcome']) => `Closed: ${outcomeWord[outcome].toLowerCase()}.`,
  reopen: 'Back on the lathe',
} as const;

export const laterWord: Word<LidTurns> = {
  free: 'Free',
  stiff: 'Stiff',
  stuck: 'Stuck',
  loose: 'Loose',
};

export const laterWords = {
  ask: 'How does the lid turn now?',
  askAbout: (title: string, since: string) =>
    `${title} has been closed for ${since}. How does its lid turn now?`,
  noted: (verdict: LidTurns, day: string) => `${laterWord[verdict]}, ${day}`,
  list: 'Looked at again',
  undo: 'Undo',
} as const;
