import type { Strain } from '../../src/domain/wood/movement.ts';
import { strainOf, usualStrain } from '../../src/domain/wood/strain-of.ts';

/** How a wood of the demo moves: as tabled, else like a usual hardwood. */
export const strainIn = (wood: string): Strain => strainOf(wood) ?? usualStrain('hardwood');
