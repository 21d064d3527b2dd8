import type { Part } from '../setup/events.ts';
import type { RunState } from '../setup/fold.ts';
import { pieceAt } from './piece.ts';
import type { Box, SetUpRef } from './records.ts';
import { newestSeat, newestTrial } from './this-pair.ts';

/** The stages of a box in the order they are met. */
export const STAGES = [
  'plan',
  'bore',
  'set-up-recess',
  'cut-recess',
  'tenon',
  'set-up-tenon',
  'cut-tenon',
  'trial',
  'seat',
  'close',
] as const;
export type Stage = (typeof STAGES)[number];

/** In what order this box meets its stages: with both pieces turned first, both are measured before any set-up. */
const stagesOf = (box: Box): readonly Stage[] =>
  box.plan.route === 'recess-first'
    ? STAGES
    : [
        'plan',
        'bore',
        'tenon',
        'set-up-recess',
        'cut-recess',
        'set-up-tenon',
        'cut-tenon',
        'trial',
        'seat',
        'close',
      ];

export type StageState = 'done' | 'now' | 'passed-over' | 'to-come';

/** The newest set-up of these that was not given up. */
export const newestRun = (
  setUps: readonly SetUpRef[],
  runs: ReadonlyMap<string, RunState>,
): RunState | null =>
  setUps
    .map(({ runId }) => runs.get(runId))
    .findLast((run) => run !== undefined && run.closed !== 'abandoned') ?? null;

/** The newest set-up, not given up, of the piece that is there now: one turned again was off the jig, and is set up again. */
export const latestRun = (box: Box, part: Part, runs: ReadonlyMap<string, RunState>): RunState | null => {
  const { since } = pieceAt(box, part);
  return newestRun(
    box.setUps.filter((ref) => ref.part === part && ref.seq >= since),
    runs,
  );
};

/** Whether a stage of this box is done, from what was recorded. The plan is done when the box exists. */
export const isDone = (stage: Stage, box: Box, runs: ReadonlyMap<string, RunState>): boolean => {
  switch (stage) {
    case 'plan':
      return true;
    case 'bore':
      return box.bore.length > 0;
    case 'tenon':
      return box.tenon.length > 0;
    case 'set-up-recess':
      return isReady(latestRun(box, 'recess', runs));
    case 'cut-recess':
      return latestRun(box, 'recess', runs)?.closed === 'cut';
    case 'set-up-tenon':
      return isReady(latestRun(box, 'tenon', runs));
    case 'cut-tenon':
      return latestRun(box, 'tenon', runs)?.closed === 'cut';
    case 'trial':
      return newestTrial(box)?.right ?? false;
    case 'seat':
      return newestSeat(box)?.degreesToGo === 0;
    case 'close':
      return box.closing !== null;
  }
};

/** Every step settled and no hold point in the way: the cut may be shown. */
export const isReady = (run: RunState | null): boolean =>
  run !== null && !run.contested && run.now === null && run.withheldBy.length === 0;

/**
 * The one next thing: the first stage not done after the last one that is. Measuring and seating may be passed over: a
 * stage before something already done counts as passed over, not as next.
 */
export const nextThing = (box: Box, runs: ReadonlyMap<string, RunState>): Stage | null => {
  const stages = stagesOf(box);
  if (box.closing) return null;
  const lastDone = stages.findLastIndex((stage) => isDone(stage, box, runs));
  return stages[lastDone + 1] ?? null;
};

/** Every stage with where it stands, for the strip of the box. */
export const stageStates = (
  box: Box,
  runs: ReadonlyMap<string, RunState>,
): readonly { readonly stage: Stage; readonly state: StageState }[] => {
  const next = nextThing(box, runs);
  const stages = stagesOf(box);
  const at = next === null ? stages.length : stages.indexOf(next);
  return stages.map((stage, i) => ({
    stage,
    state: isDone(stage, box, runs) ? 'done' : i === at ? 'now' : i < at ? 'passed-over' : 'to-come',
  }));
};
