import type { Strain } from './movement.ts';
import { movementTable, type WoodGroup } from './movement-table.ts';

const STRAINS = new Map(movementTable.map(({ key, strain }) => [key, strain]));

/** How a tabled wood moves for one point of moisture, or null for a wood that the tables lack. */
export const strainOf = (wood: string): Strain | null => STRAINS.get(wood) ?? null;

/** Stands in for a wood that the tables lack: the mean of its group's tabled woods. */
export const usualStrain = (group: WoodGroup): Strain => {
  const strains = movementTable.filter((wood) => wood.group === group).map(({ strain }) => strain);
  const mean = (of: keyof Strain) => strains.reduce((sum, strain) => sum + strain[of], 0) / strains.length;
  return { radial: mean('radial'), tangential: mean('tangential') };
};
