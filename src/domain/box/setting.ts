import { judgeReading, type OtherPiece, type SettingJudgement } from '../alignment/judge-setting.ts';
import { measuredAngle } from '../alignment/measure.ts';
import type { AlignedJoint } from '../alignment/tolerance.ts';
import { together } from '../alignment/walls.ts';
import { ok, type Result } from '../result.ts';
import type { RunState } from '../setup/fold.ts';
import type { Reading } from '../setup/reading.ts';
import { readingsInForce } from '../setup/readings-in-force.ts';
import { mm } from '../units/brands.ts';
import type { CalculatedBox } from './calculate.ts';
import type { Box } from './records.ts';

export type GapOrSweep = Exclude<Reading, { readonly kind: 'turns' }>;

const angleOf = (reading: GapOrSweep): number => {
  const measured = measuredAngle(reading);
  return measured.ok ? Math.abs(measured.value.angle) : 0;
};

/** The gaps and sweeps in force at a step, oldest first. */
export const gapsAndSweeps = (run: RunState, key: string): readonly GapOrSweep[] =>
  readingsInForce(run, key).filter((reading) => reading.kind !== 'turns');

/** The one that leaves the least room. */
export const tightestOf = (readings: readonly GapOrSweep[]): GapOrSweep | null =>
  readings.reduce<GapOrSweep | null>(
    (tightest, reading) => (tightest && angleOf(tightest) >= angleOf(reading) ? tightest : reading),
    null,
  );

/** Width of the shoulder all round when the outside of the box is not planned yet, mm. An estimate, no source. */
const ASSUMED_SHOULDER = 4;

const jointOf = ({ input, plan, bore, pair, given }: CalculatedBox): AlignedJoint => ({
  pitch: input.pitch,
  hand: given.rig.hand,
  opening: bore.mean,
  tenon: pair.tenon.diameter,
  depth: pair.tenon.depth,
  clearance: plan.clearance.clearance,
  threads: input.threads,
  cutterRadius: input.cutter.radius,
  shoulder: input.outside ?? mm(pair.tenon.diameter + 2 * ASSUMED_SHOULDER),
});

/** The newest set-up of the other piece that was not given up. */
const otherRun = (box: Box, run: RunState, runs: ReadonlyMap<string, RunState>): RunState | undefined =>
  box.setUps
    .filter(({ part }) => part !== run.part)
    .map(({ runId }) => runs.get(runId))
    .findLast((other) => other !== undefined && other.closed !== 'abandoned' && !other.contested);

/** What the other piece's set-up says of the same angle: nothing, that it is the same, or what was read there. */
const otherPiece = (run: RunState, other: RunState | undefined, key: string): Result<OtherPiece> => {
  const isSameSetting = run.steps.some(
    ({ step, status }) => step.key === 'lock-post' && status === 'carried',
  );
  if (other && isSameSetting) return ok({ known: 'same-setting' });
  const tightest = other ? tightestOf(gapsAndSweeps(other, key)) : null;
  if (!tightest) return ok({ known: 'nothing' });
  const measured = measuredAngle(tightest);
  return measured.ok ? ok({ known: 'measured', measured: measured.value, sameWay: null }) : measured;
};

/** Judges a reading of a step by the joint of its box. */
export const judgeSetting = (
  reading: GapOrSweep,
  { run, key }: { readonly run: RunState; readonly key: string },
  { box, calculated, runs }: SetUpBox,
): Result<SettingJudgement> => {
  const other = otherPiece(run, otherRun(box, run, runs), key);
  if (!other.ok) return other;
  return judgeReading(reading, {
    joint: jointOf(calculated),
    part: run.part,
    other: other.value,
    together: together(calculated.given.rig.recessDial),
  });
};

/** A box as it is set up: its record, what follows from it, and its set-ups by run id. */
interface SetUpBox {
  readonly box: Box;
  readonly calculated: CalculatedBox;
  readonly runs: ReadonlyMap<string, RunState>;
}
