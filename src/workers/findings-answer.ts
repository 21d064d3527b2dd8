import { findingsOf } from '../domain/findings/findings.ts';
import { lastAlike } from '../domain/findings/last-alike.ts';
import { type FoldedLog, rowsFromLogs } from '../domain/findings/rows-from-log.ts';
import { dictionarySheet, rowsSheet } from '../domain/findings/rows-sheet.ts';
import { powerTable } from '../domain/findings/trial-power.ts';
import { sha256 } from '../storage/backup/sha256.ts';
import { sheetCsv } from '../storage/backup/sheet-csv.ts';
import { readLog } from './findings-log.ts';
import type { FindingsAnswer, FindingsQuestion, SheetQuestion } from './findings-message.ts';
import { readTrials } from './findings-trials.ts';

/** Of the whole, so much is reading and folding the logs. */
const READING = 0.5;

type Question = FindingsQuestion | SheetQuestion;
type OnShare = (share: number) => void;

const readLogs = async ({ logIds, woods }: Question, onShare: OnShare): Promise<readonly FoldedLog[]> => {
  const logs: FoldedLog[] = [];
  for (const logId of logIds)
    logs.push(
      await readLog(logId, woods, (share) => onShare((READING * (logs.length + share)) / logIds.length)),
    );
  return logs;
};

/** Everything that the findings are reckoned from, as a short name: equal names, equal findings. */
const nameOf = (...parts: readonly unknown[]): Promise<string> =>
  sha256(new TextEncoder().encode(JSON.stringify(parts)));

const find = async (question: FindingsQuestion, onShare: OnShare): Promise<FindingsAnswer> => {
  const logs = await readLogs(question, onShare);
  const table = rowsFromLogs(logs);
  const alike = lastAlike(logs[0]?.boxes ?? new Map());
  const trials = await readTrials(question.logIds);
  const from = await nameOf(table, alike, trials);
  if (from === question.known) return { kind: 'unchanged' };
  const found = findingsOf(table, (share) => onShare(READING + (1 - READING) * share));
  return {
    kind: 'found',
    found: {
      ...found,
      from,
      lastAlike: alike,
      trials,
      power: powerTable(),
    },
  };
};

const sheet = async (question: SheetQuestion, onShare: OnShare): Promise<FindingsAnswer> => {
  const table = rowsFromLogs(await readLogs(question, onShare));
  return {
    kind: 'sheet',
    text: sheetCsv(question.want === 'rows' ? rowsSheet(table) : dictionarySheet(table)),
  };
};

/** Reads the logs, folds their set-ups and reckons what was asked; `onShare` hears the share done. Throws when the store does. */
export const answerTo = (question: Question, onShare: OnShare): Promise<FindingsAnswer> =>
  question.want === 'findings' ? find(question, onShare) : sheet(question, onShare);
