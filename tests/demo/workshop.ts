import type { Box } from '../../src/domain/box/records.ts';
import { cutRuns } from '../../src/domain/findings/rows/cut-run.ts';
import type { JointTable } from '../../src/domain/findings/rows/joint-row.ts';
import { rowsFromLogs } from '../../src/domain/findings/rows/rows-from-log.ts';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { foldRun, type RunState } from '../../src/domain/setup/fold.ts';
import type { DemoLog } from './generate.ts';
import { type Made, makeBox } from './make-box.ts';
import { RIGS } from './rigs.ts';

/** A fixed moment for logs that must not change from day to day: 1 July 2026, 12:00 UTC. */
export const NOW = Date.UTC(2026, 6, 1, 12);

export const runsOf = (events: readonly SetUpEvent[]): ReadonlyMap<string, readonly SetUpEvent[]> => {
  const runs = new Map<string, SetUpEvent[]>();
  for (const event of events) runs.set(event.runId, [...(runs.get(event.runId) ?? []), event]);
  return runs;
};

export const foldedRuns = (events: readonly SetUpEvent[]): ReadonlyMap<string, RunState> =>
  new Map([...runsOf(events)].map(([id, run]) => [id, foldRun(run) as RunState]));

export const boxesOf = ({ records }: Pick<DemoLog, 'records'>): ReadonlyMap<string, Box> =>
  new Map(records.flatMap((r) => (r.kind === 'box' ? [[r.id, r.body as Box] as const] : [])));

/** A log as the findings see it. */
export const rowsOf = (boxes: ReadonlyMap<string, Box>, events: readonly SetUpEvent[]): JointTable => {
  const keep = cutRuns();
  return rowsFromLogs([
    {
      log: 'demo',
      boxes,
      rigs: new Map(Object.entries(RIGS)),
      calipers: new Map(),
      ownWoods: new Map(),
      runs: new Map([...foldedRuns(events)].map(([id, run]) => [id, keep(run)])),
      woodFacts: () => ({ group: 'hardwood', hardness: 1000 }),
    },
  ]);
};

/** So many boxes of the workshop, far beyond two years of them, to see its rates and not its luck. */
export const manyBoxes = (seed: number, count: number): readonly Made[] =>
  Array.from({ length: count }, (_, i) =>
    makeBox({
      seed,
      number: i + 1,
      startsAt: NOW - 400 * 86_400_000,
      now: NOW,
      practice: 1,
      before: null,
      stopAfter: null,
    }),
  );

export { RIGS };
