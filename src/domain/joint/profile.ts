import { ok, type Refusal, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import { outside } from './bounds.ts';

/** Half the included angle of the thread cutter, 60 degrees: each flank stands at 30 degrees to the radius. Other angles are not modelled. */
export const HALF_ANGLE: Radians = rad(Math.PI / 6);

/** tan of the half angle: axial width of a flank per unit of its height. */
export const SLOPE = Math.tan(HALF_ANGLE);

/** A single-start 60 degree V thread, both flanks alike, as a cutter with a flat tip leaves it. */
export interface VForm {
  readonly pitch: Millimetres;
  /** Width of the cutter's tip, and so of the flat at the root; for several teeth, their axial run-out added. */
  readonly tipFlat: Millimetres;
}

/** Depth beyond which a flat-tipped cutter leaves no crest at all: (P - f)/(2 tan A). Plain numbers, for use inside formulas. */
export const fullDepth = (pitch: number, tipFlat: number): number =>
  Math.max(0, (pitch - tipFlat) / (2 * SLOPE));

/** The refusal for a form whose numbers are out of range, or whose tip is as wide as the pitch. */
export const badForm = ({ pitch, tipFlat }: VForm): Refusal | undefined =>
  outside({ pitch, tipFlat }) ??
  (tipFlat >= pitch
    ? {
        problem: 'conflict',
        field: 'tipFlat',
        other: 'pitch',
        given: tipFlat,
        otherGiven: pitch,
        nearest: null,
        quantity: 'length',
      }
    : undefined);

/**
 * Radial depth of cut from touch-off that leaves the wanted crest flat, mm: (P - f - k)/(2 tan A).
 * Refuses a crest and a tip that together are wider than the pitch. Exact.
 */
export const depthFromCrest = (form: VForm, crestFlat: Millimetres): Result<Millimetres> => {
  const refusal = badForm(form) ?? outside({ crestFlat });
  if (refusal) return refuse(refusal);
  const { pitch, tipFlat } = form;
  if (crestFlat + tipFlat > pitch)
    return refuse({
      problem: 'conflict',
      field: 'crestFlat',
      other: 'tipFlat',
      given: crestFlat,
      otherGiven: tipFlat,
      nearest: pitch - tipFlat,
      quantity: 'length',
    });
  return ok(mm((pitch - tipFlat - crestFlat) / (2 * SLOPE)));
};

/**
 * Crest flat that a depth of cut leaves, mm: P - f - 2 d tan A. Exact.
 * Refuses a depth beyond the V, where neighbouring grooves meet and the crest itself is cut away.
 */
export const crestFromDepth = (form: VForm, depth: Millimetres): Result<Millimetres> => {
  const refusal = badForm(form) ?? outside({ depth });
  if (refusal) return refuse(refusal);
  const { pitch, tipFlat } = form;
  const deepest = fullDepth(pitch, tipFlat);
  if (depth > deepest)
    return refuse({
      problem: 'conflict',
      field: 'depth',
      other: 'pitch',
      given: depth,
      otherGiven: pitch,
      nearest: deepest,
      quantity: 'length',
    });
  return ok(mm(Math.max(0, pitch - tipFlat - 2 * depth * SLOPE)));
};
