import type { SettingJudgement } from '../domain/alignment/judge-setting.ts';
import { depthReached } from '../domain/box/cuts.ts';
import { passesOf } from '../domain/box/pair.ts';
import { type GapOrSweep, gapsAndSweeps, judgeSetting, tightestOf } from '../domain/box/setting.ts';
import { type SlipAllowance, slipAllowance } from '../domain/box/slip-allowance.ts';
import type { Part } from '../domain/setup/events.ts';
import type { RunState } from '../domain/setup/fold.ts';
import type { Turns } from '../domain/units/brands.ts';
import { boxById, runsOf } from './boxes.ts';
import { calculateBox } from './calculated.ts';

/** Readings of a step, and what the tightest of them means for the joint; no verdict when the plan does not hold together. */
interface ReadingsJudged {
  readonly readings: readonly GapOrSweep[];
  readonly tightest: GapOrSweep | null;
  readonly verdict: SettingJudgement | null;
}

/** Judges what was read at a step by the joint of its box. */
export const judgeStep = async (run: RunState, key: string): Promise<ReadingsJudged> => {
  const readings = gapsAndSweeps(run, key);
  const tightest = tightestOf(readings);
  const onHand = await boxById(run.boxId);
  if (!tightest || !onHand) return { readings, tightest, verdict: null };
  const { box } = onHand;
  const calculated = await calculateBox(box);
  if (!calculated.ok) return { readings, tightest, verdict: null };
  const verdict = judgeSetting(
    tightest,
    { run, key },
    { box, calculated: calculated.value, runs: await runsOf(box) },
  );
  return { readings, tightest, verdict: verdict.ok ? verdict.value : null };
};

/** Turns of the crank that the plan expects for this piece; null when there is no plan to tell. */
export const plannedTurns = async ({ boxId, part }: RunState): Promise<Turns | null> => {
  const onHand = await boxById(boxId);
  const calculated = onHand && (await calculateBox(onHand.box));
  if (!calculated?.ok) return null;
  const { recessTurns, tenonTurns } = calculated.value.plan.lengths;
  return part === 'recess' ? recessTurns : tenonTurns;
};

/** What the passes still to cut make good if the groove of this piece is missed; null without a groove or a plan. */
export const slipAllowanceOf = async (boxId: string, part: Part): Promise<SlipAllowance | null> => {
  const onHand = await boxById(boxId);
  const calculated = onHand && (await calculateBox(onHand.box));
  const passes = calculated?.ok ? passesOf(part, calculated.value) : null;
  if (!onHand || !passes?.ok) return null;
  const reached = depthReached(onHand.box, part);
  return slipAllowance(
    reached?.mm ?? null,
    passes.value.map(({ depth }) => depth),
  );
};
