import { mm } from '../../../src/domain/units/brands.ts';

export const t = Math.tan(Math.PI / 6);
export const cut = { depth: mm(1.633), tipFlat: mm(0.2) };
/** A pair of 10 to the inch whose flanks clear by this much. */
export const pairOf = (clearance: number) => ({
  pitch: mm(2.54),
  recess: { ...cut, diameter: mm(40) },
  tenon: { ...cut, diameter: mm(40 + 4 * 1.633 - (2.54 - 0.4) / t - clearance) },
});
