import type { OwnWood } from '../domain/box/records.ts';
import { type Millimetres, mm, moisture } from '../domain/units/brands.ts';
import { clearanceForSeason } from '../domain/wood/movement.ts';
import { type Species, speciesTable } from '../domain/wood/species-table.ts';
import { listBodies } from './keep.ts';

/** A wood as the Woods place shows it: from the tables, or the user's own with nothing tabled. */
export interface WoodOnHand {
  readonly key: string;
  readonly name: string;
  readonly species: Species | null;
  readonly own: OwnWood | null;
}

/** Every wood known, by name. */
export const allWoods = async (): Promise<readonly WoodOnHand[]> => {
  const own = await listBodies('wood');
  return [
    ...speciesTable.map((species) => ({ key: species.key, name: species.name, species, own: null })),
    ...own.map(({ id, body }) => ({ key: id, name: body.name, species: null, own: body })),
  ].sort((a, b) => a.name.localeCompare(b.name));
};

/** The joint by which woods are compared, and a heated house's swing of moisture. */
const COMPARED = { diameter: mm(50), swing: moisture(3) } as const;

/** Diametral clearance that a 50 mm end-grain joint of this wood needs for a house's seasons. */
export const movementOf = ({ strain }: Species): Millimetres | null => {
  const piece = { strain, grain: 'end' as const };
  const needed = clearanceForSeason(COMPARED.diameter, piece, piece, COMPARED.swing);
  return needed.ok ? needed.value : null;
};
