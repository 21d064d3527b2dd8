import type { WoodFacts } from '../domain/findings/rows/rows-from-log.ts';
import { speciesTable } from '../domain/wood/species-table.ts';

/** What the tables say of every wood, as the findings need it. */
export const tabledWoods: Readonly<Record<string, WoodFacts>> = Object.fromEntries(
  speciesTable.map(({ key, group, hardness }) => [key, { group, hardness: hardness?.newton ?? null }]),
);
