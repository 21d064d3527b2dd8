import type { Seat } from '../../../domain/box/records.ts';

export const shoulderWord: Readonly<Record<NonNullable<Seat['takenFrom']>, string>> = {
  'tenon-shoulder': 'The tenon’s shoulder',
  rim: 'The rim of the recess',
};

const listed = (hours: readonly number[]): string =>
  hours.length < 2 ? hours.join('') : `${hours.slice(0, -1).join(', ')} and ${hours.at(-1)}`;

export const seatWords = {
  flush: 'In line and flush: close the box',
  else: 'Else: where is it off?',
  open: 'Open at',
  openHint: 'Mark up, at 12. Tap where light shows.',
  hour: (hour: number) => `${hour} o’clock`,
  faceSays: (hours: readonly number[]) =>
    hours.length === 0 ? 'Not open anywhere.' : `Open at ${listed(hours)} o’clock.`,
  papers: 'How many papers go in',
  papersHint: 'A sheet of copy paper is about 0.1 mm, 4 thou.',
  grain: 'The grain',
  toGo: 'Still to go',
  past: 'Gone past',
  degrees: 'Degrees',
  degreesHint: {
    right: 'Seen from outside the lid. Clockwise is on.',
    left: 'Seen from outside the lid. Anticlockwise is on.',
  },
  match: 'To line up',
  figure: 'The figure, full turn',
  oval: 'Only oval parts, half turn',
  from: 'Rub down',
  reckon: 'What comes off?',
  takeOff: (shoulder: string | null) =>
    shoulder
      ? `to come off in all. ${shoulder}.`
      : 'to come off in all: the tenon’s shoulder or the rim, as you like.',
  firstStep: (length: string) => `Rub off ${length}, at most half of it. Try again.`,
  stroke: 'Rub off a stroke or two. Try again.',
  asPlanned: 'That is from the plan: the gap to the floor was not measured.',
  how: 'On fine abrasive, flat, turning the piece as you go.',
  short: 'That stops 5 to 10 degrees short: shoulders burnish.',
  goesTo: (length: string, by: 'floor' | 'thread') =>
    by === 'floor'
      ? `In all, ${length} can come off before the tenon meets the floor.`
      : `In all, ${length} can come off before the thread ends.`,
  tooFar: (degrees: string) =>
    `There is no room to go that far: ${degrees} at most. Leave it, or deepen the floor of the recess first.`,
  noPlan: 'The sizes of this joint do not go together, so how far it can go is not known.',
  nothingToTake: 'Nothing to take off: it will burnish in.',
  openTold: (papers: number, open: readonly number[], rests: readonly number[]) =>
    `Open at ${listed(open)} by ${papers === 1 ? 'one paper' : `${papers} papers`}: it rests at ${listed(rests)}.`,
  openAdvice:
    'Look for a chip or a burr there first. Then rub the shoulder all round, flat. If lid and base were chucked anew after turning, wipe nose and chuck: that tilts a lid; a lean of the jig does not.',
  allRound: 'A gap all round: the shoulder is held off. Look to the floor and the thread’s end first.',
  tried: 'Tried it again',
  leave: 'Good enough: close the box',
  undo: 'Undo: this was not so',
  earlier: 'Earlier',
  line: ({ open, papers, degreesToGo, takenFrom }: Seat): string =>
    [
      open.length > 0 ? `open at ${listed(open)}${papers > 0 ? `, papers: ${papers}` : ''}` : 'not open',
      degreesToGo === null ? '' : degreesToGo === 0 ? 'in line' : `${Math.round(degreesToGo)}° to go`,
      takenFrom ? `rubbed: ${shoulderWord[takenFrom].toLowerCase()}` : '',
    ]
      .filter(Boolean)
      .join('; '),
} as const;
