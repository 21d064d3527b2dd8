import { LONGEST, MOST_ITEMS } from '../domain/log/bounds.ts';
import { countUp } from '../domain/log/count-up.ts';
import { DEFAULT_PROCEDURES } from '../domain/setup/default-procedures.ts';
import type { Procedure } from '../domain/setup/procedure.ts';
import { StorageFailure } from '../storage/failure.ts';
import { keep, listBodies } from './keep.ts';

interface ProcedureOnHand {
  readonly id: string;
  readonly procedure: Procedure;
  /** One of ours, which can be copied but not changed. */
  readonly isDefault: boolean;
}

export const allProcedures = async (): Promise<ProcedureOnHand[]> => {
  return [
    ...Object.entries(DEFAULT_PROCEDURES).map(([id, procedure]) => ({ id, procedure, isDefault: true })),
    ...(await listBodies('procedure')).map(({ id, body }) => ({ id, procedure: body, isDefault: false })),
  ];
};

/**
 * Keeps a procedure; runs made with an earlier version keep theirs. With `keepReplaced` the version before can be brought back, as it
 * must be wherever words go. Durable when it resolves to true.
 */
export const keepProcedure = (
  id: string,
  change: (procedure: Procedure) => Procedure,
  keepReplaced = false,
): Promise<boolean> =>
  keep(
    'procedure',
    id,
    (now) => {
      if (!now) return null;
      const next = change(now);
      if (next.steps.length > MOST_ITEMS.steps) throw new StorageFailure('list-full');
      return { ...next, version: countUp(now.version) };
    },
    { keepReplaced },
  );

/** A copy to make one's own, under a new id. Durable when it resolves to true. */
export const copyProcedure = (id: string, from: Procedure, name: string): Promise<boolean> =>
  keep('procedure', id, () => ({ ...from, name: name.slice(0, LONGEST.name), version: 1 }));

export const removeProcedure = (id: string): Promise<boolean> =>
  keep('procedure', id, () => null, { keepReplaced: true });
