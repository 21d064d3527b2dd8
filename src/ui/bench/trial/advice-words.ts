import type { Confidence, Disagreement } from '../../../domain/joint/advice.ts';
import type { Cause, RemedyKey } from '../../../domain/joint/advice-table.ts';
import type { Amount, Basis } from '../../../domain/joint/remedies.ts';
import type { Evidence, Field } from '../../../domain/joint/trial-evidence.ts';
import { writeLength } from '../../../domain/units/write-quantity.ts';
import { dialTargetWords, stepWords } from '../../words/dial.ts';
import { goingOnWord, seatedWord, threadWord } from './words.ts';

type Unit = 'in' | 'mm';

export const causeWord: Readonly<Record<Cause, string>> = {
  'flanks-tight': 'The flanks bind: too little clearance.',
  'flanks-loose': 'The flanks are slack: too much clearance.',
  'crests-rub': 'The crests rub; the flanks are free.',
  'fuzz-or-chips': 'Fuzz or chips in the threads.',
  'finish-film': 'The finish has filled the clearance.',
  'tapered-bore': 'The bore narrows toward the floor.',
  'tapered-tenon': 'The tenon thickens toward its shoulder.',
  'gives-under-load': 'Something gives under the cut.',
  creep: 'Jig or post crept during the cut.',
  'lean-mismatch': 'The two parts were cut at different leans.',
  bottoming: 'The tenon meets the floor.',
  'shallow-relief': 'The relief does not reach past the root.',
  'last-thread-run-out': 'The last part thread holds it off.',
  'dent-or-burr': 'A dent or a burr.',
  eccentric: 'The work sat off centre when it was cut.',
  'spindle-float': 'The jig’s spindle floats to and fro.',
  'rechuck-tilt': 'The chuck was not home when it was cut or faced.',
  'shoulder-not-flat': 'The shoulder is not flat.',
  'shoulder-struck': 'The cutter struck the shoulder.',
  'oval-wood': 'The wood has gone oval.',
  'wall-squeezed': 'The jaws squeeze a thin wall.',
  slipped: 'It slipped between two passes.',
  'low-engagement': 'The threads hardly reach into each other.',
  'no-lead-in': 'The start has no lead-in.',
  'cross-started': 'It was started crossed.',
  'weak-wood': 'This wood hardly holds the thread.',
  'hot-cut': 'The cutter rubbed hot.',
};

export const confidenceWord: Readonly<Record<Confidence, string>> = {
  likely: 'likely',
  possible: 'possible',
  slight: 'a slight chance',
};

/** Before the first cause, by how much speaks for it. */
export const firstCauseWord: Readonly<Record<Confidence, string>> = {
  likely: 'Most likely',
  possible: 'Possibly',
  slight: 'Perhaps, little speaks for it',
};

const measuredWord: Readonly<Partial<Record<Evidence, string>>> = {
  'marks-on-crest': 'Marks on the crests',
  'marks-on-flank': 'Marks on the flanks',
  'marks-at-start': 'Marks at the start',
  'marks-at-by-shoulder': 'Marks by the shoulder',
  'marks-at-all-along': 'Marks all along',
  'sizes-flanks-tight': 'By the sizes, tight flanks',
  'sizes-flanks-right': 'By the sizes, the right clearance',
  'sizes-flanks-loose': 'By the sizes, slack flanks',
  'sizes-crests-cross': 'By the sizes, the crests touch',
  'sizes-crests-clear': 'By the sizes, clear crests',
  'sizes-engagement-low': 'By the sizes, a shallow thread',
  'play-none': 'Little or no end play',
  'play-right': 'End play as it should be',
  'play-large': 'Much end play',
  'bore-narrows': 'The bore measured narrower inside',
  'bore-opens': 'The bore measured wider inside',
  'bore-parallel': 'The bore measured parallel',
  'bore-oval': 'The bore measured oval',
  'bore-round': 'The bore measured round',
  'tenon-thick-at-shoulder': 'The tenon measured thicker by the shoulder',
  'tenon-thin-at-shoulder': 'The tenon measured thinner by the shoulder',
  'tenon-parallel': 'The tenon measured parallel',
  'floor-near': 'The floor is near',
  'floor-clear': 'The floor is clear',
  'wall-thin': 'A thin wall',
  'wall-stout': 'A stout wall',
  'stops-early': 'It stops in the first turn',
  'stops-midway': 'It stops midway',
  'stops-late': 'It stops near home',
  'deepening-gained-nothing': 'Deepening gained nothing',
  'after-finish': 'It went on before the finish',
};

