import type { Stored } from '../domain/box/records.ts';
import { changeRecord, listSuperseded } from '../storage/records.ts';
import type { Superseded } from '../storage/schema.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { author, logId } from './session.ts';

/** Versions that lost to a later one in the last 30 days, newest first. */
export const replacedVersions = async (): Promise<Superseded[]> =>
  (await listSuperseded(logId.value))
    .filter((version) => version.body !== null)
    .sort((a, b) => b.supersededAt - a.supersededAt);

/** Brings one back as the newest version; what it replaces goes among the replaced ones. Durable when it resolves to true. */
export const bringBack = async ({ logId: log, kind, id, body }: Stored): Promise<boolean> => {
  const saved = await attempt(() =>
    changeRecord(log, kind, id, author(), () => body, { keepReplaced: true }),
  );
  if (saved) announce(kind);
  return saved !== undefined;
};
