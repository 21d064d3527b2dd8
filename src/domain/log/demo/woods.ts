import table from '../../../../shared/wood-dimensional-change.json';
import type { Strain } from '../../wood/movement.ts';

const STRAINS = new Map<string, Strain>(
  table.rows.map((row) => [row.species, { radial: row.CR, tangential: row.CT }]),
);

/** A wood that the table lacks moves, in the demo, like a middling hardwood. */
const MIDDLING: Strain = { radial: 0.0018, tangential: 0.0031 };

export const strainOf = (wood: string): Strain => STRAINS.get(wood) ?? MIDDLING;
