import { type Feel, faultsOf, feelOf, type Hand } from './feel.ts';
import { copyOf, idealFit, type Piece, type Workpiece } from './workpiece.ts';

/** What can truly be behind a lid that is not right, by this workshop's own names. */
export const TRUE_CAUSES = [
  'too-tight',
  'too-loose',
  'gave-under-load',
  'crests-rub',
  'tapered-bore',
  'tapered-tenon',
  'lean',
  'creep',
  'slipped',
  'tilted',
  'off-centre',
  'spindle-float',
  'oval',
  'pinched',
  'bottoms',
  'relief-short',
  'last-thread',
  'shoulder-hump',
  'shoulder-struck',
  'fuzz-or-chips',
  'dent',
  'film',
  'no-lead-in',
  'cross-started',
  'weak-wood',
  'hot-cutter',
  'low-engagement',
] as const;
export type TrueCause = (typeof TRUE_CAUSES)[number];

/** Both pieces with something set to what it would have been, had nothing gone wrong. */
const both =
  (normal: (piece: Piece) => void) =>
  (work: Workpiece): void => {
    normal(work.recess);
    normal(work.tenon);
  };

const sizesAsMeant = (work: Workpiece): void => {
  Object.assign(work.recess, work.meant.recess, { tip: work.meant.tip });
  Object.assign(work.tenon, work.meant.tenon, { tip: work.meant.tip });
};

const withoutIt: Readonly<Record<Exclude<TrueCause, 'too-tight' | 'too-loose'>, (work: Workpiece) => void>> =
  {
    'gave-under-load': both((piece) => {
      piece.spring = 0;
    }),
    'crests-rub': both((piece) => {
      piece.raised = 0;
    }),
    'tapered-bore': (work) => {
      work.recess.taper = 0;
    },
    'tapered-tenon': (work) => {
      work.tenon.taper = 0;
    },
    lean: both((piece) => {
      piece.lean = 0;
    }),
    creep: both((piece) => {
      piece.creep = 0;
    }),
    slipped: both((piece) => {
      piece.slip = 0;
    }),
    tilted: both((piece) => {
      piece.tilt = 0;
    }),
    'off-centre': both((piece) => {
      piece.offCentre = 0;
    }),
    'spindle-float': both((piece) => {
      piece.wobble = 0;
    }),
    oval: both((piece) => {
      piece.oval.amplitude = 0;
    }),
    pinched: both(({ pinched }) => {
      pinched.two.amplitude = 0;
      pinched.three.amplitude = 0;
      pinched.four.amplitude = 0;
    }),
    bottoms: (work) => {
      work.floor = Math.max(work.floor, 0.5);
    },
    'relief-short': (work) => {
      work.reliefShort = 0;
    },
    'last-thread': (work) => {
      work.lastThread = 0;
    },
    'shoulder-hump': (work) => {
      work.hump = 0;
    },
    'shoulder-struck': (work) => {
      work.struck = 0;
    },
    'fuzz-or-chips': (work) => {
      work.recess.fuzz = 0;
      work.tenon.fuzz = 0;
      work.chips = 0;
    },
    dent: (work) => {
      work.dent = 0;
    },
    film: both((piece) => {
      piece.film = 0;
    }),
    'no-lead-in': (work) => {
      work.noLeadIn = 0;
    },
    'cross-started': (work) => {
      work.crossed = 0;
    },
    'weak-wood': both((piece) => {
      piece.weak = 0;
    }),
    'hot-cutter': both((piece) => {
      piece.fuzz *= piece.burnt ? 0.5 : 1;
    }),
    // Crests as high as a pair usually has them: the flanks stay where they are.
    'low-engagement': (work) => {
      const lacking = (0.62 - idealFit(work).percentOf75 / 100) * 0.75 * 0.866 * work.pitch;
      if (lacking <= 0) return;
      work.tenon.diameter += lacking;
      work.tenon.depth += lacking / 2;
      work.recess.diameter -= lacking;
      work.recess.depth += lacking / 2;
    },
  };

/** A cause counts as true when, without it, the faults are less by this share of them. */
const MATTERS = 0.2;
/** Drag that is on the crests by this share is rubbing crests, whatever put them there. */
const MOSTLY_CRESTS = 0.5;

/**
 * True causes of what is felt, weightiest first: each is taken away by itself and the lid is felt again. Sizes count as "too tight" or
 * "too loose" by the way they are off; when they make the crests touch and not the flanks, "crests rub" is as true a name for it.
 */
export const trueCauses = (work: Workpiece, hand: Hand): readonly TrueCause[] => {
  const felt = feelOf(work, hand);
  const faults = faultsOf(felt);
  if (faults === 0) return [];
  const gainWithout = (change: (work: Workpiece) => void): number => {
    const other = copyOf(work);
    change(other);
    return faults - faultsOf(feelOf(other, hand));
  };
  const gains = (Object.keys(withoutIt) as (keyof typeof withoutIt)[]).map(
    (cause): readonly [TrueCause, number] => [cause, gainWithout(withoutIt[cause])],
  );
  return [...gains, ...bySizes(work, felt, gainWithout(sizesAsMeant))]
    .filter(([, gain]) => gain >= MATTERS * faults)
    .sort(([, a], [, b]) => b - a)
    .map(([cause]) => cause)
    .filter((cause, i, all) => all.indexOf(cause) === i);
};

const bySizes = (work: Workpiece, felt: Feel, gain: number): readonly (readonly [TrueCause, number])[] => {
  const asMeant = copyOf(work);
  sizesAsMeant(asMeant);
  const name = idealFit(work).clearance < idealFit(asMeant).clearance ? 'too-tight' : 'too-loose';
  const crests = felt.onCrests >= MOSTLY_CRESTS && name === 'too-tight';
  return [
    [name, gain],
    ...(felt.onCrests >= MOSTLY_CRESTS ? [['crests-rub', gain - (crests ? 1e-6 : 0)] as const] : []),
  ];
};
