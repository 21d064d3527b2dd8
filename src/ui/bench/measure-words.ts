import type { BoreReading, TenonReading } from '../../domain/box/records.ts';
import type { Bore } from '../../domain/joint/bore.ts';
import type { FitTarget } from '../../domain/joint/fit-target.ts';
import { CALIPER_ERROR } from '../../domain/joint/least.ts';
import type { TenonCheck } from '../../domain/joint/tenon-check.ts';
import type { Millimetres } from '../../domain/units/brands.ts';
import { amountWords } from './plan/words.ts';

type Unit = 'in' | 'mm';

const boreWhere: Readonly<Record<BoreReading['where'], string>> = {
  mouth: 'At the mouth',
  relief: 'By the relief',
};
const tenonWhere: Readonly<Record<TenonReading['where'], string>> = {
  end: 'At the end',
  shoulder: 'By the shoulder',
};

export const measureWords = {
  save: 'Save',
  another: 'Another reading',
  overCrests: 'Over finished crests',
  overCrestsNote: 'Over crests one reads fuzz too. A plain bore tells more.',
  turnedAgain: 'Read plain, this piece was turned again: its set-up and its passes start over.',
  readings: 'Readings',
  remove: 'Remove',
  removeOf: (reading: string) => `Remove: ${reading}`,
  removed: (reading: string) => `Removed: ${reading}.`,
  undo: 'Undo',
  superseded: 'measured again since',
  toSetUp: 'To the set-up',
  toTenon: 'To the tenon',
  plusOrMinus: (amount: string) => `give or take ${amount}`,
} as const;

export const boreWords = {
  first: 'Lathe stopped. The plain bore, before any thread.',
  along: 'Along the rings',
  across: 'Across them',
  acrossHint: 'If you like',
  where: 'Where',
  whereWord: boreWhere,
  tenon: 'Turn the tenon to',
  zero: 'Zero on the bore, then',
  plus: (amount: string) => `+ ${amount}`,
  trueIt: 'True the bore, then measure',
  tells: 'What the bore tells',
  mean: 'Mean',
  meanKnown: (amount: string) => `known to ${amount} either way`,
  cutTo: (depth: string, planned: string) =>
    `The recess was cut to ${depth}, not ${planned}: the tenon allows for it.`,
  offPlan: (amount: string, way: 'over' | 'under') => `${amount} ${way} the opening planned. Meant so?`,
  reading: ({ where, along, across, overCrests }: BoreReading) =>
    `${boreWhere[where]} ${along.text}${across ? `, across ${across.text}` : ''}${overCrests ? ', over crests' : ''}`,
} as const;

/** Whether a bore tapers by more than the tenon's tolerance, and by more than a caliper may be out. */
export const isBoreTapered = ({ taper }: Pick<Bore, 'taper'>, tolerance: Millimetres): boolean =>
  taper !== null && Math.abs(taper) > Math.max(tolerance, CALIPER_ERROR);

/** Taper in words: whether the bore is parallel, which way it opens, and how much comes off where. */
export const taperWords = ({ taper }: Bore, tolerance: Millimetres, unit: Unit): string => {
  if (taper === null) return 'Taper: not known. Read it at the mouth and by the relief.';
  const amount = amountWords(Math.abs(taper), unit);
  if (Math.abs(taper) < CALIPER_ERROR) return 'Parallel, as near as a caliper tells.';
  const way = taper > 0 ? `Opens ${amount} toward the mouth.` : `Narrows ${amount} toward the mouth.`;
  return isBoreTapered({ taper }, tolerance)
    ? `${way} True it before you thread: bore it ${amount} wider ${taper > 0 ? 'by the relief' : 'at the mouth'}.`
    : way;
};

/** Out-of-round in words. */
export const roundWords = ({ outOfRound }: Bore, tolerance: Millimetres, unit: Unit): string => {
  if (outOfRound === null) return 'Round or oval: not known. Read along and across the rings.';
  if (outOfRound < CALIPER_ERROR) return 'Round, as near as a caliper tells.';
  const amount = `${amountWords(outOfRound, unit)} out of round.`;
  return outOfRound > tolerance ? `${amount} Let the wood settle, then true it again.` : amount;
};

