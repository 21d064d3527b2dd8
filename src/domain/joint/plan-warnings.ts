import { ok, type Result } from '../result.ts';
import { type Millimetres, mm, moisture } from '../units/brands.ts';
import { pitchMismatch } from '../wood/movement.ts';
import type { Shifts } from './flank-shifts.ts';
import { LARGEST_SHIFT, neckFor, recessForShift } from './largest-cutter.ts';
import { LEAST_CREST, LEAST_ENGAGEMENT, LEAST_FLOOR_GAP } from './least.ts';
import { halfwayUp, type PlannedClearance } from './plan-clearance.ts';
import type { PlanInput } from './plan-input.ts';
import type { PlanLengths, SlidePlaces } from './plan-lengths.ts';
import type { JointSizes } from './sizes.ts';

/** What a turner should know before cutting: a code, and the numbers that made it so (mm, percent, percent points). */
export type PlanWarning =
  | { readonly code: 'wall-thin'; readonly wall: number; readonly least: number; readonly outside: number }
  | { readonly code: 'engagement-low'; readonly percent: number; readonly least: number }
  | { readonly code: 'crest-thin'; readonly crestFlat: number; readonly least: number }
  | { readonly code: 'relief-wide'; readonly width: number; readonly most: number }
  | { readonly code: 'tenon-longer-than-recess'; readonly tenon: number; readonly recess: number }
  | {
      /** `left` is what remains when the season has done its worst, before any lean; below nothing it binds. */
      readonly code: 'clearance-eaten-by-season';
      readonly clearance: number;
      readonly needed: number;
      readonly left: number;
    }
  | { readonly code: 'cutter-rubs'; readonly shift: number; readonly most: number; readonly recess: number }
  | { readonly code: 'neck-touches'; readonly neck: number; readonly most: number }
  | { readonly code: 'slide-short'; readonly travel: number; readonly needed: number }
  | { readonly code: 'side-grain'; readonly pitchMismatch: number };

/** In pitches: a wider relief costs more length than it is worth. An estimate, no source. */
const WIDEST_RELIEF = 1.5;

interface Planned {
  readonly input: PlanInput;
  readonly sizes: JointSizes;
  readonly clearance: PlannedClearance;
  readonly shifts: Shifts;
  readonly lengths: PlanLengths;
  readonly places: SlidePlaces;
  readonly wall: { readonly wall: Millimetres | null; readonly least: Millimetres };
}

type Finding = Result<PlanWarning | null>;
type Look = (planned: Planned) => Finding;

const when = (wrong: boolean, warning: PlanWarning): Finding => ok(wrong ? warning : null);

const wallThin: Look = ({ wall: { wall, least }, lengths }) =>
  wall === null
    ? ok(null)
    : when(wall < least, {
        code: 'wall-thin',
        wall,
        least,
        outside: lengths.recessReliefDiameter + 2 * least,
      });

const engagementLow: Look = ({ sizes }) =>
  when(sizes.percentOf75 < LEAST_ENGAGEMENT, {
    code: 'engagement-low',
    percent: sizes.percentOf75,
    least: LEAST_ENGAGEMENT,
  });

const crestThin: Look = ({ sizes }) =>
  when(sizes.crestFlat < LEAST_CREST, {
    code: 'crest-thin',
    crestFlat: sizes.crestFlat,
    least: LEAST_CREST,
  });

const reliefWide: Look = ({ lengths, input }) =>
  when(lengths.reliefWidth > WIDEST_RELIEF * input.pitch, {
    code: 'relief-wide',
    width: lengths.reliefWidth,
    most: WIDEST_RELIEF * input.pitch,
  });

const tenonLong: Look = ({ lengths }) =>
  when(lengths.bottomGap < LEAST_FLOOR_GAP, {
    code: 'tenon-longer-than-recess',
    tenon: lengths.tenonLength,
    recess: lengths.recessDepth,
  });

const eaten: Look = ({ clearance: { clearance, budget } }) => {
  const left = budget.running + budget.mismatch - (budget.toCut - clearance);
  return when(clearance < budget.toCut, {
    code: 'clearance-eaten-by-season',
    clearance,
    needed: budget.toCut,
    left,
  });
};

const cutterRubs: Look = ({ shifts, input, sizes }) => {
  if (shifts.recess <= LARGEST_SHIFT) return ok(null);
  const { middle, cutterRadius } = halfwayUp(input, sizes);
  const radius = recessForShift(input.pitch, cutterRadius, LARGEST_SHIFT);
  if (!radius.ok) return radius;
  return ok({
    code: 'cutter-rubs',
    shift: shifts.recess,
    most: LARGEST_SHIFT,
    recess: 2 * (radius.value - middle),
  });
};

const neckTouches: Look = ({ input: { cutter }, sizes }) => {
  if (cutter.neckRadius === null) return ok(null);
  const most = neckFor(cutter.radius, sizes.depth);
  if (!most.ok) return most;
  return when(cutter.neckRadius > most.value, {
    code: 'neck-touches',
    neck: cutter.neckRadius,
    most: most.value,
  });
};

const slideShort: Look = ({ input: { slide }, places }) =>
  slide === null || places.travel === null
    ? ok(null)
    : when(slide.travel < places.travel, {
        code: 'slide-short',
        travel: slide.travel,
        needed: places.travel,
      });

const sideGrain: Look = ({ input, lengths }) => {
  if (input.woodOfRecess.grain === 'end' && input.woodOfTenon.grain === 'end') return ok(null);
  const change = moisture(input.moistureSwing);
  const mismatch = pitchMismatch(
    mm(lengths.thread),
    { ...input.woodOfRecess, change },
    { ...input.woodOfTenon, change },
  );
  return mismatch.ok ? ok({ code: 'side-grain', pitchMismatch: mismatch.value }) : mismatch;
};

const looks: readonly Look[] = [
  wallThin,
  engagementLow,
  eaten,
  tenonLong,
  cutterRubs,
  neckTouches,
  crestThin,
  reliefWide,
  slideShort,
  sideGrain,
];

/** Every warning that a plan deserves, the weightiest kinds first. */
export const planWarnings = (planned: Planned): Result<readonly PlanWarning[]> => {
  const warnings: PlanWarning[] = [];
  for (const look of looks) {
    const found = look(planned);
    if (!found.ok) return found;
    if (found.value) warnings.push(found.value);
  }
  return ok(warnings);
};
