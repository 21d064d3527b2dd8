import type { Rig } from '../domain/box/records.ts';
import { UNKNOWN_RIG } from '../domain/box/unknown-rig.ts';
import type { Procedure } from '../domain/setup/procedure.ts';
import { changeRecord, getRecord, listRecords } from '../storage/records.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { author, logId } from './session.ts';

/** The id of the rig every log has from the start. */
export const FIRST_RIG_ID = 'rig-1';

export const allRigs = async (): Promise<{ readonly id: string; readonly rig: Rig }[]> => {
  const found = await listRecords(logId.value, 'rig');
  const rigs = found.flatMap(({ id, body }) => (body ? [{ id, rig: body }] : []));
  return rigs.length > 0 ? rigs : [{ id: FIRST_RIG_ID, rig: UNKNOWN_RIG }];
};

export const rigById = async (id: string): Promise<Rig> =>
  (await getRecord(logId.value, 'rig', id))?.body ?? UNKNOWN_RIG;

/** Durable when it resolves to true. */
export const changeRig = async (id: string, change: (rig: Rig) => Rig): Promise<boolean> => {
  const saved = await attempt(() =>
    changeRecord(logId.value, 'rig', id, author(), (rig) => change(rig ?? UNKNOWN_RIG)),
  );
  if (saved) announce('rig');
  return saved !== undefined;
};

/** A procedure of this log, else the default of that id, else the plain default. */
export const procedureById = async (id: string): Promise<Procedure> => {
  const own = (await getRecord(logId.value, 'procedure', id))?.body;
  if (own) return own;
  const { DEFAULT_PROCEDURES, DEFAULT_PROCEDURE_ID } = await import('../domain/setup/default-procedures.ts');
  return id in DEFAULT_PROCEDURES
    ? DEFAULT_PROCEDURES[id as keyof typeof DEFAULT_PROCEDURES]
    : DEFAULT_PROCEDURES[DEFAULT_PROCEDURE_ID];
};
