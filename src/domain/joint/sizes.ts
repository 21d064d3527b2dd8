import { ok, type Refusal, type Result, refuse } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { type EngagementOf, fullEngagement } from './engagement.ts';
import { badForm, crestFromDepth, depthFromCrest, HALF_ANGLE, SLOPE, type VForm } from './profile.ts';

/** What a joint is sized from, besides its depth: the turned recess and the wanted diametral clearance. */
interface Wanted {
  readonly recess: Millimetres;
  readonly clearance: Millimetres;
}

/** A joint with both pieces cut to the same depth. */
export interface JointSizes {
  readonly tenon: Millimetres;
  /** Tenon less recess, the figure a turner remembers. */
  readonly allowance: Millimetres;
  readonly depth: Millimetres;
  readonly crestFlat: Millimetres;
  readonly engagedHeight: Millimetres;
  readonly percentOf75: number;
  readonly percentOf62: number;
  /** Radial gap left between crest and root, the same for both pieces. */
  readonly crestGap: Millimetres;
  readonly endPlay: Millimetres;
  readonly flankLength: Millimetres;
}

/** Everything that follows once the crest flat is settled; refuses crests that would cross roots, and threads that would not touch. */
const sizesFromCrest = (form: VForm, wanted: Wanted, crestFlat: number): Result<JointSizes> => {
  const depth = depthFromCrest(form, mm(crestFlat));
  if (!depth.ok) return depth;
  const { recess, clearance } = wanted;
  const height = (form.pitch - 2 * crestFlat) / (2 * SLOPE) - clearance / 2;
  const crestGap = depth.value - height;
  const conflict =
    crestConflict(form, clearance, crestFlat, crestGap) ?? apart(form, clearance, crestFlat, height);
  if (conflict) return refuse(conflict);
  const allowance = 2 * height;
  return ok({
    tenon: mm(recess + allowance),
    allowance: mm(allowance),
    depth: depth.value,
    crestFlat: mm(crestFlat),
    engagedHeight: mm(height),
    percentOf75: (100 * height) / fullEngagement(form.pitch, '0.75H'),
    percentOf62: (100 * height) / fullEngagement(form.pitch, '0.625H'),
    crestGap: mm(crestGap),
    endPlay: mm(clearance * SLOPE),
    flankLength: mm(height / Math.cos(HALF_ANGLE)),
  });
};

/** Room for rounding when a gap is meant to be exactly nothing, mm. */
const NOTHING = 1e-9;

const crestConflict = (form: VForm, clearance: number, crest: number, gap: number): Refusal | undefined =>
  gap >= -NOTHING
    ? undefined
    : {
        problem: 'conflict',
        field: 'crestFlat',
        other: 'tipFlat',
        given: crest,
        otherGiven: form.tipFlat,
        nearest: Math.max(0, form.tipFlat - clearance * SLOPE),
        quantity: 'length',
      };

const apart = (form: VForm, clearance: number, crest: number, height: number): Refusal | undefined =>
  height > 0
    ? undefined
    : {
        problem: 'conflict',
        field: 'clearance',
        other: 'crestFlat',
        given: clearance,
        otherGiven: crest,
        nearest: Math.max(0, (form.pitch - 2 * crest) / SLOPE),
        quantity: 'length',
      };

/**
 * An engaged height (mm) that cannot be had, told in terms of the clearance: a blunt tip wants more of it for the crests to clear, a pitch
 * allows no more than leaves a crest. Where no clearance does, the tip is too blunt.
 */
export const aboutClearance = ({ pitch, tipFlat }: VForm, clearance: number, height: number): Refusal => {
  const least = 2 * height - (pitch - 2 * tipFlat) / SLOPE;
  const most = pitch / SLOPE - 2 * height;
  const conflict = { problem: 'conflict', quantity: 'length' } as const;
  if (least > most || most < 0)
    return {
      ...conflict,
      field: 'tipFlat',
      other: 'pitch',
      given: tipFlat,
      otherGiven: pitch,
      nearest: Math.max(0, pitch - 2 * height * SLOPE),
    };
  return clearance > most
    ? { ...conflict, field: 'clearance', other: 'pitch', given: clearance, otherGiven: pitch, nearest: most }
    : {
        ...conflict,
        field: 'clearance',
        other: 'tipFlat',
        given: clearance,
        otherGiven: tipFlat,
        nearest: least,
      };
};

const badWanted = (form: VForm, { recess, clearance }: Wanted): Refusal | undefined =>
  badForm(form) ?? outside({ recess, wantedClearance: clearance });

/**
 * Sizes from the turner's own depth of cut (mm radial, the same for both pieces): "my dial goes to 1 1/2 turns", so
 * this is the tenon that suits it. Exact. A depth beyond the V is a conflict of depth and pitch.
 */
export const tenonFromDepth = (form: VForm, wanted: Wanted, depth: Millimetres): Result<JointSizes> => {
  const refusal = badWanted(form, wanted);
  if (refusal) return refuse(refusal);
  const crest = crestFromDepth(form, depth);
  if (!crest.ok) return crest;
  const sizes = sizesFromCrest(form, wanted, crest.value);
  return sizes.ok ? sizes : refuse(aboutDepth(form, wanted, depth, sizes.error));
};

/** A conflict found in terms of the crest flat, told in terms of the depth that was asked for. */
const aboutDepth = (form: VForm, { clearance }: Wanted, depth: number, found: Refusal): Refusal => {
  const crossed = found.field === 'crestFlat';
  return {
    problem: 'conflict',
    field: 'depth',
    other: crossed ? 'tipFlat' : 'clearance',
    given: depth,
    otherGiven: crossed ? form.tipFlat : clearance,
    nearest: crossed
      ? (form.pitch - 2 * form.tipFlat + clearance * SLOPE) / (2 * SLOPE)
      : (form.pitch / 2 - form.tipFlat + (clearance * SLOPE) / 2) / (2 * SLOPE),
    quantity: 'length',
  };
};

/**
 * Sizes from a wanted engagement (percent of the named height): tenon = recess + 2 he, k = (P - (2 he + c) tan A)/2. Exact.
 * The greatest engagement whose crests still clear is he = (P - 2f)/(2 tan A) + c/2 (and never beyond k = 0).
 */
export const tenonFromEngagement = (
  form: VForm,
  wanted: Wanted,
  percent: number,
  of: EngagementOf,
): Result<JointSizes> => {
  const refusal = badWanted(form, wanted) ?? outside({ engagement: percent });
  if (refusal) return refuse(refusal);
  const full = fullEngagement(form.pitch, of);
  const { clearance } = wanted;
  const leastCrest = Math.max(0, form.tipFlat - clearance * SLOPE);
  const highest = (form.pitch - 2 * leastCrest) / (2 * SLOPE) - clearance / 2;
  const height = (percent / 100) * full;
  const crest = (form.pitch - SLOPE * (2 * height + clearance)) / 2;
  const crosses = height > highest + NOTHING;
  if (crosses || height <= 0) {
    const byTip = crosses && leastCrest > 0;
    return refuse({
      problem: 'conflict',
      field: 'engagement',
      other: byTip ? 'tipFlat' : 'clearance',
      given: percent,
      otherGiven: byTip ? form.tipFlat : clearance,
      nearest: crosses && highest > 0 ? (100 * highest) / full : null,
      quantity: 'percent',
    });
  }
  return sizesFromCrest(form, wanted, Math.max(0, crest));
};
