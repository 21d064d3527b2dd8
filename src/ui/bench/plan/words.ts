import type { Assumption } from '../../../domain/box/assumed.ts';
import type { Plan } from '../../../domain/box/records.ts';
import type { PlanWarning } from '../../../domain/joint/plan-warnings.ts';
import { type Millimetres, mm, turns } from '../../../domain/units/brands.ts';
import { writeLength, writePercent, writeTurns } from '../../../domain/units/write-quantity.ts';
import { toldApart } from '../../words/told-apart.ts';

type Unit = 'in' | 'mm';

/** What a bare number is taken for. */
export const unitName: Readonly<Record<Unit, string>> = { in: 'inches', mm: 'millimetres' };

/** A number and its unit belong on one line. */
const unbroken = (written: string): string => written.replaceAll(' ', '\u00a0');

/** A size to turn or measure to. */
export const sizeWords = (length: number, unit: Unit): string => unbroken(writeLength(mm(length), unit));
/** A size a rule is enough for. */
export const roughWords = (length: number, unit: Unit): string =>
  unbroken(writeLength(mm(length), unit, unit === 'in' ? { places: 2 } : { places: 1 }));
/** From a tenth of an inch on nobody counts thou. */
const MANY_THOU = 2.54;
/** A small difference, in the step a hand thinks in: whole thou, or hundredths of a millimetre. */
export const amountWords = (length: number, unit: Unit): string =>
  unbroken(writeLength(mm(length), unit === 'in' && Math.abs(length) < MANY_THOU ? 'thou' : unit));

const pieceWord = { lid: 'lid', base: 'base' } as const;
const otherPiece = { lid: 'base', base: 'lid' } as const;

export const planWords = {
  bore: 'Bore to',
  depth: 'Depth to the floor',
  recessHead: (piece: Plan['recessIn']) => `Recess, in the ${pieceWord[piece]}`,
  tenonHead: (piece: Plan['recessIn']) => `Tenon, on the ${otherPiece[piece]}`,
  threadHead: 'Thread',
  blankHead: 'Blank and wall',
  slideHead: 'Cross-slide',
  recessDiameter: 'Diameter',
  floorDepth: 'Mouth to floor',
  floorRelief: 'Relief at the floor, out to',
  mouthChamfer: 'Chamfer at the mouth, out to',
  tenonDiameter: 'Diameter',
  tenonFromPlan: 'for the bore as planned; measure it first',
  tenonFromBore: 'for the bore as measured',
  allowance: (amount: string) => `recess + ${amount}`,
  tenonLength: 'Length from the shoulder',
  shoulderRelief: 'Relief at the shoulder, down to',
  endChamfer: 'Chamfer at the end, down to',
  pastRoot: (width: string, depth: string) => `${width} wide; ${depth} deep, just past the root`,
  toRoot: 'to the root of the thread',
  threadLength: 'Engaged length',
  threads: (count: number, pitch: string) => `${writeTurns(turns(count))} threads of ${pitch}`,
  threadDepth: 'Depth of cut, both pieces',
  passes: (list: string) => `from touch-off: ${list}`,
  pass: (depth: string, dial: string | null) => (dial ? `${depth} (dial ${dial})` : depth),
  passJoin: ', then ',
  dialTurns: (whole: number, marks: number | null, all: string) =>
    marks === null ? `${all} turns` : `${whole} turns + ${Number(marks.toFixed(1))} marks`,
  crank: 'Crank turns to the stop',
  crankOf: (recess: string, tenon: string) => `${recess} and ${tenon}`,
  crankNote: 'recess and tenon, about; the dry run counts them',
  clearance: 'Clearance',
  clearanceFrom: {
    wanted: 'as you wanted',
    usual: 'usual for this pitch',
    season: 'more than usual, for the season and a little lean',
  },
  endPlay: 'End play to expect',
  engagement: 'Engagement',
  engagementOf: (percent: number) => writePercent(percent),
  engagementBasis: 'of 3/4 of the sharp V’s height',
  season: 'The season may take',
  lean: 'Lean may take',
  leanOf: 'the most that a set-up may leave and pass',
  seasonOf: 'a house heated in winter, 3 points of moisture either way',
  blankCost: 'Joint and parting take',
  blankParts: (tenon: string, kerfs: string) => `tenon ${tenon}, two parting cuts ${kerfs}`,
  wall: 'Wall outside the relief',
  wallLeast: (least: string) => `at least ${least}`,
  outsideLeast: 'Outside, at least',
  outsideWhy: (least: string) => `leaves a wall of ${least} at the relief`,
  tenonPlace: 'Tenon at',
  recessPlace: 'Recess at',
  placeNote: 'work axis from cutter axis',
  travel: 'Travel between them',
  travelUnknown: 'not known: which way does the dial go in the recess?',
  warnings: 'Look out',
  toBore: 'Bored? Measure it',
  change: 'Change the plan',
  keep: 'Keep the plan',
  leave: 'Leave it as it was',
  noPlan: 'These figures cannot make a joint together:',
  toRig: 'To the rig',
  tellRig: 'Tell it',
  stoodIn: (count: number) =>
    count === 1 ? 'One usual figure stood in.' : `${count} usual figures stood in.`,
  seeThem: 'Which?',
  drawing: (recess: string, tenon: string) =>
    `Lid over base in section: recess ${recess}, tenon ${tenon}. Heights are only for show; the letters are those of the list.`,
  routeSays: {
    'recess-first': 'Turn and thread the recess, then turn the tenon to it.',
    'both-turned': 'Turn recess and tenon, both in their chucks; then thread both in one set-up.',
  },
} as const;

