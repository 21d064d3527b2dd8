import type { Stored } from '../domain/box/records.ts';
import type { Superseded } from '../storage/schema.ts';
import { listSuperseded } from '../storage/superseded.ts';
import { keep } from './keep.ts';
import { logId } from './session.ts';

/** Versions that lost to a later one in the last 30 days, newest first. */
export const replacedVersions = async (): Promise<Superseded[]> =>
  (await listSuperseded(logId.value))
    .filter((version) => version.body !== null)
    .sort((a, b) => b.supersededAt - a.supersededAt);

/** Brings one back as the newest version; what it replaces goes among the replaced ones. Durable when it resolves to true. */
export const bringBack = ({ kind, id, body }: Stored): Promise<boolean> =>
  keep(kind, id, () => body, { keepReplaced: true });