export const caliperWords = {
  title: 'Caliper',
  unknown: 'inside and outside jaws taken to agree',
  known: (offset: number, unit: Unit) =>
    offset === 0
      ? 'inside and outside jaws agree'
      : `inside jaws read ${amountWords(Math.abs(offset), unit)} ${offset > 0 ? 'over' : 'under'} the outside`,
  why: 'The two pairs of jaws seldom agree, and the difference goes straight into the fit. Check it once, on a ring of known bore: a ball bearing is good. It is kept with the caliper.',
  inside: 'Inside jaws read',
  outside: 'Its true bore',
  outsideHint: 'As marked, or outside jaws over a plug that just fits',
  keep: 'Keep the difference',
  forget: 'Forget it',
} as const;

export const tenonWords = {
  target: 'Turn the tenon to',
  noBore: 'For the bore as planned. Measure the bore, and this number is yours.',
  toBore: 'Measure the bore',
  diameter: 'Diameter of the tenon',
  where: 'Where',
  whereWord: tenonWhere,
  right: 'On size',
  withinError: (amount: string) => `${amount} off, within caliper error.`,
  over: 'Take off',
  under: 'Under size by',
  measured: (measured: string, wanted: string) => `Measured ${measured}, wanted ${wanted}`,
  ifCut: 'Cut to the planned depth as it is:',
  instead: 'Or leave it',
  deeper: (depth: string, planned: string) => `Cut its thread to ${depth} instead of ${planned}.`,
  shallower: (depth: string, planned: string) =>
    `Cut its thread only to ${depth} instead of ${planned}: that gives the clearance back.`,
  dial: (dial: string) => `Dial: ${dial}.`,
  asItIs: 'Cut it as it is: to the set-up',
  engages: (percent: string) => `Then ${percent} of the thread engages.`,
  turnedAgain: 'Turned it down? Measure it again.',
  reading: ({ where, diameter, overCrests }: TenonReading) =>
    `${tenonWhere[where]} ${diameter.text}${overCrests ? ', over crests' : ''}`,
} as const;

/** Taper of a tenon in words. */
export const tenonTaperWords = (taper: number | null, unit: Unit): string => {
  if (taper === null) return 'Taper: not known. Read it at the end and by the shoulder.';
  if (Math.abs(taper) < CALIPER_ERROR) return 'Parallel, as near as a caliper tells.';
  return `${amountWords(Math.abs(taper), unit)} bigger ${taper > 0 ? 'by the shoulder' : 'at the end'}.`;
};

/** A clearance follows from two readings, mm. */
const CLEARANCE_ERROR = Math.SQRT2 * CALIPER_ERROR;

/** What a tenon as it is would do to the fit: how it would go on, and the play a hand would feel. */
export const fitWords = ({ fit }: Pick<TenonCheck, 'fit'>, band: FitTarget, unit: Unit): string => {
  const play = `${amountWords(fit.endPlay, unit)} of end play`;
  const clearance = `${amountWords(fit.clearance, unit)} of clearance`;
  if (fit.clearance <= -CLEARANCE_ERROR)
    return `it will not go on. The flanks meet ${amountWords(-fit.clearance, unit)} too soon.`;
  if (fit.clearance <= 0) return 'it may not go on: no clearance, within caliper error.';
  const near = (edge: number) => Math.abs(fit.clearance - edge) < CLEARANCE_ERROR;
  if (near(band.least)) return `easy or stiff, within caliper error. ${clearance}, ${play}.`;
  if (near(band.most)) return `easy or slack, within caliper error. ${clearance}, ${play}.`;
  if (fit.clearance < band.least) return `stiff. ${clearance}, ${play}.`;
  if (fit.clearance > band.most) return `slack. ${clearance}, ${play}: it will rock.`;
  return `it goes on easily. ${clearance}, ${play}.`;
};
