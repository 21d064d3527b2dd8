import { powerTable } from '../domain/experiment/experiment-power.ts';
import { findingsOf } from '../domain/findings/answers/findings.ts';
import { lastAlike } from '../domain/findings/answers/last-alike.ts';
import { rowsFromLogs } from '../domain/findings/rows/rows-from-log.ts';
import { dictionarySheet, rowsSheet } from '../domain/findings/rows/rows-sheet.ts';
import { newId } from '../platform/ids.ts';
import { sheetCsv } from '../storage/backup/sheet-csv.ts';
import { type KeptOfLog, readKept } from '../storage/kept.ts';
import { readExperiments } from './findings-experiments.ts';
import { type ReadLog, readLog } from './findings-log.ts';
import type { FindingsAnswer, FindingsQuestion, Found, SheetQuestion } from './findings-message.ts';
import { keepLast, lastFound } from './kept-findings.ts';

/** Of the whole, so much is reading and folding the logs. */
const READING = 0.5;

type Question = FindingsQuestion | SheetQuestion;

/** What is said while the answer is on its way. */
export interface Meanwhile {
  /** The share done. */
  readonly share: (share: number) => void;
  /** What was found last time, where something may have changed since. */
  readonly last: (found: Found, at: number) => void;
}

const readLogs = async (
  before: readonly KeptOfLog[],
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
 * A short name for everything that the findings are worked out from: equal names, equal findings. Plain http has no hash of the browser's
 * own, and a library's would be a twentieth of this worker: there each name is new, and the findings are worked out each time.
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
  const before = await Promise.all(question.logIds.map(readKept));
  const rule = await nameOf(made, question.woods);
  const kept = lastFound(before, rule);
  const known = question.known ?? kept?.found.from;
  if (kept?.holds)
    return question.known === kept.found.from ? { kind: 'unchanged' } : { kind: 'found', found: kept.found };
  if (kept && question.known === null) last(kept.found, kept.at);

  const logs = await readLogs(before, question, share);
  const table = rowsFromLogs(logs);
  const alike = lastAlike(logs[0]?.boxes ?? new Map());
  const experiments = await readExperiments(question.logIds);
  const from = await nameOf(table, alike, experiments);
  const keepFound = (found: Found) => keepLast(before, logs, rule, found);
  if (from === known) {
    if (kept?.found.from === from) await keepFound(kept.found);
    return { kind: 'unchanged' };
  }
  const found: Found = {
    ...findingsOf(table, (done) => share(READING + (1 - READING) * done)),
    from,
    lastAlike: alike,
    experiments,
    power: powerTable(),
  };
  await keepFound(found);
  return { kind: 'found', found };
};

const sheet = async (question: SheetQuestion, { share }: Meanwhile): Promise<FindingsAnswer> => {
  const before = await Promise.all(question.logIds.map(readKept));
  const table = rowsFromLogs(await readLogs(before, question, share));
  return {
    kind: 'sheet',
    text: sheetCsv(question.want === 'rows' ? rowsSheet(table) : dictionarySheet(table)),
  };
};

/** Reads the logs and reckons what was asked. `made` names the code that does so: another may reckon otherwise. Throws when the store does. */
export const answerTo = (question: Question, made: string, meanwhile: Meanwhile): Promise<FindingsAnswer> =>
  question.want === 'findings' ? find(question, made, meanwhile) : sheet(question, meanwhile);
