import { ok, type Refusal, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import { outside } from './bounds.ts';

/** Included angle of the usual thread cutter, 60 degrees. */
export const SIXTY_DEGREES: Radians = rad(Math.PI / 3);

/** A single-start V thread, both flanks alike, as a cutter with a flat tip leaves it. */
export interface VForm {
  readonly pitch: Millimetres;
  /** Width of the cutter's tip, and so of the flat at the root; for several teeth, their axial run-out added. */
  readonly tipFlat: Millimetres;
  /** Angle between the flanks, 30 to 90 degrees; 60 when not given. */
  readonly includedAngle?: Radians;
}

/** tan of the half included angle: axial width of a flank per unit of its height. */
export const flankSlope = (includedAngle: number = SIXTY_DEGREES): number => Math.tan(includedAngle / 2);

/** Depth beyond which a flat-tipped cutter leaves no crest at all: (P - f)/(2t). Plain numbers, for use inside formulas. */
export const fullDepth = (pitch: number, tipFlat: number, slope: number): number =>
  Math.max(0, (pitch - tipFlat) / (2 * slope));

/** The refusal for a form whose numbers are out of range, or whose tip is as wide as the pitch. */
export const badForm = ({ pitch, tipFlat, includedAngle }: VForm): Refusal | undefined =>
  outside({ pitch, tipFlat, includedAngle }) ??
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
 * Height H of the sharp V, mm: P/(2 tan A), A the half angle. ISO 68-1: 0.866025 P at 60 degrees.
 * Pitch 0.25 to 12.7 mm, included angle 30 to 90 degrees. Exact for a straight-flanked form.
 */
export const vHeight = (pitch: Millimetres, includedAngle?: Radians): Result<Millimetres> => {
  const refusal = outside({ pitch, includedAngle });
  return refusal ? refuse(refusal) : ok(mm(pitch / (2 * flankSlope(includedAngle))));
};

/** Height by which a flat of the given width cuts the sharp V short, mm: q/(2 tan A). Exact. */
export const truncation = (flat: Millimetres, includedAngle?: Radians): Result<Millimetres> => {
  const refusal = outside({ flat, includedAngle });
  return refusal ? refuse(refusal) : ok(mm(flat / (2 * flankSlope(includedAngle))));
};

/**
 * Radial depth of cut from touch-off that leaves the wanted crest flat, mm: (P - f - k)/(2 tan A).
 * Refuses a crest and a tip that together are wider than the pitch. Exact.
 */
export const depthFromCrest = (form: VForm, crestFlat: Millimetres): Result<Millimetres> => {
  const refusal = badForm(form) ?? outside({ crestFlat });
  if (refusal) return refuse(refusal);
  const { pitch, tipFlat, includedAngle } = form;
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
  return ok(mm((pitch - tipFlat - crestFlat) / (2 * flankSlope(includedAngle))));
};

/**
 * Crest flat that a depth of cut leaves, mm: P - f - 2 d tan A. Exact.
 * Refuses a depth beyond the V, where neighbouring grooves meet and the crest itself is cut away.
 */
export const crestFromDepth = (form: VForm, depth: Millimetres): Result<Millimetres> => {
  const refusal = badForm(form) ?? outside({ depth });
  if (refusal) return refuse(refusal);
  const { pitch, tipFlat, includedAngle } = form;
  const slope = flankSlope(includedAngle);
  const deepest = fullDepth(pitch, tipFlat, slope);
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
  return ok(mm(Math.max(0, pitch - tipFlat - 2 * depth * slope)));
};
