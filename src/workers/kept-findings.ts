import { newId } from '../platform/ids.ts';
import { type KeptOfLog, keep } from '../storage/kept.ts';
import type { ReadLog } from './findings-log.ts';
import type { Found } from './findings-message.ts';

/** The last answer as it is kept, and from which set-ups it was reckoned. */
interface KeptFound {
  readonly found: Found;
  readonly at: number;
  readonly runs: string;
}

interface LastFound {
  readonly found: Found;
  /** When it was reckoned, epoch ms. */
  readonly at: number;
  /** Nothing was written since. */
  readonly holds: boolean;
}

/** What was found last time by the same rule; kept of single logs only. */
export const lastFound = (before: readonly KeptOfLog[], rule: string): LastFound | null => {
  const [log] = before;
  if (before.length !== 1 || log?.findings?.rule !== rule) return null;
  const { found, at, runs } = log.findings.value as KeptFound;
  return { found, at, holds: log.touched.length === 0 && runs === log.runs?.stamp };
};

/** Keeps an answer for the next time the app is opened. Failing that, it will be reckoned again. */
export const keepLast = async (
  before: readonly KeptOfLog[],
  logs: readonly ReadLog[],
  rule: string,
  found: Found,
): Promise<void> => {
  const [log, runs] = [before[0], logs[0]?.runsKept];
  if (before.length !== 1 || !log || runs === undefined) return;
  const value: KeptFound = { found, at: Date.now(), runs };
  await keep(log, 'findings', { rule, stamp: newId(), value }, log.touched).catch(() => {});
};
