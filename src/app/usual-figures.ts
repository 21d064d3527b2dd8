import { mm } from '../domain/units/brands.ts';

/** What is reckoned with for a rig that does not know yet, mm. Common practice, no source. */
export const USUAL = {
  cutterRadius: mm(12.7),
  tipFlat: mm(0.2),
  aheadOfTooth: mm(1.5),
  /** A cross-screw of 20 to the inch. */
  travelPerTurn: mm(1.27),
} as const;
