import type { GoingOn, MarksAt, MarksOn, Seated, ThreadState } from '../box/trial-words.ts';
import { firstRefusal, ok, type Refusal, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm, type Turns } from '../units/brands.ts';
import { type TwoTries, wentFurther } from './correction.ts';
import type { Dial } from './dial.ts';
import { filmLoss } from './film.ts';
import { type Fit, fitOf, type Pair } from './fit.ts';
import { type FitState, type FitTarget, targetFor } from './fit-target.ts';
import { SLOPE } from './profile.ts';

/** A trial fit that was not right, as told in taps. */
export interface TrialFit {
  readonly goingOn: readonly GoingOn[];
  readonly seated: Seated | null;
  readonly threads: readonly ThreadState[];
  readonly marks: { readonly on: MarksOn; readonly at: MarksAt } | null;
  readonly endPlay: Millimetres | null;
  readonly turnsOn: Turns | null;
  readonly afterFinish: boolean;
}

/** What is known of the joint besides; null is not known. */
export interface KnownJoint {
  /** Both pieces as measured and cut. */
  readonly pair: Pair | null;
  readonly wantedClearance: Millimetres;
  /** Turns that should engage. */
  readonly threads: number;
  /** Bore at the mouth less at the relief, and how far from round. */
  readonly boreTaper: Millimetres | null;
  readonly outOfRound: Millimetres | null;
  /** Tenon at the shoulder less at its end. */
  readonly tenonTaper: Millimetres | null;
  /** Depth of the recess less length of the tenon. */
  readonly bottomGap: Millimetres | null;
  /** Dry thickness of a finish that the sizes were measured without; not known when missing. */
  readonly film?: Millimetres | null;
  readonly wall: { readonly wall: Millimetres; readonly least: Millimetres } | null;
  /** Turns it went on before and after the last deepening. */
  readonly tries: TwoTries | null;
  /** The part still on the jig, so the one that can be deepened; the tenon when not known. */
  readonly onJig: 'tenon' | 'recess' | null;
  readonly dial: Dial | null;
  readonly unit: 'metric' | 'inch';
}

/** What a figure says, in a word. */
export type Measured =
  | 'sizes-flanks-tight'
  | 'sizes-flanks-right'
  | 'sizes-flanks-loose'
  | 'sizes-crests-cross'
  | 'sizes-crests-clear'
  | 'sizes-engagement-low'
  | 'play-none'
  | 'play-right'
  | 'play-large'
  | 'bore-narrows'
  | 'bore-opens'
  | 'bore-parallel'
  | 'bore-oval'
  | 'bore-round'
  | 'tenon-thick-at-shoulder'
  | 'tenon-thin-at-shoulder'
  | 'tenon-parallel'
  | 'floor-near'
  | 'floor-clear'
  | 'wall-thin'
  | 'wall-stout'
  | 'stops-early'
  | 'stops-midway'
  | 'stops-late'
  | 'deepening-gained-nothing'
  | 'after-finish';

export type Evidence =
  | GoingOn
  | Seated
  | ThreadState
  | `marks-on-${MarksOn}`
  | `marks-at-${MarksAt}`
  | Measured;

/** What one would have to tell or measure to have a piece of evidence. */
export type Field =
  | 'marks'
  | 'seated'
  | 'end-play'
  | 'turns-on'
  | 'sizes'
  | 'bore-ends'
  | 'bore-across'
  | 'tenon-ends'
  | 'bottom-gap'
  | 'wall';

/** The evidence that each field may bring. */
export const evidenceOfField: Readonly<Record<Field, readonly Evidence[]>> = {
  marks: ['marks-on-crest', 'marks-on-flank', 'marks-at-start', 'marks-at-by-shoulder', 'marks-at-all-along'],
  seated: ['flush', 'open-one-side', 'gap-all-round', 'rocks', 'proud-outside'],
  'end-play': ['play-none', 'play-right', 'play-large'],
  'turns-on': ['stops-early', 'stops-midway', 'stops-late'],
  sizes: [
    'sizes-flanks-tight',
    'sizes-flanks-right',
    'sizes-flanks-loose',
    'sizes-crests-cross',
    'sizes-crests-clear',
    'sizes-engagement-low',
  ],
  'bore-ends': ['bore-narrows', 'bore-opens', 'bore-parallel'],
  'bore-across': ['bore-oval', 'bore-round'],
  'tenon-ends': ['tenon-thick-at-shoulder', 'tenon-thin-at-shoulder', 'tenon-parallel'],
  'bottom-gap': ['floor-near', 'floor-clear'],
  wall: ['wall-thin', 'wall-stout'],
};

