import type { MoveKind, MoveMade } from '../../../domain/diagnosis/view.ts';
import type { Millimetres } from '../../../domain/units/brands.ts';
import { writeLength } from '../../../domain/units/write-quantity.ts';
import { stepWords } from '../../words/dial.ts';

type Unit = 'in' | 'mm';
type Of = Omit<MoveMade, 'kind'>;

interface MoveWords {
  /** What to do, without its amount. */
  readonly what: (part: string) => string;
  /** What was done. */
  readonly done: (part: string) => string;
  /** What the hand notices if it worked. */
  readonly feels: string;
  /** Said where a hand comes near wood, a tool or glue. */
  readonly caution: string | null;
}

const AT_REST = 'Lathe stopped and unplugged, hands clear of the cutter.';
const TURNING = 'Lid off. Face shield on, rest close, jig swung clear.';

export const moveWord: Readonly<Record<MoveKind, MoveWords>> = {
  'leave-it': {
    what: () => 'Leave it as it is',
    done: () => 'left as it is',
    feels: 'Play of this size is right: wood needs room.',
    caution: null,
  },
  'start-backwards': {
    what: () => 'Turn it backwards until it drops, then start',
    done: () => 'started backwards',
    feels: 'A small drop, then it starts without force.',
    caution: AT_REST,
  },
  'brush-out': {
    what: () => 'Brush out both threads',
    done: () => 'brushed out',
    feels: 'It turns without grit.',
    caution: 'Lathe stopped. A stiff brush, no finger and no rag.',
  },
  'on-and-off-by-hand': {
    what: () => 'Screw it on and off ten times by hand',
    done: () => 'screwed on and off',
    feels: 'Easier each time. Stop where it sticks.',
    caution: AT_REST,
  },
  wax: {
    what: () => 'Wax both threads lightly',
    done: () => 'waxed',
    feels: 'It runs smoothly with the same play.',
    caution: 'Lathe stopped. Wax on a brush, no cloth.',
  },
  'slacken-jaws': {
    what: () => 'Slacken the jaws, then try it',
    done: () => 'jaws slackened',
    feels: 'The four tight places are gone. The setting is lost.',
    caution: AT_REST,
  },
  'find-dent': {
    what: () => 'Find the dent and pare it off',
    done: () => 'dent pared off',
    feels: 'It no longer catches at that place.',
    caution: 'Lathe stopped. Cut away from the hand that holds.',
  },
  'chamfer-start': {
    what: () => 'Chamfer the start of both threads',
    done: () => 'start chamfered',
    feels: 'It finds its start by itself.',
    caution: TURNING,
  },
  'trim-last-thread': {
    what: () => 'Trim the last part thread by the shoulder',
    done: () => 'last part thread trimmed',
    feels: 'It goes on the last half turn.',
    caution: TURNING,
  },
  'same-setting-again': {
    what: (part) => `Cut the ${part} again at the same setting`,
    done: (part) => `${part} cut again at the same setting`,
    feels: 'A little easier: what gave way before is cut now.',
    caution: 'Lid off before the cut.',
  },
  deepen: {
    what: (part) => `Deepen the ${part}`,
    done: (part) => `${part} deepened`,
    feels: 'It goes further, or more freely, with a little end play.',
    caution: 'Lid off before the cut.',
  },
  'clear-floor': {
    what: () => 'Shorten the tenon’s end',
    done: () => 'end of the tenon shortened',
    feels: 'It goes home without a hard stop.',
    caution: TURNING,
  },
  'deepen-relief': {
    what: () => 'Deepen the relief groove',
    done: () => 'relief groove deepened',
    feels: 'It goes home without a hard stop.',
    caution: TURNING,
  },
  'face-shoulder': {
    what: () => 'Face the shoulder lightly',
    done: () => 'shoulder faced',
    feels: 'It sits down all round.',
    caution: TURNING,
  },
  'ease-crests': {
    what: (part) => `Ease the crests of the ${part}`,
    done: (part) => `crests of the ${part} eased`,
    feels: 'No shine on the crests; the play stays as it is.',
    caution: `${TURNING} With a tool, not with abrasive.`,
  },
  'true-bore': {
    what: () => 'True the bore’s crests parallel',
    done: () => 'bore trued',
    feels: 'It no longer tightens toward the end.',
    caution: TURNING,
  },
  'true-tenon': {
    what: () => 'True the tenon’s crests parallel',
    done: () => 'tenon trued',
    feels: 'It no longer tightens toward the end.',
    caution: TURNING,
  },
  'rub-flanks': {
    what: (part) => `Rub the film off the flanks of the ${part}`,
    done: (part) => `flanks of the ${part} rubbed`,
    feels: 'Easier after each stroke or two: try often.',
    caution: 'Lathe stopped. Fold the abrasive over a splinter, not over a finger.',
  },
  'harden-and-recut': {
    what: (part) => `Harden the thread of the ${part}, then cut it again`,
    done: (part) => `thread of the ${part} hardened and cut again`,
    feels: 'Clean crests, and the same play.',
    caution:
      'Thin CA glue: open the window, glasses on, no skin near it, let it set fully before the lathe runs.',
  },
  'new-tenon': {
    what: () => 'Turn a new tenon',
    done: () => 'new tenon turned',
    feels: 'It is measured and cut like the first.',
    caution: TURNING,
  },
};

const partWord = ({ part }: Of): string => part ?? 'tenon';

/** The amount alone: "2 thou", or the size of a new tenon. */
export const amountWords = ({ by, size }: Of, unit: Unit): string | null =>
  by !== null ? stepWords(by, unit) : size !== null ? writeLength(size, unit) : null;

/** A depth to cut a new tenon to. */
export const depthWords = (depth: Millimetres, unit: Unit): string =>
  `Cut it ${writeLength(depth, unit)} deep.`;

export const whatWords = (move: MoveMade): string => moveWord[move.kind].what(partWord(move));

/** With its amount, in one line: "Deepen the tenon 2 thou". */
export const moveLine = (move: MoveMade, unit: Unit): string =>
  [whatWords(move), amountWords(move, unit)].filter(Boolean).join(move.size === null ? ' ' : ', ');

export const doneLine = (moves: readonly MoveMade[], unit: Unit): string =>
  moves
    .map((move) =>
      [moveWord[move.kind].done(partWord(move)), amountWords(move, unit)].filter(Boolean).join(' '),
    )
    .join('; ');

/** The act under the thumb: the move itself. */
export const actWords = (move: MoveMade, unit: Unit): string => {
  switch (move.kind) {
    case 'deepen':
      return `Cut ${amountWords(move, unit)} deeper`;
    case 'same-setting-again':
      return 'Cut again at this setting';
    case 'harden-and-recut':
      return 'Hardened: cut it again';
    case 'new-tenon':
      return 'Turn a new tenon';
    case 'leave-it':
      return 'Leave it: it fits';
    default:
      return `Done: ${doneLine([move], unit)}`;
  }
};
