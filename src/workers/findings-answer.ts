import { powerTable } from '../domain/experiment/experiment-power.ts';
import { findingsOf } from '../domain/findings/answers/findings.ts';
import { lastAlike } from '../domain/findings/answers/last-alike.ts';
import { rowsFromLogs } from '../domain/findings/rows/rows-from-log.ts';
import { dictionarySheet, rowsSheet } from '../domain/findings/rows/rows-sheet.ts';
import { newId } from '../platform/ids.ts';
import { sheetCsv } from '../storage/backup/sheet-csv.ts';
import { type LogCache, readCache } from '../storage/cache.ts';
import { cachedFindings, cacheFindings } from './cached-findings.ts';
import { readExperiments } from './findings-experiments.ts';
import { type ReadLog, readLog } from './findings-log.ts';
import type { FindingsAnswer, FindingsQuestion, Found, SheetQuestion } from './findings-message.ts';

/** Share of the whole work that reading and folding the logs takes, for the progress bar. */
const READING = 0.5;

type Question = FindingsQuestion | SheetQuestion;

/** Called while the answer is being computed. */
export interface Meanwhile {
  /** With the share done, 0 to 1. */
  readonly share: (share: number) => void;
  /** With the last answer, when something may have changed since. */
  readonly last: (found: Found, at: number) => void;
}

const readLogs = async (
  before: readonly LogCache[],
  { woods }: Question,
  onShare: Meanwhile['share'],
): Promise<readonly ReadLog[]> => {
  const logs: ReadLog[] = [];
  for (const each of before)
    logs.push(
      await readLog(each, woods, (share) => onShare((READING * (logs.length + share)) / before.length)),
    );
  return logs;
};

/**
 * A hash of everything that the findings are computed from: the same hash means the same findings. Over plain http the browser
 * has no hash of its own, and a library would add a twentieth to this worker, so there every name is new and the findings are
 * always computed.
 */
const nameOf = async (...parts: readonly unknown[]): Promise<string> => {
  if (!crypto.subtle) return newId();
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(JSON.stringify(parts)));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
};

const find = async (
  question: FindingsQuestion,
  made: string,
  { share, last }: Meanwhile,
): Promise<FindingsAnswer> => {
  const before = await Promise.all(question.logIds.map(readCache));
  const rule = await nameOf(made, question.woods);
  const cached = cachedFindings(before, rule);
  const known = question.known ?? cached?.found.from;
  if (cached?.fresh)
    return question.known === cached.found.from
      ? { kind: 'unchanged' }
      : { kind: 'found', found: cached.found };
  if (cached && question.known === null) last(cached.found, cached.at);

  const logs = await readLogs(before, question, share);
  const table = rowsFromLogs(logs);
  const alike = lastAlike(logs[0]?.boxes ?? new Map());
  const experiments = await readExperiments(question.logIds);
  const from = await nameOf(table, alike, experiments);
  const save = (found: Found) => cacheFindings(before, logs, rule, found);
  if (from === known) {
    if (cached?.found.from === from) await save(cached.found);
    return { kind: 'unchanged' };
  }
  const found: Found = {
    ...findingsOf(table, (done) => share(READING + (1 - READING) * done)),
    from,
    lastAlike: alike,
    experiments,
    power: powerTable(),
  };
  await save(found);
  return { kind: 'found', found };
};

const sheet = async (question: SheetQuestion, { share }: Meanwhile): Promise<FindingsAnswer> => {
  const before = await Promise.all(question.logIds.map(readCache));
  const table = rowsFromLogs(await readLogs(before, question, share));
  return {
    kind: 'sheet',
    text: sheetCsv(question.want === 'rows' ? rowsSheet(table) : dictionarySheet(table)),
  };
};

/**
 * Reads the logs and answers a question. `made` names the build that computes, because another build may get other results.
 * Throws when the store does.
 */
export const answerTo = (question: Question, made: string, meanwhile: Meanwhile): Promise<FindingsAnswer> =>
  question.want === 'findings' ? find(question, made, meanwhile) : sheet(question, meanwhile);
