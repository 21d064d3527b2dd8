import type { MeasuredAngle } from '../alignment/gauge.ts';
import { measuredAngle } from '../alignment/measure.ts';
import { type Together, together } from '../alignment/walls.ts';
import type { Part } from '../setup/events.ts';
import type { RunState } from '../setup/fold.ts';
import { readingsInForce } from '../setup/readings-in-force.ts';
import type { Box, Rig } from './records.ts';
import { latestRun } from './stages.ts';

/** The lean that was read in each set-up, sizes only: which way it was open is not noted. */
export interface LeansRead {
  readonly recess: MeasuredAngle | null;
  readonly tenon: MeasuredAngle | null;
  /** The post stayed locked from one piece to the other, so both lean alike. */
  readonly isOneSetting: boolean;
  readonly together: Together;
}

/** The greatest lean that a set-up's readings in force allow for. */
const leanOf = (run: RunState | null): MeasuredAngle | null => {
  if (!run || run.contested) return null;
  const angles = run.steps.flatMap(({ step }) =>
    readingsInForce(run, step.key).flatMap((reading) => {
      if (reading.kind === 'turns' || reading.plane === 'tilt') return [];
      const measured = measuredAngle(reading);
      return measured.ok ? [measured.value] : [];
    }),
  );
  return angles.reduce<MeasuredAngle | null>(
    (most, angle) => (most && Math.abs(most.angle) >= Math.abs(angle.angle) ? most : angle),
    null,
  );
};

export const leansRead = (
  box: Box,
  runs: ReadonlyMap<string, RunState>,
  rig: Pick<Rig, 'recessDial'>,
): LeansRead => {
  const run = (part: Part): RunState | null => latestRun(box, part, runs);
  const recess = leanOf(run('recess'));
  const isOneSetting =
    run('tenon')?.steps.some(({ step, status }) => step.key === 'lock-post' && status === 'carried') ?? false;
  return {
    recess,
    tenon: leanOf(run('tenon')) ?? (isOneSetting ? recess : null),
    isOneSetting,
    together: together(rig.recessDial),
  };
};
