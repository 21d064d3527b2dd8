import { ok, type Result } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { benchOrder, type Cause, type RemedyKey, remediesAgainst } from './advice-table.ts';
import { deepenForClearance, deepenFromTwoTries } from './correction.ts';
import { benchStep, type DialTarget, dialTarget, steps, toBenchStep } from './dial.ts';
import type { FitState } from './fit-target.ts';
import { HALF_ANGLE, SLOPE } from './profile.ts';
import type { Findings, KnownJoint } from './trial-evidence.ts';

/** Where an amount comes from; by feel it is the least step that a dial and a hand can do. */
export type Basis = 'play' | 'sizes' | 'two-tries' | 'feel';

/** How much, on which part. Lengths in mm, rounded to what a dial and a hand can do. */
export interface Amount {
  readonly part: 'tenon' | 'recess';
  /** Radial for a depth or a crest, axial for the floor, square to the flank for rubbing, a diameter for a new tenon. */
  readonly by: Millimetres;
  readonly basis: Basis;
  /** True when no play was felt and nothing else told how tight it is: it needs this, and may need more. */
  readonly atLeast: boolean;
  /** The same on the dial, for a depth; null when the dial is not known. */
  readonly dial: DialTarget | null;
}

export interface Remedy {
  readonly remedy: RemedyKey;
  readonly against: readonly Cause[];
  readonly amounts: readonly Amount[];
}

/** Crests are eased to this gap and a little, mm radial. An estimate, no source. */
const CREST_ROOM = 0.05;
/** Finest rubbing that one can keep count of, mm square to the flank. An estimate, no source. */
const RUB_STEP = 0.01;

interface Case {
  readonly found: Findings;
  readonly known: KnownJoint;
  /** Sizes that contradict what the hand felt are not reckoned from. */
  readonly trustSizes: boolean;
}

type Reckoning = (of: Case) => Result<readonly Amount[]>;

const upToStep = (length: number, step: number): Millimetres => steps(Math.ceil(length / step - 1e-6), step);

/** Clearance to reckon from: play that was felt, else trusted sizes; null leaves it to tries and feel. */
const clearanceNow = ({ found: { best }, trustSizes }: Case): Findings['best'] =>
  best?.basis === 'sizes' && !trustSizes ? null : best;

const sourceOf = (now: Findings['best']): Pick<Amount, 'basis' | 'atLeast'> => ({
  basis: now === null ? 'feel' : now.basis === 'sizes' ? 'sizes' : 'play',
  atLeast: now?.basis === 'no-play',
});

/** How far to deepen, before rounding. Two tries say more than that there is no play. */
const depthToAdd = (of: Case): Result<Pick<Amount, 'basis' | 'atLeast'> & { readonly by: number }> => {
  const { found, known } = of;
  const { wanted, least } = found.target;
  const now = clearanceNow(of);
  const gained = known.tries !== null && !found.evidence.has('deepening-gained-nothing');
  if (gained && known.tries && (now === null || now.basis === 'no-play')) {
    const depth = deepenFromTwoTries(known.tries, wanted);
    return depth.ok ? ok({ by: depth.value, basis: 'two-tries', atLeast: false }) : depth;
  }
  if (now === null) return ok({ by: benchStep[known.unit], basis: 'feel', atLeast: false });
  if (now.clearance >= least) return ok({ by: 0, ...sourceOf(now) });
  const depth = deepenForClearance(now.clearance, wanted);
  return depth.ok ? ok({ by: depth.value, ...sourceOf(now) }) : depth;
};

const deepening: Reckoning = (of) => {
  const { known } = of;
  const depth = depthToAdd(of);
  if (!depth.ok) return depth;
  const by = toBenchStep(mm(depth.value.by), known.unit);
  if (by <= 0) return ok([]);
  const dial = known.dial === null ? ok(null) : dialTarget(by, known.dial);
  if (!dial.ok) return dial;
  return ok([
    {
      part: known.onJig ?? 'tenon',
      by,
      basis: depth.value.basis,
      atLeast: depth.value.atLeast,
      dial: dial.value,
    },
  ]);
};

const easing: Reckoning = ({ found: { state, target }, known, trustSizes }) => {
  const step = benchStep[known.unit];
  const gaps = [
    ['tenon', state.tenonCrestGap],
    ['recess', state.recessCrestGap],
  ] as const;
  const crossing = gaps.flatMap(([part, gap]) =>
    gap !== null && trustSizes && gap < target.crestGap
      ? [{ part, by: upToStep(CREST_ROOM - gap, step), basis: 'sizes' as const, atLeast: false, dial: null }]
      : [],
  );
  return ok(
    crossing.length > 0
      ? crossing
      : [{ part: known.onJig ?? 'tenon', by: step, basis: 'feel', atLeast: false, dial: null }],
  );
};