/** Everything that the advice rests on. */
export interface Findings {
  readonly target: FitTarget;
  readonly evidence: ReadonlySet<Evidence>;
  /** Fields not told yet. */
  readonly open: readonly Field[];
  /** Clearance by measured sizes (null under a finish of unknown thickness), and by the play that was felt. */
  readonly clearanceBySizes: Millimetres | null;
  readonly clearanceByPlay: Millimetres | null;
  /** The better of the two, and which it is; by 'no-play' the clearance is at most that. */
  readonly best: {
    readonly clearance: Millimetres;
    readonly basis: 'play' | 'no-play' | 'sizes';
  } | null;
  readonly state: FitState;
}

/** Diameters that differ by less than this along a piece are parallel to a turner's caliper, mm. An estimate, no source. */
const PARALLEL = 0.06;
/** Likewise round, mm. */
const ROUND = 0.1;
/** Share of 0.75 H below which threads jump, percent. An estimate, no source. */
const LOW_ENGAGEMENT = 45;

const badNumbers = ({ endPlay, turnsOn }: TrialFit, known: KnownJoint): Refusal | undefined => {
  const optional = (field: string, value: number | null, min: number, max: number) =>
    value === null ? ok(0) : within(field, value, min, max);
  return firstRefusal(
    optional('endPlay', endPlay, 0, 6),
    optional('turnsOn', turnsOn, 0, 50),
    optional('deepened', known.tries?.deepened ?? null, 0, 5),
    optional('turnsBefore', known.tries?.turnsBefore ?? null, 0, 50),
    optional('turnsAfter', known.tries?.turnsAfter ?? null, 0, 50),
    within('threads', known.threads, 0.5, 50, 'turns'),
    optional('boreTaper', known.boreTaper, -5, 5),
    optional('outOfRound', known.outOfRound, 0, 5),
    optional('tenonTaper', known.tenonTaper, -5, 5),
    optional('bottomGap', known.bottomGap, -20, 200),
    optional('film', known.film ?? null, 0, 1),
    optional('wall', known.wall?.wall ?? null, -50, 500),
    optional('leastWall', known.wall?.least ?? null, 0, 50),
  );
};

/** Crest gaps at the tightest place. Grooves follow the jig's axis, so a taper leaves the flanks alone and takes half of itself from a crest gap. */
const crestGaps = (fit: Fit | null, { boreTaper, tenonTaper }: KnownJoint) => ({
  tenonCrestGap: fit && mm(fit.tenonCrestGap - Math.abs(tenonTaper ?? 0) / 2),
  recessCrestGap: fit && mm(fit.recessCrestGap - Math.abs(boreTaper ?? 0) / 2),
});

/** What taps and numbers say, as evidence, with the state of the fit as far as it is known. */
export const findingsOf = (trial: TrialFit, known: KnownJoint): Result<Findings> => {
  const target = targetFor(known.wantedClearance);
  if (!target.ok) return target;
  const refusal = badNumbers(trial, known);
  if (refusal) return refuse(refusal);
  const sized = known.pair === null ? null : fitOf(known.pair);
  if (sized && !sized.ok) return sized;
  const fit = sized?.value ?? null;
  const clearanceByPlay = trial.endPlay === null ? null : mm(trial.endPlay / SLOPE);
  const coated = trial.afterFinish ? (known.film ?? null) : mm(0);
  const loss = coated === null ? null : filmLoss(coated);
  if (loss && !loss.ok) return loss;
  const clearanceBySizes = fit && loss ? mm(fit.clearance - loss.value.clearance) : null;
  const gaps = crestGaps(fit, known);
  const best = bestClearance(trial.endPlay, clearanceByPlay, clearanceBySizes);
  const clearance = best?.clearance ?? null;
  return ok({
    target: target.value,
    evidence: new Set([
      ...told(trial),
      ...bySizes(fit, Math.min(gaps.tenonCrestGap ?? 0, gaps.recessCrestGap ?? 0), target.value),
      ...byPlay(clearanceByPlay, target.value),
      ...byShape(known, target.value),
      ...byTurns(trial, known),
    ]),
    open: openFields(trial, known),
    clearanceBySizes,
    clearanceByPlay,
    best,
    state: {
      clearance,
      endPlay: clearance === null ? null : mm(Math.max(0, clearance * SLOPE)),
      ...gaps,
      bottomGap: known.bottomGap,
    },
  });
};

