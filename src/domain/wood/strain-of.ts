import table from '../../../shared/wood-dimensional-change.json' with { type: 'json' };
import type { OwnWood } from '../log/records.ts';
import type { Strain } from './movement.ts';

/** Every wood whose movement is tabled (Wood Handbook FPL-GTR-190, 2010, Table 13-5), by the key that a plan keeps. */
export const TABLED_WOODS: readonly string[] = table.rows.map(({ species }) => species);

const STRAINS = new Map<string, Strain>(
  table.rows.map(({ species, CR, CT }) => [species, { radial: CR, tangential: CT }]),
);

/** How a tabled wood moves for one point of moisture, or null for a wood that the table lacks. */
export const strainOf = (wood: string): Strain | null => STRAINS.get(wood) ?? null;

const GROUP_IN_TABLE = { hardwood: 'hardwood', softwood: 'softwood', tropical: 'imported' } as const;

/** Stands in for a wood that the table lacks: the mean of its group's tabled woods. */
export const usualStrain = (group: OwnWood['group']): Strain => {
  const rows = table.rows.filter((row) => row.group === GROUP_IN_TABLE[group]);
  const mean = (of: 'CR' | 'CT') => rows.reduce((sum, row) => sum + row[of], 0) / rows.length;
  return { radial: mean('CR'), tangential: mean('CT') };
};
