import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import type { Part } from '../../../src/domain/setup/events.ts';
import { foldRun, type RunState } from '../../../src/domain/setup/fold.ts';
import { type AnyEvent, begun, nextEvent, ticked } from '../setup/event-logs.ts';

export const BOARD = DEFAULT_PROCEDURES['board-and-cone'];
const ALL = BOARD.steps.map(({ key }) => key);

/** A set-up of a part with every step passed but those skipped, and what happened to it after. */
export const runOf = (
  runId: string,
  part: Part,
  after: readonly object[] = [{ kind: 'closed', how: 'cut' }],
  { skip = [] as readonly string[], done = ALL } = {},
): RunState => {
  let log: AnyEvent[] = ticked(
    begun(BOARD),
    done.filter((key) => !skip.includes(key)),
  );
  log = ticked(log, skip, 'skip');
  for (const happening of after) log = [...log, nextEvent(log, happening)];
  const run = foldRun(
    log.map((event) => ({ ...event, runId, ...(event.kind === 'started' && { part }) }) as AnyEvent),
  );
  if (!run) throw new Error('no run');
  return run;
};

export const runsOf = (...runs: readonly RunState[]): ReadonlyMap<string, RunState> =>
  new Map(runs.map((run) => [run.runId, run]));
