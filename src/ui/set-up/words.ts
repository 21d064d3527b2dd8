import {
  type ForeignEvent,
  isKnown,
  type Part,
  type SetUpEvent,
  type Verdict,
} from '../../domain/setup/events.ts';
import type { StepStatus } from '../../domain/setup/fold.ts';
import type { Movement, Step } from '../../domain/setup/procedure.ts';
import type { Reading } from '../../domain/setup/reading.ts';
import type { Waking } from '../../platform/wake-lock.ts';

export const partName: Readonly<Record<Part, string>> = { recess: 'Recess', tenon: 'Tenon' };

export const statusWord: Readonly<Record<StepStatus, string>> = {
  'to-come': 'to come',
  passed: 'passed',
  failed: 'failed',
  skipped: 'skipped',
  carried: 'still set',
  reopened: 'lost its setting',
  closed: 'closed: it rests on a skipped step',
  'not-needed': 'not needed',
};

export const movementWord: Readonly<Record<Movement, string>> = {
  'banjo-moved': 'The banjo',
  'post-loosened': 'The post, loose or out',
  'chuck-off': 'Chuck off, work slipped',
  'cutter-changed': 'The cutter',
  'dial-knocked': 'Dial or cross-slide',
  'headstock-swung': 'The headstock',
  'it-grabbed': 'It grabbed',
  'dont-know': 'Don’t know',
};

/** The same on the buttons that ask what moved, two abreast and read from afar. */
export const movementShort: Readonly<Record<Movement, string>> = {
  'banjo-moved': 'Banjo',
  'post-loosened': 'Post',
  'chuck-off': 'Chuck, work',
  'cutter-changed': 'Cutter',
  'dial-knocked': 'Dial, slide',
  'headstock-swung': 'Head\u00adstock',
  'it-grabbed': 'A grab',
  'dont-know': 'Don’t know',
};

/** What a step of ours leaves behind once it is passed; a step of the user's own says its sentence. */
const HELD: Readonly<Record<string, string>> = {
  board: 'board flat',
  cone: 'jig squared',
  'bar-grip': 'bar gripped',
  'square-banjo': 'banjo squared',
  'lock-post': 'post locked',
  gap: 'gap checked',
  'bar-slide': 'bar slides',
  'seat-chuck': 'chuck home',
  cutter: 'cutter tight',
  'banjo-back': 'banjo back',
  shake: 'nothing gives',
  'pick-up': 'groove found',
};

export const heldWord = ({ key, sentence }: Pick<Step, 'key' | 'sentence'>): string => HELD[key] ?? sentence;

export const setUpWords = {
  pass: 'Pass',
  fail: 'Fail',
  skip: 'Skip',
  undo: 'Undo',
  reading: 'Reading',
  somethingMoved: 'Something moved',
  moved: 'Moved',
  verdict: 'Verdict',
  why: 'Why?',
  noWhy: 'Nobody wrote down why.',
  against: (guards: readonly string[]) => `Against ${guards.join(', ')}.`,
  whatMoved: 'What moved?',
  stopFirst: 'Stop. Off at the wall.',
  nothingMoved: 'Nothing did. Back',
  allDone: (count: number) => `${count} steps done`,
  failed: 'Failed.',
  putRight: 'Put it right, then Pass.',
  leaveIt: 'Leave it',
  lostIts: (what: string) => `Lost its setting: ${what.toLowerCase()}`,
  pause: 'Pause',
  paused: 'Paused',
  resume: 'Go on',
  putAway: 'Back to the bench',
  giveUp: 'Give up this set-up',
  allSteps: 'All steps',
  back: 'Back',
  holdDot: 'under a tooth: a hold point. Without it, no cut.',
  dontSwitchOn: 'Don’t switch on.',
  notYet: (count: number) =>
    count === 1 ? 'One hold point is not passed:' : `${count} hold points are not passed:`,
  readyTitle: 'Set. Nothing more to check.',
  ready: 'Work wound clear of the cutter. Slowest speed first, out of its line.',
  readyHands: 'One hand on the crank, one on the jig body, never past the chuck.',
  toTheCut: 'To the cut',
  noSuchRun: 'There is no such set-up in this log.',
  contested:
    'Two devices wrote this set-up without having seen each other. The setting is not known: check again.',
  readOnly: 'A newer version of the app wrote this set-up. It can be looked at here, not changed.',
  timeline: 'How it went',
  closedRun: 'This set-up is closed.',
  stillSet: (clock: string, what: string, more: number) =>
    more > 0 ? `Set since ${clock}: ${what}, and ${more} more` : `Set since ${clock}: ${what}`,
  nothingStillSet: 'Nothing holds from the set-up before.',
  usual: (median: string, low: string, high: string) =>
    low === high ? `usual ${median}` : `usual ${median}, ${low} to ${high}`,
  photo: 'Photo',
  photoOf: 'The set-up',
  setSince: (clock: string) => `set since ${clock}`,
  stepOf: (at: number, of: number, what: string) => `Step ${at} of ${of}: ${what}`,
} as const;

export const wakingWord: Readonly<Record<Waking, string>> = {
  on: 'The screen stays on.',
  off: 'The screen may sleep; touch it now and then.',
  refused: 'The phone would not keep its screen on (low battery?).',
  absent: 'This browser cannot keep the screen on.',
};

/** What the strip says to a screen reader. */
export const stripWords = (counts: ReadonlyMap<StepStatus, number>, now: string | null): string => {
  const said = [...counts].map(([status, count]) => `${count} ${statusWord[status]}`).join(', ');
  return now ? `${said}. Now: ${now}` : `${said}. Every step is settled.`;
};

/** One event of a set-up in words, for looking back. */
export const happeningWords = (
  event: SetUpEvent | ForeignEvent,
  sentenceOf: (key: string) => string,
): string => {
  if (!isKnown(event)) return `Something a newer version wrote (${event.kind}).`;
  switch (event.kind) {
    case 'started':
      return event.inherited.length > 0
        ? `Started; ${event.inherited.length} settings still held.`
        : 'Started.';
    case 'ticked':
      return `${verdictWord[event.verdict]}: ${event.steps.map(sentenceOf).join(' ')}`;
    case 'read':
      return `Read: ${readingSaid(event.reading)}.`;
    case 'moved':
      return `Moved: ${movementWord[event.what].toLowerCase()}.`;
    case 'paused':
      return 'Paused.';
    case 'resumed':
      return 'Gone on.';
    case 'undone':
      return 'Undo.';
    case 'closed':
      return event.how === 'cut' ? 'Cut.' : 'Given up.';
  }
};

const verdictWord: Readonly<Record<Verdict, string>> = { pass: 'Passed', fail: 'Failed', skip: 'Skipped' };

const readingSaid = (reading: Reading): string => {
  switch (reading.kind) {
    case 'gap':
      return `${reading.gap.text} over ${reading.over.text}`;
    case 'turns':
      return `${reading.turns} turns to the stop`;
    case 'sweep':
      return `${reading.difference.text} on an arm of ${reading.radius.text}`;
  }
};
