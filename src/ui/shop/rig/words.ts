import type { Rig } from '../../../domain/box/records.ts';

/** The questions of a rig, in the order in which they are asked. */
export const RIG_QUESTIONS = [
  'pitch',
  'hand',
  'cutterRadius',
  'tipFlat',
  'teeth',
  'aheadOfTooth',
  'grip',
  'travelPerTurn',
  'marksPerTurn',
  'slideTravel',
  'recessDial',
  'jigSide',
  'banjos',
  'chucks',
  'name',
] as const satisfies readonly (keyof Rig)[];
export type RigQuestion = (typeof RIG_QUESTIONS)[number];

interface QuestionWords {
  /** In the list of answers. */
  readonly short: string;
  readonly ask: string;
  readonly why: string;
  /** Beside an input. */
  readonly hint?: string;
  /** What is done while the answer is not known. */
  readonly unknown?: string;
  /** Where something can hurt. */
  readonly care?: string;
}

/** `usual` figures are filled in by the caller in the user's unit. */
export const questionWords = (usual: {
  readonly cutterRadius: string;
  readonly tipFlat: string;
  readonly aheadOfTooth: string;
  readonly travelPerTurn: string;
}): Readonly<Record<RigQuestion, QuestionWords>> => ({
  pitch: {
    short: 'Pitch of the jig',
    ask: 'What pitch is the jig’s screw?',
    why: 'The thread in the wood is the screw’s own. A new box starts with it.',
    hint: '10 tpi, or 2.5 mm',
    unknown: 'Asked at each new box.',
  },
  hand: {
    short: 'Hand of the screw',
    ask: 'Is the jig’s screw right- or left-hand?',
    why: 'It says which way the cutter pulls as you crank in.',
    care: 'With a lid on, never run the lathe the way that unscrews it: in reverse for a right-hand thread.',
  },
  cutterRadius: {
    short: 'Cutter radius',
    ask: 'How far is the tooth’s tip from the spindle’s axis?',
    why: 'It decides how small a recess the cutter enters, and where the cross-slide stands.',
    hint: 'Half of what the tip sweeps',
    unknown: `CalculatedBox with ${usual.cutterRadius}, less for a small opening.`,
    care: 'Off at the wall before you measure. Never run it above the speed marked on it.',
  },
  tipFlat: {
    short: 'Tip flat',
    ask: 'How wide is the flat at the tooth’s tip?',
    why: 'A hair more or less of it is three and a half hairs of clearance. Hardly anyone knows theirs: a scrap pair tells.',
    unknown: `CalculatedBox with ${usual.tipFlat}.`,
  },
  teeth: {
    short: 'Teeth',
    ask: 'How many teeth has the cutter?',
    why: 'One tooth always cuts its own width. Several cut wider when one stands proud.',
    unknown: 'CalculatedBox with one.',
  },
  aheadOfTooth: {
    short: 'Ahead of the tooth',
    ask: 'How far does anything stick out ahead of the tooth?',
    why: 'From the middle of the tooth to the front of body or screw. It sets the width of the reliefs, so that nothing but the tooth touches wood.',
    unknown: `CalculatedBox with ${usual.aheadOfTooth}.`,
  },
  grip: {
    short: 'Held by',
    ask: 'What holds the cutter?',
    why: 'The set-up reminds you of what has to be tight.',
    unknown: 'The set-up speaks of both.',
    care: 'Never run in reverse with a screwed-on collet chuck: it comes off, cutter and all.',
  },
  travelPerTurn: {
    short: 'Travel for one turn',
    ask: 'How far does the cross-slide go in one turn of its dial?',
    why: 'Depths can then be told as turns and marks of the dial.',
    hint: '0.050 in for a screw of 20 to the inch',
    unknown: `Depths are told as lengths. A plan told in turns is reckoned with ${usual.travelPerTurn}.`,
  },
  marksPerTurn: {
    short: 'Marks on the dial',
    ask: 'How many marks go round the dial?',
    why: 'The target can then be a mark, to the nearest half.',
    unknown: 'The target is told in turns.',
  },
  slideTravel: {
    short: 'Slide travel',
    ask: 'How far does the cross-slide travel in all?',
    why: 'If it reaches from recess to tenon, the post can stay locked. The plan warns when it does not.',
    unknown: 'Taken to reach.',
  },
  recessDial: {
    short: 'Dial in the recess',
    ask: 'To go deeper in the recess, which way does the dial turn?',
    why: 'It tells which wall of the recess is cut. That sets the travel, and whether a lean of the jig doubles or cancels.',
    unknown: 'The travel between the pieces is left out.',
  },
  jigSide: {
    short: 'Jig stands',
    ask: 'Does the jig stand in front of the lathe’s axis, or behind?',
    why: 'It says on which side the cutter meets the work.',
    unknown: 'Left out.',
    care: 'Stand out of the cutter’s line, whichever side it is.',
  },
  banjos: {
    short: 'Banjos',
    ask: 'Have you one banjo or two?',
    why: 'With one, the tool-rest takes the jig’s place between the pieces and its setting is lost, unless both are turned first.',
    unknown: 'The jig is taken to be lifted out between the pieces.',
  },
  chucks: {
    short: 'Chucks for the jig',
    ask: 'How many of your chucks fit the jig?',
    why: 'With two, both pieces can be turned first and threaded in one set-up.',
    unknown: 'Both routes are offered.',
  },
  name: {
    short: 'Name',
    ask: 'What do you call this rig?',
    why: 'Told apart from another lathe or jig.',
  },
});

export const rigOptions = {
  hand: { right: 'Right-hand', left: 'Left-hand' },
  grip: { collet: 'A collet', 'draw-bar': 'A draw-bar' },
  recessDial: { same: 'Same way as for the tenon', other: 'The other way' },
  jigSide: { front: 'In front', behind: 'Behind' },
  banjos: { '1': 'One', '2': 'Two' },
} as const;

export const rigWords = {
  title: 'Rig',
  back: 'Shop',
  all: 'All answers',
  about: 'Told once, changed any time. What you don’t know yet, I reckon with a usual figure and say so.',
  known: (known: number, of: number) => `${known} of ${of} told`,
  next: (ask: string) => `Next: ${ask}`,
  unknown: 'don’t know yet',
  dontKnow: 'Don’t know yet',
  keep: 'Keep it',
  goOn: 'Next',
  progress: (at: number, of: number) => `Question ${at} of ${of}`,
  which: 'Which rig',
  another: 'Another rig',
  anotherName: (number: number) => `Rig ${number}`,
  noSuch: 'There is no such question.',
  scrapFrom: 'from a scrap pair',
  scrap: {
    title: 'Learn it from a scrap pair',
    how: 'Thread a scrap recess and tenon with this cutter, screw them together, and tell how far the lid moves to and fro without turning.',
    pitch: 'Pitch',
    recess: 'Bore of the recess',
    tenon: 'Diameter of the tenon',
    recessDepth: 'Depth cut, recess',
    tenonDepth: 'Depth cut, tenon',
    endPlay: 'End play',
    act: 'Reckon and keep it',
    learned: (flat: string, amount: string) => `Tip flat ${flat}, give or take ${amount}. Kept.`,
  },
} as const;
