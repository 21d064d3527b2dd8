import { dropDraft, getDraft, saveDraft } from '../storage/drafts.ts';
import { attempt } from './failure.ts';
import { logId } from './session.ts';

/** What was typed into a form and not yet saved, or undefined. A draft that cannot be read is no draft. */
export const readDraft = async (form: string): Promise<Record<string, string> | undefined> => {
  try {
    return (await getDraft(logId.value, form))?.values as Record<string, string> | undefined;
  } catch {
    return undefined;
  }
};

export const keepDraft = (form: string, values: Readonly<Record<string, string>>): Promise<unknown> =>
  attempt('draft', () => saveDraft({ logId: logId.value, form, values, at: Date.now() }), form);

export const clearDraft = (form: string): Promise<unknown> =>
  attempt('draft', () => dropDraft(logId.value, form), form);