export const evidenceWord = (evidence: Evidence): string =>
  measuredWord[evidence] ??
  goingOnWord[evidence as keyof typeof goingOnWord] ??
  seatedWord[evidence as keyof typeof seatedWord] ??
  threadWord[evidence as keyof typeof threadWord];

export const fieldWord: Readonly<Record<Field, string>> = {
  marks: 'Pencil the crests, twist it on and off: is it the crests or the flanks that shine?',
  seated: 'Does it come down flush?',
  'end-play': 'Measure the end play, half a turn off the seat.',
  'turns-on': 'Count the turns it goes on.',
  sizes: 'Measure bore and tenon.',
  'bore-ends': 'Measure the bore at the mouth and by the relief.',
  'bore-across': 'Measure the bore along and across the rings.',
  'tenon-ends': 'Measure the tenon at its end and by the shoulder.',
  'bottom-gap': 'Measure recess depth and tenon length.',
  wall: 'Measure the outside: how thick is the wall?',
};

export const disagreementWord: Readonly<Record<Disagreement, string>> = {
  'tight-but-sizes-open':
    'It feels tight, yet by the sizes it should run free. One of the two is wrong: measure again before you cut.',
  'loose-but-sizes-tight':
    'It feels slack, yet by the sizes it should bind. Measure again before you trust a number.',
  'tight-but-play-large':
    'It drags, yet it has end play to spare: the flanks do not bind. Look to crests, fuzz, a dent.',
  'loose-but-no-play': 'It feels slack, yet no end play was measured. Measure it again, off the seat.',
  'sizes-and-play-differ': 'The end play and the sizes do not tell the same fit. Measure again.',
};

const amountText = ({ by, dial }: Amount, unit: Unit): string =>
  dial ? `${stepWords(by, unit)}: ${dialTargetWords(dial)}` : stepWords(by, unit);

/** What to do, as one says it across the bench; an amount, where there is one, on the dial too. */
export const remedyWords = (remedy: RemedyKey, amount: Amount | undefined, unit: Unit): string => {
  const by = amount ? amountText(amount, unit) : '';
  switch (remedy) {
    case 'deepen':
      return `Deepen the ${amount?.part ?? 'tenon'} ${by}.`;
    case 'ease-crests':
      return `Ease the crests of the ${amount?.part ?? 'tenon'} ${by}.`;
    case 'clear-floor':
      return `Shorten the tenon ${amount ? writeLength(amount.by, unit) : 'a little'}.`;
    case 'rub-flanks':
      return `Rub the flanks of the tenon, ${amount ? writeLength(amount.by, 'mm') : 'a little'}.`;
    case 'new-tenon':
      return amount ? `Turn a new tenon: ${writeLength(amount.by, unit)}.` : 'Turn a new tenon.';
    default:
      return PLAIN_REMEDY[remedy];
  }
};

const PLAIN_REMEDY: Readonly<
  Record<Exclude<RemedyKey, 'deepen' | 'ease-crests' | 'clear-floor' | 'rub-flanks' | 'new-tenon'>, string>
