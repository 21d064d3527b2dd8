import table from '../../../shared/wood-hardness.json' with { type: 'json' };
import { movementTable, type TabledWood } from './movement-table.ts';
import { namesOf } from './same-wood.ts';

/** A wood with all that the tables say of it; null where they are silent. */
export interface Species extends TabledWood {
  /** Side hardness at about 12 % moisture; outside the handbook it is a figure of the trade. */
  readonly hardness: {
    readonly newton: number;
    readonly lbf: number;
    readonly inHandbook: boolean;
  } | null;
  /** Mass over volume at 12 % moisture, kg per cubic metre. */
  readonly density: number | null;
}

interface HardnessRow {
  readonly species: string;
  readonly hardness_lbf_12?: number | null;
  readonly hardness_lbf_dry?: number | null;
  readonly sg12?: number | null;
  readonly sg_basic?: number | null;
}

const NEWTON_PER_LBF = 4.4482216;
/** Moisture for which the figures stand, as a fraction of the oven-dry mass. */
const AT = 0.12;

const outsiders = new Set(table.not_in_tables.map(({ species }) => species));

const hardnessOf = (row: HardnessRow): Species['hardness'] => {
  const lbf = row.hardness_lbf_12 ?? row.hardness_lbf_dry ?? null;
  return lbf === null
    ? null
    : { lbf, newton: Math.round(lbf * NEWTON_PER_LBF), inHandbook: !outsiders.has(row.species) };
};

/**
 * Specific gravity on the volume at 12 % from that on green volume: Gb/(1 - 0.265 a Gb), a = (30 - 12)/30. Wood Handbook FPL-GTR-190,
 * chapter 4, from memory.
 */
const at12 = (basic: number): number => basic / (1 - 0.265 * ((30 - 100 * AT) / 30) * basic);

const densityOf = (row: HardnessRow): number | null => {
  const gravity =
    row.sg12 ?? (row.sg_basic === undefined || row.sg_basic === null ? null : at12(row.sg_basic));
  return gravity === null ? null : Math.round((1000 * gravity * (1 + AT)) / 10) * 10;
};

const rows = new Map<string, HardnessRow>(
  [...table.us_table_5_3, ...table.imported_table_5_5, ...table.not_in_tables].map((row) => [
    row.species,
    row,
  ]),
);

const rowOf = (key: string): HardnessRow | undefined => {
  for (const name of namesOf(key)) {
    const row = rows.get(name);
    if (row) return row;
  }
  return undefined;
};

/**
 * Every wood of the movement table with its side hardness and density: Wood Handbook FPL-GTR-282 (2021), Tables 5-3 and 5-5, and a few
 * woods of the trade. Heavy: import it with import().
 */
export const speciesTable: readonly Species[] = movementTable.map((wood) => {
  const row = rowOf(wood.key);
  return { ...wood, hardness: row ? hardnessOf(row) : null, density: row ? densityOf(row) : null };
});
