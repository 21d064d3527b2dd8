import { type CutRun, cutRuns } from '../domain/findings/rows/cut-run.ts';
import { FOLD_RULE, packRuns, unpackRuns } from '../domain/findings/rows/packed-runs.ts';
import { foldRun } from '../domain/setup/fold.ts';
import { newId } from '../platform/ids.ts';
import { eventsOfRun } from '../storage/events.ts';
import { type KeptOfLog, keep } from '../storage/kept.ts';
import { eachRunOfLog } from '../storage/runs-of-log.ts';
import type { Kept } from '../storage/schema.ts';

/** How the set-ups are kept: those up to one run id while the first reading is under way, then all (`upTo` null). */
interface KeptRuns {
  readonly upTo: string | null;
  readonly packed: string;
}

/** The set-ups of a log, folded, and what is kept of them now. */
interface RunsOfLog {
  readonly runs: ReadonlyMap<string, CutRun>;
  readonly kept: Kept | undefined;
}

/** A first reading is kept this often, so that a phone put away half-way need not begin again. */
const KEEP_EVERY_MS = 10_000;
/** Set-ups read at once. */
const TOGETHER = 50;

const NOTHING: KeptRuns = { upTo: '', packed: packRuns([]) };

/**
 * The set-ups of a log: as kept, those folded anew that were touched since, and those not read yet. `onShare` hears the share of
 * what is to be read.
 */
export const readRuns = async (before: KeptOfLog, onShare: (share: number) => void): Promise<RunsOfLog> => {
  const { logId } = before;
  const touched = before.touched.filter(({ what }) => what === 'run');
  const usable = before.runs?.rule === FOLD_RULE ? (before.runs.value as KeptRuns) : NOTHING;
  const runs = unpackRuns(usable.packed);
  // So many at once came in from elsewhere; reading them one by one would take longer than reading all.
  const isMany = touched.length > TOGETHER && touched.length > runs.size;
  const upTo = isMany ? '' : usable.upTo;
  if (isMany) runs.clear();
  if (upTo === null && touched.length === 0) return { runs, kept: before.runs };

  const small = cutRuns(runs.values());
  const take = (events: Parameters<typeof foldRun>[0]): void => {
    const run = foldRun(events);
    if (run) runs.set(run.runId, small(run));
  };
  let held: KeptOfLog | null = before;
  const save = async (upTo: string | null): Promise<void> => {
    const value: KeptRuns = { upTo, packed: packRuns(runs.values()) };
    const kept: Kept | null =
      held &&
      (await keep(
        held,
        'runs',
        { rule: FOLD_RULE, stamp: newId(), value },
        upTo === null ? touched : [],
      ).catch(() => null));
    held = held && kept && { ...held, runs: kept };
  };

  for (let i = 0; i < touched.length && !isMany; i += TOGETHER) {
    const ids = touched.slice(i, i + TOGETHER).map(({ id }) => id);
    for (const events of await Promise.all(ids.map((id) => eventsOfRun(logId, id)))) take(events);
    if (upTo === null) onShare(Math.min(1, (i + TOGETHER) / touched.length));
  }
  if (upTo !== null) await readOn(logId, upTo, take, save, onShare);
  await save(null);
  return { runs, kept: held?.runs };
};

const readOn = async (
  logId: string,
  upTo: string,
  take: (events: Parameters<typeof foldRun>[0]) => void,
  save: (upTo: string) => Promise<void>,
  onShare: (share: number) => void,
): Promise<void> => {
  let last = upTo;
  let savedAt = performance.now();
  await eachRunOfLog(
    logId,
    (events) => {
      take(events);
      last = events[0]?.runId ?? last;
    },
    async (share) => {
      onShare(share);
      if (share === 1 || performance.now() - savedAt < KEEP_EVERY_MS) return;
      await save(last);
      savedAt = performance.now();
    },
    upTo,
  );
};
