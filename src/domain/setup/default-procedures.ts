import table from '../../../shared/procedures.json';
import type { Procedure } from './procedure.ts';

/** The procedures every log starts with, by id. Users copy and edit; these stay. */
export const DEFAULT_PROCEDURES = table.procedures as unknown as Readonly<
  Record<'board-and-cone' | 'true-bar', Procedure>
>;

export const DEFAULT_PROCEDURE_ID = 'board-and-cone';
