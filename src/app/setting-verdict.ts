import { measuredAngle } from '../domain/alignment/measure.ts';
import type { AlignedJoint } from '../domain/alignment/tolerance.ts';
import { judgeReading, type OtherPiece, type SettingVerdict } from '../domain/alignment/verdict.ts';
import { together } from '../domain/alignment/walls.ts';
import type { Box } from '../domain/box/records.ts';
import { type SlipAllowance, slipAllowance } from '../domain/box/slip-allowance.ts';
import { ok, type Result } from '../domain/result.ts';
import type { RunState } from '../domain/setup/fold.ts';
import type { Reading } from '../domain/setup/reading.ts';
import { readingsInForce } from '../domain/setup/readings-in-force.ts';
import { mm, type Turns } from '../domain/units/brands.ts';
import { boxById, runsOf } from './boxes.ts';
import { depthReached } from './cutting.ts';
import { passesOf } from './pair-to-be.ts';
import { givenFor, planOf, type Reckoned } from './plan-of.ts';

export type GapOrSweep = Exclude<Reading, { readonly kind: 'turns' }>;

/** Readings of a step, and what the tightest of them means for the joint; no verdict when the plan does not hold together. */
export interface ReadingsJudged {
  readonly readings: readonly GapOrSweep[];
  readonly tightest: GapOrSweep | null;
  readonly verdict: SettingVerdict | null;
}

const angleOf = (reading: GapOrSweep): number => {
  const measured = measuredAngle(reading);
  return measured.ok ? Math.abs(measured.value.angle) : 0;
};
const gapsAndSweeps = (run: RunState, key: string): readonly GapOrSweep[] =>
  readingsInForce(run, key).filter((reading) => reading.kind !== 'turns');

/** The one that leaves the least room. */
const tightestOf = (readings: readonly GapOrSweep[]): GapOrSweep | null =>
  readings.reduce<GapOrSweep | null>(
    (tightest, reading) => (tightest && angleOf(tightest) >= angleOf(reading) ? tightest : reading),
    null,
  );

/** Width of the shoulder all round when the outside of the box is not planned yet, mm. An estimate, no source. */
const USUAL_SHOULDER = 4;

const jointOf = ({ input, plan, bore, pair }: Reckoned, hand: AlignedJoint['hand']): AlignedJoint => ({
  pitch: input.pitch,
  hand,
  opening: bore.mean,
  tenon: pair.tenon.diameter,
  depth: pair.tenon.depth,
  clearance: plan.clearance.clearance,
  threads: input.threads,
  cutterRadius: input.cutter.radius,
  shoulder: input.outside ?? mm(pair.tenon.diameter + 2 * USUAL_SHOULDER),
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

/** Judges what was read at a step by the joint of its box. */
export const judgeStep = async (run: RunState, key: string): Promise<ReadingsJudged> => {
  const readings = gapsAndSweeps(run, key);
  const tightest = tightestOf(readings);
  const onHand = await boxById(run.boxId);
  if (!tightest || !onHand) return { readings, tightest, verdict: null };
  const given = await givenFor(onHand.box);
  const reckoned = planOf(onHand.box, given);
  const other = otherPiece(run, otherRun(onHand.box, run, await runsOf(onHand.box)), key);
  if (!reckoned.ok || !other.ok) return { readings, tightest, verdict: null };
  const verdict = judgeReading(tightest, {
    joint: jointOf(reckoned.value, given.rig.hand),
    part: run.part,
    other: other.value,
    together: together(given.rig.recessDial),
  });
  return { readings, tightest, verdict: verdict.ok ? verdict.value : null };
};

/** Turns of the crank that the plan expects for this piece; null when there is no plan to tell. */
export const plannedTurns = async ({ boxId, part }: RunState): Promise<Turns | null> => {
  const onHand = await boxById(boxId);
  const reckoned = onHand && planOf(onHand.box, await givenFor(onHand.box));
  if (!reckoned?.ok) return null;
  const { recessTurns, tenonTurns } = reckoned.value.plan.lengths;
  return part === 'recess' ? recessTurns : tenonTurns;
};

/** What the passes still to cut make good if the groove of this piece is missed; null without a groove or a plan. */
export const slipAllowanceOf = async ({ boxId, part }: RunState): Promise<SlipAllowance | null> => {
  const onHand = await boxById(boxId);
  const reckoned = onHand && planOf(onHand.box, await givenFor(onHand.box));
  const passes = reckoned?.ok ? passesOf(part, reckoned.value) : null;
  if (!onHand || !passes?.ok) return null;
  const reached = depthReached(onHand.box.cuts, part);
  return slipAllowance(
    reached?.mm ?? null,
    passes.value.map(({ depth }) => depth),
  );
};
