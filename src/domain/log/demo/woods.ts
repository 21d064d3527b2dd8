import type { Strain } from '../../wood/movement.ts';
import { strainOf, usualStrain } from '../../wood/strain-of.ts';

/** How a wood of the demo moves: as tabled, else like a usual hardwood. */
export const strainIn = (wood: string): Strain => strainOf(wood) ?? usualStrain('hardwood');
