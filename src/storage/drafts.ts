import type { Draft } from './schema.ts';
import { read, write } from './write.ts';

/** Saves what is being typed. Durability is relaxed, because it must never slow the typing. */
export const saveDraft = (draft: Draft): Promise<void> =>
  write(
    ['drafts'],
    async (tx) => {
      await tx.objectStore('drafts').put(draft);
    },
    'relaxed',
  );

export const getDraft = (logId: string, form: string): Promise<Draft | undefined> =>
  read(['drafts'], (tx) => tx.objectStore('drafts').get([logId, form]));

export const dropDraft = (logId: string, form: string): Promise<void> =>
  write(
    ['drafts'],
    async (tx) => {
      await tx.objectStore('drafts').delete([logId, form]);
    },
    'relaxed',
  );
