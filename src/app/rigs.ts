import type { Rig } from '../domain/box/records.ts';
import { UNKNOWN_RIG } from '../domain/box/unknown-rig.ts';
import type { Procedure } from '../domain/setup/procedure.ts';
import { bodyOf, keep, listBodies } from './keep.ts';

/** The id of the rig every log has from the start. */
export const FIRST_RIG_ID = 'rig-1';

export const allRigs = async (): Promise<{ readonly id: string; readonly rig: Rig }[]> => {
  const rigs = (await listBodies('rig')).map(({ id, body }) => ({ id, rig: body }));
  return rigs.length > 0 ? rigs : [{ id: FIRST_RIG_ID, rig: UNKNOWN_RIG }];
};

export const rigById = async (id: string): Promise<Rig> => (await bodyOf('rig', id)) ?? UNKNOWN_RIG;

/** Durable when it resolves to true. */
export const changeRig = (id: string, change: (rig: Rig) => Rig): Promise<boolean> =>
  keep('rig', id, (rig) => change(rig ?? UNKNOWN_RIG));

/** A procedure of this log, else the default of that id, else the plain default. */
export const procedureById = async (id: string): Promise<Procedure> => {
  const own = await bodyOf('procedure', id);
  if (own) return own;
  const { DEFAULT_PROCEDURES, DEFAULT_PROCEDURE_ID } = await import('../domain/setup/default-procedures.ts');
  return id in DEFAULT_PROCEDURES
    ? DEFAULT_PROCEDURES[id as keyof typeof DEFAULT_PROCEDURES]
    : DEFAULT_PROCEDURES[DEFAULT_PROCEDURE_ID];
};
