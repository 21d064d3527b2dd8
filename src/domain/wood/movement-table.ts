import changes from '../../../shared/wood-dimensional-change.json' with { type: 'json' };
import shrinkages from '../../../shared/wood-shrinkage.json' with { type: 'json' };
import type { OwnWood } from '../box/records.ts';
import type { Strain } from './movement.ts';
import { namesOf } from './same-wood.ts';
import { tradeName } from './trade-name.ts';

/** Moisture at which wood stops swelling, percent. */
const FIBRE_SATURATION = 30;
/** The coefficients are fractions of the dimension at this moisture, percent. */
const REFERENCE = 10;

/**
 * Movement per point of moisture, as a fraction of the dimension at 10 %, from total shrinkage S, percent from green to oven-dry (0 to 25):
 * (S/30)/(100 - 20 S/30). Wood Handbook FPL-GTR-190 (2010), equation 13-3; it gives Table 13-5 from Table 4-3 within 0.00002 for 68 of 76
 * woods. Plain number, for use inside tables.
 */
export const movementFromShrinkage = (percent: number): number =>
  percent / FIBRE_SATURATION / (100 - (percent * (FIBRE_SATURATION - REFERENCE)) / FIBRE_SATURATION);

export type WoodGroup = OwnWood['group'];

/** A wood whose movement is known from the tables. */
export interface TabledWood {
  /** The name in the table, by which a plan keeps it. */
  readonly key: string;
  /** What a turner calls it. */
  readonly name: string;
  readonly group: WoodGroup;
  readonly strain: Strain;
  /** From the table, or calculated from the wood's total shrinkage. */
  readonly from: 'change-table' | 'shrinkage';
  /** False for a row recalled rather than read. */
  readonly read: boolean;
}

/** Woods outside the handbook's groups; the rest of its unplaced rows are tropical. */
const temperate: Readonly<Record<string, WoodGroup>> = {
  'Osage-orange': 'hardwood',
  'Boxwood, European': 'hardwood',
  'Dogwood, flowering': 'hardwood',
  'Yew, Pacific': 'softwood',
  'Yew, European': 'softwood',
};

const groupOf = (species: string, group: string | undefined): WoodGroup =>
  group === 'hardwood' || group === 'softwood' ? group : (temperate[species] ?? 'tropical');

const isRead = (provenance: string): boolean => provenance.startsWith('read');

const tabled: readonly TabledWood[] = changes.rows.map(({ species, group, CR, CT, provenance }) => ({
  key: species,
  name: tradeName(species),
  group: groupOf(species, group),
  strain: { radial: CR, tangential: CT },
  from: 'change-table',
  read: isRead(provenance),
}));

interface ShrinkageRow {
  readonly species: string;
  readonly group?: string;
  readonly radial: number;
  readonly tangential: number | null;
  readonly provenance: string;
}

const listed = new Set(tabled.flatMap(({ key }) => namesOf(key)));

const shrinkageRows: readonly ShrinkageRow[] = [
  ...shrinkages.domestic_table_4_3,
  ...shrinkages.imported_table_4_4,
  ...shrinkages.not_in_handbook,
];

const reckoned: readonly TabledWood[] = shrinkageRows.flatMap(
  ({ species, group, radial, tangential, provenance }) =>
    listed.has(species) || tangential === null
      ? []
      : [
          {
            key: species,
            name: tradeName(species),
            group: groupOf(species, group),
            strain: {
              radial: movementFromShrinkage(radial),
              tangential: movementFromShrinkage(tangential),
            },
            from: 'shrinkage',
            read: isRead(provenance),
          },
        ],
);

/**
 * Every wood whose movement is known, by trade name. From Wood Handbook FPL-GTR-190 (2010) Table 13-5 (good between 6 and 14 % moisture),
 * and from total shrinkage (Tables 4-3 and 4-4, and a few woods of the trade that the handbook lacks) where that table has no row.
 * Boards of one wood differ from the mean by perhaps a quarter (an estimate, no source).
 */
export const movementTable: readonly TabledWood[] = [...tabled, ...reckoned].sort((a, b) =>
  a.name < b.name ? -1 : a.name > b.name ? 1 : 0,
);
