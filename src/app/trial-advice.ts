import type { Box, Trial } from '../domain/box/records.ts';
import { type Advice, adviceFor } from '../domain/joint/advice.ts';
import type { TwoTries } from '../domain/joint/correction.ts';
import type { Pair } from '../domain/joint/fit.ts';
import type { KnownJoint } from '../domain/joint/trial-evidence.ts';
import type { Result } from '../domain/result.ts';
import { mm, turns } from '../domain/units/brands.ts';
import { depthReached } from './cutting.ts';
import type { Reckoned } from './plan-of.ts';

/** The pair as measured and cut; null until both pieces are both. */
export const pairAsCut = (box: Box, { pair, isBoreMeasured, tenon }: Reckoned): Pair | null => {
  const recessDepth = depthReached(box.cuts, 'recess');
  const tenonDepth = depthReached(box.cuts, 'tenon');
  if (!isBoreMeasured || !tenon || !recessDepth || !tenonDepth) return null;
  return {
    ...pair,
    recess: { ...pair.recess, depth: recessDepth.mm },
    tenon: { ...pair.tenon, diameter: tenon.mean, depth: tenonDepth.mm },
  };
};

/** How far the lid went on before and after the last deepening, where both were counted. */
const triesOf = (box: Box, trial: Trial): TwoTries | null => {
  const before = box.trials.filter(({ seq, turnsOn }) => seq < trial.seq && turnsOn !== null).at(-1);
  if (!before || before.turnsOn === null || trial.turnsOn === null) return null;
  const upTo = (seq: number, part: 'recess' | 'tenon'): number =>
    depthReached(
      box.cuts.filter((cut) => cut.seq <= seq),
      part,
    )?.mm ?? 0;
  const deepened =
    upTo(trial.seq, 'tenon') -
    upTo(before.seq, 'tenon') +
    upTo(trial.seq, 'recess') -
    upTo(before.seq, 'recess');
  return deepened > 0
    ? { deepened: mm(deepened), turnsBefore: turns(before.turnsOn), turnsAfter: turns(trial.turnsOn) }
    : null;
};

/** All that the log knows of a joint at a trial. Planned lengths are no measurement. */
export const knownJoint = (box: Box, trial: Trial, reckoned: Reckoned, unit: 'in' | 'mm'): KnownJoint => {
  const { plan, bore, isBoreMeasured, tenon, input } = reckoned;
  const { wall, least } = plan.wall;
  return {
    pair: pairAsCut(box, reckoned),
    wantedClearance: plan.clearance.clearance,
    threads: box.plan.threads,
    boreTaper: isBoreMeasured ? bore.taper : null,
    outOfRound: isBoreMeasured ? bore.outOfRound : null,
    tenonTaper: tenon?.taper ?? null,
    bottomGap: trial.bottomGap?.mm ?? null,
    wall: wall === null ? null : { wall, least },
    tries: triesOf(box, trial),
    onJig: box.cuts.at(-1)?.part ?? null,
    dial: input.dial,
    unit: unit === 'in' ? 'inch' : 'metric',
  };
};

export const adviceOn = (trial: Trial, known: KnownJoint): Result<Advice> =>
  adviceFor(
    {
      ...trial,
      endPlay: trial.endPlay?.mm ?? null,
      turnsOn: trial.turnsOn === null ? null : turns(trial.turnsOn),
    },
    known,
  );
