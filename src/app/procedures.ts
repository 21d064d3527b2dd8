import { DEFAULT_PROCEDURES } from '../domain/setup/default-procedures.ts';
import type { Procedure } from '../domain/setup/procedure.ts';
import { newId } from '../platform/ids.ts';
import { changeRecord, listRecords } from '../storage/records.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { author, logId } from './session.ts';

export interface ProcedureOnHand {
  readonly id: string;
  readonly procedure: Procedure;
  /** One of ours, which can be copied but not changed. */
  readonly isDefault: boolean;
}

export const allProcedures = async (): Promise<ProcedureOnHand[]> => {
  const own = await listRecords(logId.value, 'procedure');
  return [
    ...Object.entries(DEFAULT_PROCEDURES).map(([id, procedure]) => ({ id, procedure, isDefault: true })),
    ...own.flatMap(({ id, body }) => (body ? [{ id, procedure: body, isDefault: false }] : [])),
  ];
};

/**
 * Keeps a procedure; runs made with an earlier version keep theirs. With `keepReplaced` the version before can be brought back, as it
 * must be wherever words go. Durable when it resolves to true.
 */
export const keepProcedure = async (
  id: string,
  change: (procedure: Procedure) => Procedure,
  keepReplaced = false,
): Promise<boolean> => {
  const saved = await attempt(() =>
    changeRecord(
      logId.value,
      'procedure',
      id,
      author(),
      (now) => (now ? { ...change(now), version: now.version + 1 } : null),
      { keepReplaced },
    ),
  );
  if (saved) announce('procedure');
  return saved !== undefined;
};

/** A copy to make one's own; its id, or undefined when it could not be saved. */
export const copyProcedure = async (from: Procedure, name: string): Promise<string | undefined> => {
  const id = newId();
  const saved = await attempt(() =>
    changeRecord(logId.value, 'procedure', id, author(), () => ({ ...from, name, version: 1 })),
  );
  if (saved) announce('procedure');
  return saved && id;
};

export const removeProcedure = async (id: string): Promise<boolean> => {
  const saved = await attempt(() =>
    changeRecord(logId.value, 'procedure', id, author(), () => null, { keepReplaced: true }),
  );
  if (saved) announce('procedure');
  return saved !== undefined;
};
