import { type Millimetres, mm } from '../units/brands.ts';
import type { Rig } from './records.ts';

/** Assumed for a rig that does not know yet, mm. Common practice, no source. */
export const ASSUMED = {
  cutterRadius: mm(12.7),
  tipFlat: mm(0.2),
  aheadOfTooth: mm(1.5),
  /** A cross-screw of 20 to the inch. */
  travelPerTurn: mm(1.27),
} as const;

/** Of the recess's radius: a cutter not entered yet is no reason to refuse a small box. */
const ROOM_FOR_CUTTER = 0.7;

/** The cutter assumed for a recess of this diameter. */
export const assumedCutter = (recess: Millimetres): Millimetres =>
  mm(Math.min(ASSUMED.cutterRadius, (ROOM_FOR_CUTTER * recess) / 2));

/** Radius and tip of the cutter, as entered or as assumed. */
export const cutterOf = (
  { cutterRadius, tipFlat }: Rig,
  recess: Millimetres,
): { readonly radius: Millimetres; readonly tipFlat: Millimetres } => ({
  radius: cutterRadius?.mm ?? assumedCutter(recess),
  tipFlat: tipFlat?.mm ?? ASSUMED.tipFlat,
});

/** A default in the place of something not known yet. */
export type Assumption =
  | { readonly what: keyof typeof ASSUMED; readonly length: Millimetres }
  | { readonly what: 'wood'; readonly wood: string };
