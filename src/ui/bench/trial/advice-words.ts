import type { Cause } from '../../../domain/diagnosis/causes.ts';
import type { ChanceWord, Confidence, Evidence } from '../../../domain/diagnosis/diagnosis.ts';
import type { Why } from '../../../domain/diagnosis/limits.ts';
import type { Word } from '../../../domain/diagnosis/words-chance.ts';
import { movementWord } from '../../set-up/words.ts';
import { fieldWord } from './question-words.ts';
import { goingOnWord, seatedWord, threadWord } from './words.ts';

export const causeWord: Readonly<Record<Cause, string>> = {
  'nothing-wrong': 'Nothing is wrong with it',
  tight: 'The flanks bind: too tight',
  loose: 'The flanks are loose: too much clearance',
  spring: 'Something gave way under the cut',
  crests: 'The crests rub; the flanks are free',
  'tapered-bore': 'The bore narrows toward the floor',
  'tapered-tenon': 'The tenon thickens toward its shoulder',
  lean: 'The two parts were cut at different leans',
  creep: 'Jig or post crept during the cut',
  slip: 'It slipped between two passes',
  tilt: 'The chuck was not seated',
  eccentric: 'The work was off centre when it was cut',
  float: 'The jig’s spindle floats',
  oval: 'The wood has gone oval',
  squeezed: 'The jaws squeeze a thin wall',
  bottoming: 'The tenon meets the floor',
  relief: 'The relief groove is too shallow',
  'last-thread': 'The last part thread holds it off',
  shoulder: 'The shoulder is not flat',
  struck: 'The cutter struck the shoulder',
  fuzz: 'Fuzz or chips in the thread',
  dent: 'A dent or a burr',
  film: 'The finish has filled the clearance',
  'no-lead-in': 'The start has no chamfer',
  'cross-start': 'It was started cross-threaded',
  'weak-wood': 'The wood is too soft for this thread',
  'hot-cutter': 'The cutter rubbed hot',
  'low-engagement': 'The threads hardly overlap',
};

/** Where the cause acts, for the label in the drawing. */
export const placeWord = {
  flanks: 'flanks',
  crests: 'crests',
  floor: 'floor',
  shoulder: 'shoulder',
  start: 'start',
  spot: 'one spot',
  whole: 'whole round',
} as const;

export const confidenceWord: Readonly<Record<Confidence, string>> = {
  likely: 'Likely cause',
  possibly: 'Possibly',
  'hard-to-say': 'Hard to say',
};

export const chanceWord: Readonly<Record<ChanceWord, string>> = {
  'should-do-it': 'should do it',
  'may-do-it': 'may do it',
  'step-towards': 'a step towards it',
};

const saidWord = { ...goingOnWord, ...seatedWord, ...threadWord } satisfies Record<Word, string>;

/** What speaks for a cause; `sentenceOf` gives the sentence of a step. */
export const evidenceWord = (evidence: Evidence, sentenceOf: (step: string) => string): string => {
  switch (evidence.kind) {
    case 'said':
      return saidWord[evidence.word].toLowerCase();
    case 'not-said':
      return `not: ${saidWord[evidence.word].toLowerCase()}`;
    case 'marks':
      return 'where it is marked';
    case 'reading':
      return `${fieldWord[evidence.field].toLowerCase()} as measured`;
    case 'missed':
      return `missed: “${sentenceOf(evidence.step)}”`;
    case 'moved':
      return `moved: ${(movementWord as Readonly<Record<string, string>>)[evidence.what]?.toLowerCase() ?? evidence.what}`;
  }
};

/** "about 6 in 10" */
export const tenthsWord = (tenths: number): string =>
  tenths < 1 ? 'under 1 in 10' : `about ${Math.min(9, tenths)} in 10`;

/** What bars a move, where a person would want to know. */
const barredWord: Readonly<Partial<Record<Why, string>>> = {
  finished: 'a finish is on, and a cutter would tear through it',
  'no-setting': 'the setting is lost',
  'not-on-jig': 'that part is off the jig',
  'crest-by-sizes': 'the crest would be left too thin',
  'crest-likely-thin': 'the crest would likely be left too thin',
  'crest-seen-thin': 'the crest you saw is too thin for it',
  'crest-unsure': 'the crest may be too thin: look at it first',
  'crest-for-picking-up': 'the crest is too thin to pick the thread up again',
  'play-not-felt': 'the end play was not felt',
  'too-loose-after': 'it would be loose afterwards',
  'play-enough': 'there is play enough already',
  'likely-looser': 'it would likely be loose afterwards',
  'in-band': 'the fit may well be right as it is',
  'felt-in-band': 'the play you felt is right',
  'crest-not-seen': 'the crest was not looked at',
  floor: 'the tenon would meet the floor',
};

export const adviceWords = {
  title: 'Advice',
  change: 'Change answers',
  working: 'Working it out',
  failed: 'The advice could not be worked out. What you entered is saved; open this page again.',
  joint: 'This joint',
  disagree: 'Sizes and feel disagree: measure',
  disagreeWhy: 'No joint of these sizes would feel like this. One of the readings is likely wrong.',
  measure: 'Measure bore and tenon',
  toPlan: 'To the plan',
  nextMove: 'Next move',
  moveOf: (at: number, of: number) => `${at} of ${of}`,
  dialTo: 'Dial to',
  setUpFirst: 'Set up and pick up the thread first',
  why: (cause: string, evidence: readonly string[]) =>
    `Why: ${cause.charAt(0).toLowerCase()}${cause.slice(1)}${evidence.length > 0 ? ` (${evidence.join('; ')})` : ''}.`,
  thenWords: (move: string) => `Then: ${move.charAt(0).toLowerCase()}${move.slice(1)}.`,
  settle: 'To settle it, check',
  triedAgain: 'Tried again',
  tryNow: 'Try the lid again',
  next: 'Next move',
  causes: 'Causes',
  causesTitle: 'Causes',
  back: 'Back',
  speaksFor: 'For',
  speaksAgainst: 'Against',
  doneSince: (moves: string) => `Done: ${moves}.`,
  undo: 'Undo',
  nothing: 'Nothing to be done with this pair',
  nothingKindly:
    'No move left would make it better without spoiling a part. That happens to every turner; most of the wood can still be used.',
  barred: (move: string, why: string) => `${move}: ${barredWord[why as Why] ?? 'it could spoil the part'}.`,
  beyond: {
    slip: 'A ridge thinned by a slip stays thin: no cut puts wood back.',
    oval: 'Let both parts settle for some days before any cut. Lining up the grain helps only at the seat.',
  } as Readonly<Partial<Record<Cause, string>>>,
  savesRecess: 'The recess: keep it, and turn a tenon for it on a new base.',
  savesWood:
    'The wood: bore out or turn off the thread and set in a ring of another wood, or make a push-fit lid of it.',
  noMore: 'No more suggestions.',
  section: (cause: string, place: string | null) =>
    `The joint in section. ${cause}${place ? `: ${place}` : ''}.`,
} as const;