> = {
  'measure-again': 'Measure bore and tenon again.',
  'brush-out': 'Brush out both threads.',
  'find-dent': 'Find the dent: turn to where it is tight, look there.',
  'start-backwards': 'Turn it backwards till it drops, then on.',
  'on-and-off-by-hand': 'On and off by hand, ten times. No force.',
  wax: 'Wax both threads. Try again.',
  'slacken-jaws': 'Slacken the jaws. Try again.',
  'line-up-grain': 'Try it with the grain of both lined up.',
  'chamfer-start': 'Chamfer the first thread.',
  'same-setting-again': 'The same setting again, one more pass.',
  'check-parallel': 'Measure bore and tenon at both ends.',
  'check-give': 'One finger at the chuck: push, pull. Does it give?',
  'check-creep': 'Lock up again. Has anything crept?',
  'check-chuck-seat': 'Wipe nose and shoulder. Chuck home. Look again.',
  'check-spindle-float': 'Push and pull the jig’s spindle. Does it float?',
  'check-lean': 'Compare the gap at the board in both set-ups.',
  'trim-last-thread': 'Trim the last part thread by the shoulder.',
  'deepen-relief': 'Deepen the relief, past the root.',
  'face-shoulder': 'Rub or face the shoulder flat.',
  'pick-up-first': 'Pick the groove up before you cut again.',
  'harden-and-recut': 'Harden the thread, let it cure, cut again.',
  'slower-or-sharper': 'Sharpen the cutter. Crank slowly, without a stop.',
};

/** Why, or what it does; empty where the act says it all. */
export const remedyWhy: Readonly<Partial<Record<RemedyKey, string>>> = {
  'on-and-off-by-hand': 'It burnishes fuzz. Stop if it gets tighter.',
  'same-setting-again': 'Wood springs back from the cutter.',
  deepen: 'Either part opens the flanks alike; the recess is off the jig.',
  'ease-crests': 'Fine abrasive on the crests alone. The flanks stay as they are.',
  'slacken-jaws': 'Four jaws make a thin wall four-cornered.',
  'line-up-grain': 'Oval parts go together every half turn.',
  'check-parallel': 'Lean alone makes no taper.',
  'check-lean': 'Lean makes no taper. It eats end play where the two parts differ.',
  'check-chuck-seat': 'A chip behind the chuck tilts a lid. A steady lean of the jig does not.',
  'harden-and-recut': 'CA fumes: open a window. Fully cured before you cut.',
  'new-tenon': 'What is off cannot be put back. The recess stays good.',
  'rub-flanks': 'A finish on every flank eats eight times its own thickness.',
};

export const basisWord: Readonly<Record<Basis, string>> = {
  play: 'CalculatedBox from the end play you measured.',
  sizes: 'CalculatedBox from the measured sizes.',
  'two-tries': 'CalculatedBox from how far it went before and after.',
  feel: 'No number to reckon from: the least step a dial and a hand can do.',
};

export const adviceWords = {
  nothingPoints: 'What was said points nowhere in particular.',
  joint: 'The sizes of the joint',
  trial: 'This trial',
  why: 'Why, and what else it could be',
  speaksFor: 'For',
  speaksAgainst: 'Against',
  move: (at: number, of: number) => (of > 1 ? `Move ${at} of ${of}` : 'Do this'),
  cut: 'To the cut',
  next: 'Next move',
  previous: 'The move before',
  noMore: 'Nothing further up the sleeve. Try it again, and say what has changed.',
  changes: 'What it will change',
  now: 'Now',
  after: 'After',
  endPlay: (before: string, after: string, felt: boolean) =>
    `${felt ? 'End play' : 'By the sizes, end play'} ${before} becomes ${after}.`,
  binds: 'none: it binds',
  tellApart: 'What would tell',
  favours: (evidence: string, cause: string) => `${evidence}: then ${lower(cause)}`,
  assumes: 'Geometry alone: sound tools, wood that does not give.',
  unknownJoint: 'The sizes of this joint are not all known, so this is by the signs alone.',
  sectionSays: (when: string, play: string) => `Section of the joint, ${when}: end play ${play}.`,
} as const;

const lower = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);
