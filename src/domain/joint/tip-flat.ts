import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { CALIPER_ERROR } from './least.ts';
import { SLOPE } from './profile.ts';

/** A scrap pair cut with one cutter, and the end play felt when screwed together. */
export interface ScrapPair {
  readonly pitch: Millimetres;
  readonly recess: Millimetres;
  readonly tenon: Millimetres;
  readonly recessDepth: Millimetres;
  readonly tenonDepth: Millimetres;
  readonly endPlay: Millimetres;
  /** Helix widening of both grooves together, per flank; nothing when not given. */
  readonly flankShifts?: Millimetres;
  /** How sure each reading is, one and the same for all, mm. */
  readonly uncertainty?: Millimetres;
}

export interface LearnedTip {
  readonly tipFlat: Millimetres;
  /** Plus or minus, mm, from the readings' own uncertainty, added in quadrature. */
  readonly uncertainty: Millimetres;
}

/**
 * The tip flat f, mm, that explains a scrap pair's end play B: f = (P + B - 2 s - (Dr - Dt + 2(df + dm)) tan A)/2.
 * Good to (u/2) sqrt(1 + 10 tan^2 A), u the uncertainty of one reading: 1.04 u. Readings that ask for a tip below nothing
 * (by more than that) or wider than half the pitch are a conflict of end play and tenon.
 */
export const learnTipFlat = (pair: ScrapPair): Result<LearnedTip> => {
  const { pitch, recess, tenon, recessDepth, tenonDepth, endPlay } = pair;
  const { flankShifts = mm(0), uncertainty = CALIPER_ERROR } = pair;
  const refusal = outside({
    pitch,
    recess,
    tenon,
    recessDepth,
    tenonDepth,
    endPlay,
    flankShift: flankShifts,
    uncertainty,
  });
  if (refusal) return refuse(refusal);
  const reach = recess - tenon + 2 * (recessDepth + tenonDepth);
  const tipFlat = (pitch + endPlay - 2 * flankShifts - SLOPE * reach) / 2;
  const spread = (uncertainty / 2) * Math.sqrt(1 + 10 * SLOPE ** 2);
  if (tipFlat < -spread || tipFlat > pitch / 2)
    return refuse({
      problem: 'conflict',
      field: 'endPlay',
      other: 'tenon',
      given: endPlay,
      otherGiven: tenon,
      nearest: tipFlat < 0 ? endPlay - 2 * tipFlat : Math.max(0, endPlay - 2 * tipFlat + pitch),
      quantity: 'length',
    });
  return ok({ tipFlat: mm(Math.max(0, tipFlat)), uncertainty: mm(spread) });
};