const clearing: Reckoning = ({ found: { state, target }, known }) => {
  const step = 10 * benchStep[known.unit];
  return ok(
    state.bottomGap === null || state.bottomGap >= target.bottomGap
      ? [{ part: 'tenon', by: mm(step), basis: 'feel', atLeast: false, dial: null }]
      : [
          {
            part: 'tenon',
            by: upToStep(target.bottomGap - state.bottomGap, step),
            basis: 'sizes',
            atLeast: false,
            dial: null,
          },
        ],
  );
};

/** Rubbing the flanks of one part by s opens the joint by 2 s/sin A on the diameter. */
const rubbing: Reckoning = (of) => {
  const { found } = of;
  const now = clearanceNow(of);
  const perRub = 2 / Math.sin(HALF_ANGLE);
  const by = now === null ? RUB_STEP : Math.max(0, found.target.wanted - now.clearance) / perRub;
  const rounded = steps(Math.max(1, Math.round(by / RUB_STEP)), RUB_STEP);
  return ok([{ part: 'tenon', by: rounded, ...sourceOf(now), dial: null }]);
};

/** A loose pair cannot be cut tighter: the tenon is made again, larger by what the clearance is too much. */
const remaking: Reckoning = (of) => {
  const now = clearanceNow(of);
  const { pair } = of.known;
  if (now === null || pair === null) return ok([]);
  const diameter = pair.tenon.diameter + now.clearance - of.found.target.wanted;
  const step = benchStep[of.known.unit];
  return ok([{ part: 'tenon', by: steps(Math.round(diameter / step), step), ...sourceOf(now), dial: null }]);
};

const reckonings: Partial<Record<RemedyKey, Reckoning>> = {
  deepen: deepening,
  'ease-crests': easing,
  'clear-floor': clearing,
  'rub-flanks': rubbing,
  'new-tenon': remaking,
};

/** The remedies that change the clearance of the flanks: only one may, or the joint would be corrected twice. */
const flankRemedies: readonly RemedyKey[] = ['deepen', 'rub-flanks', 'new-tenon'];

const flankRemedyFor = (suspects: readonly Cause[]): RemedyKey | undefined => {
  for (const cause of suspects) {
    const found = flankRemedies.find((remedy) => remediesAgainst[cause].includes(remedy));
    if (found) return found;
  }
  return undefined;
};

/**
 * What to do about the named causes (likeliest first), in the order of the bench. Of remedies for the flanks only the likeliest cause's
 * is kept, and a deepening that would come to nothing is left out.
 */
export const remediesFor = (suspects: readonly Cause[], of: Case): Result<readonly Remedy[]> => {
  const forFlanks = flankRemedyFor(suspects);
  const remedies: Remedy[] = [];
  for (const remedy of benchOrder) {
    if (flankRemedies.includes(remedy) && remedy !== forFlanks) continue;
    const against = suspects.filter((cause) => remediesAgainst[cause].includes(remedy));
    if (against.length === 0 && (remedy !== 'measure-again' || of.trustSizes)) continue;
    const amounts = reckonings[remedy]?.(of) ?? ok([]);
    if (!amounts.ok) return amounts;
    if (remedy !== 'deepen' || amounts.value.length > 0)
      remedies.push({ remedy, against, amounts: amounts.value });
  }
  return ok(remedies);
};

const plus = (value: Millimetres | null, gain: number): Millimetres | null =>
  value === null ? null : mm(value + gain);

/** What one amount of a remedy does to the fit. */
const applied = (
  state: FitState,
  remedy: RemedyKey,
  { part, by }: Amount,
  { pair }: KnownJoint,
): FitState => {
  switch (remedy) {
    case 'deepen':
      return {
        ...opened(state, 2 * by),
        tenonCrestGap: plus(state.tenonCrestGap, part === 'recess' ? by : 0),
        recessCrestGap: plus(state.recessCrestGap, part === 'tenon' ? by : 0),
      };
    case 'ease-crests':
      return part === 'tenon'
        ? { ...state, tenonCrestGap: plus(state.tenonCrestGap, by) }
        : { ...state, recessCrestGap: plus(state.recessCrestGap, by) };
    case 'clear-floor':
      return { ...state, bottomGap: plus(state.bottomGap, by) };
    case 'rub-flanks':
      return opened(state, (2 * by) / Math.sin(HALF_ANGLE));
    case 'new-tenon': {
      const larger = by - (pair?.tenon.diameter ?? by);
      return {
        ...opened(state, -larger),
        tenonCrestGap: plus(state.tenonCrestGap, -larger / 2),
        recessCrestGap: plus(state.recessCrestGap, -larger / 2),
      };
    }
    default:
      return state;
  }
};

const opened = (state: FitState, gain: number): FitState => {
  const clearance = plus(state.clearance, gain);
  return {
    ...state,
    clearance,
    endPlay: clearance === null ? null : mm(Math.max(0, clearance * SLOPE)),
  };
};

/** The fit after all the remedies that have amounts, as far as it is known. */
export const stateAfter = (before: FitState, remedies: readonly Remedy[], known: KnownJoint): FitState =>
  remedies.reduce(
    (state, { remedy, amounts }) =>
      amounts.reduce((next, amount) => applied(next, remedy, amount, known), state),
    before,
  );