const figures: Readonly<Record<string, string>> = {
  pitch: 'Pitch',
  recess: 'Opening',
  outside: 'Outside',
  depth: 'Depth of cut',
  threads: 'Threads engaged',
  tipFlat: 'Tip flat',
  crestFlat: 'Crest flat',
  cutterRadius: 'Cutter radius',
  aheadOfTooth: 'Ahead of the tooth',
  travelPerTurn: 'Travel for one turn',
  marksPerTurn: 'Marks on the dial',
  slideTravel: 'Slide travel',
  insideMinusOutside: 'Caliper offset',
  wantedClearance: 'Clearance',
  tenon: 'Tenon',
  engagement: 'Engagement',
};

/** What a turner calls a figure of the joint. */
export const figureName = (field: string): string => figures[field] ?? 'A figure';

/** Why a warning was given, with what would help. */
export const warningWords = (warning: PlanWarning, unit: Unit): string => {
  const size = (length: number) => sizeWords(length, unit);
  const rough = (length: number) => roughWords(length, unit);
  const fine = (length: number) => unbroken(writeLength(mm(length), unit, { places: unit === 'in' ? 5 : 4 }));
  const apart = (value: number, limit: number, first = rough) => toldApart(value, limit, [first, size, fine]);
  switch (warning.code) {
    case 'wall-thin': {
      const [wall, least] = apart(warning.wall, warning.least);
      return `The wall is ${wall} at the relief; under ${least} it may split or squeeze in the jaws. ${rough(warning.outside)} outside would do.`;
    }
    case 'engagement-low': {
      const [percent, least] = toldApart(warning.percent, warning.least, [
        writePercent,
        (value) => writePercent(value, { places: 2 }),
      ]);
      return `Only ${percent} of the thread engages; under ${least} wood strips easily. Cut deeper, or ask for less clearance.`;
    }
    case 'crest-thin': {
      const [crest, least] = apart(warning.crestFlat, warning.least, size);
      return `The crests are left ${crest} wide; under ${least} they chip in most woods. Cut less deep.`;
    }
    case 'relief-wide': {
      const [width, most] = apart(warning.width, warning.most);
      return `The relief is ${width} wide, over ${most}: the cutter’s body costs length. A slimmer screw or body would save it.`;
    }
    case 'tenon-longer-than-recess':
      return `The tenon, ${rough(warning.tenon)}, would meet the floor at ${rough(warning.recess)}. Fewer threads, or a deeper recess.`;
    case 'clearance-eaten-by-season':
      return warning.left < 0
        ? `${amountWords(warning.clearance, unit)} of clearance will bind when the wood moves: it wants ${amountWords(warning.needed, unit)}. Both pieces end grain, a steadier wood or a ring helps.`
        : `${amountWords(warning.clearance, unit)} of clearance may run tight in the worst season: ${amountWords(warning.needed, unit)} would run free all year.`;
    case 'cutter-rubs':
      return `This cutter is big for the opening: it widens the groove by ${size(warning.shift)} a side. From ${rough(warning.recess)} up it would not matter.`;
    case 'neck-touches':
      return `The cutter’s neck touches the wood before full depth: at most ${rough(warning.most)} radius is free.`;
    case 'slide-short': {
      const [travel, needed] = apart(warning.travel, warning.needed);
      return `The cross-slide travels ${travel}; this joint needs ${needed} between tenon and recess. The post would have to move.`;
    }
    case 'side-grain':
      return `Side grain moves along the thread as well: up to ${size(warning.pitchMismatch)} over its length. End grain holds a thread better.`;
  }
};

const standInName: Readonly<Record<Exclude<Assumption['what'], 'wood'>, string>> = {
  cutterRadius: 'a cutter radius',
  tipFlat: 'a tip flat',
  aheadOfTooth: 'a cutter body ahead of the tooth',
  travelPerTurn: 'a cross-slide travel for one turn',
};

/** What was calculated with in place of something not known yet. */
export const assumptionWords = (assumption: Assumption, unit: Unit): string =>
  assumption.what === 'wood'
    ? `${assumption.wood} is in no table: reckoned to move like a usual wood of its kind.`
    : `CalculatedBox with ${standInName[assumption.what]} of ${usualFigure(assumption.length, unit)}: you have not told me yours.`;

/** A usual figure carries no more digits than it deserves: thou when small, else a workshop fraction. */
export const usualFigure = (length: Millimetres, unit: Unit): string => {
  if (unit === 'mm') return writeLength(length, 'mm');
  return length < 2.54 ? writeLength(length, 'thou') : writeLength(length, 'in', { smallest: 1 / 64 });
};