/** End play that a hand cannot tell from none, mm. An estimate, no source. */
const FELT = 0.03;

/** Play that was felt says more than sizes; but play too small to feel says only that there is none, and how far below nothing the sizes know. */
const bestClearance = (
  endPlay: Millimetres | null,
  byPlay: Millimetres | null,
  bySizes: Millimetres | null,
): Findings['best'] => {
  const sizes = bySizes === null ? null : ({ clearance: bySizes, basis: 'sizes' } as const);
  if (endPlay === null || byPlay === null) return sizes;
  return endPlay < FELT && sizes && bySizes !== null && bySizes < byPlay
    ? sizes
    : { clearance: byPlay, basis: endPlay < FELT ? 'no-play' : 'play' };
};

const told = ({ goingOn, seated, threads, marks, afterFinish }: TrialFit): readonly Evidence[] => [
  ...goingOn,
  ...(seated === null ? [] : [seated]),
  ...threads,
  ...(marks === null ? [] : ([`marks-on-${marks.on}`, `marks-at-${marks.at}`] as const)),
  ...(afterFinish ? (['after-finish'] as const) : []),
];

const bySizes = (fit: Fit | null, crests: number, target: FitTarget): readonly Evidence[] => {
  if (fit === null) return [];
  const { clearance } = fit;
  return [
    clearance < target.least
      ? 'sizes-flanks-tight'
      : clearance > target.most
        ? 'sizes-flanks-loose'
        : 'sizes-flanks-right',
    crests < target.crestGap ? 'sizes-crests-cross' : 'sizes-crests-clear',
    ...(fit.percentOf75 < LOW_ENGAGEMENT ? (['sizes-engagement-low'] as const) : []),
  ];
};

const byPlay = (clearance: number | null, target: FitTarget): readonly Evidence[] => {
  if (clearance === null) return [];
  if (clearance < target.least) return ['play-none'];
  return clearance > target.most ? ['play-large'] : ['play-right'];
};

const byShape = (known: KnownJoint, target: FitTarget): readonly Evidence[] => {
  const { boreTaper, outOfRound, tenonTaper, bottomGap, wall } = known;
  const found: Evidence[] = [];
  const leans = (taper: number, over: Evidence, under: Evidence, parallel: Evidence): Evidence =>
    taper > PARALLEL ? over : taper < -PARALLEL ? under : parallel;
  if (boreTaper !== null) found.push(leans(boreTaper, 'bore-narrows', 'bore-opens', 'bore-parallel'));
  if (tenonTaper !== null)
    found.push(leans(tenonTaper, 'tenon-thick-at-shoulder', 'tenon-thin-at-shoulder', 'tenon-parallel'));
  if (outOfRound !== null) found.push(outOfRound > ROUND ? 'bore-oval' : 'bore-round');
  if (bottomGap !== null) found.push(bottomGap < target.bottomGap ? 'floor-near' : 'floor-clear');
  if (wall !== null) found.push(wall.wall < wall.least ? 'wall-thin' : 'wall-stout');
  return found;
};

const byTurns = ({ turnsOn }: TrialFit, { threads, tries }: KnownJoint): readonly Evidence[] => [
  ...(turnsOn === null
    ? []
    : turnsOn < 1
      ? (['stops-early'] as const)
      : turnsOn > threads - 0.75
        ? (['stops-late'] as const)
        : (['stops-midway'] as const)),
  ...(tries !== null && !wentFurther(tries) ? (['deepening-gained-nothing'] as const) : []),
];

const openFields = (trial: TrialFit, known: KnownJoint): readonly Field[] => {
  const missing: readonly (readonly [Field, boolean])[] = [
    ['marks', trial.marks === null],
    ['seated', trial.seated === null],
    ['end-play', trial.endPlay === null],
    ['turns-on', trial.turnsOn === null],
    ['sizes', known.pair === null],
    ['bore-ends', known.boreTaper === null],
    ['bore-across', known.outOfRound === null],
    ['tenon-ends', known.tenonTaper === null],
    ['bottom-gap', known.bottomGap === null],
    ['wall', known.wall === null],
  ];
  return missing.filter(([, open]) => open).map(([field]) => field);
};
