import { type Advice, adviceFor } from '../joint/advice.ts';
import type { TwoTries } from '../joint/correction.ts';
import type { KnownJoint } from '../joint/trial-evidence.ts';
import type { Result } from '../result.ts';
import { mm, turns } from '../units/brands.ts';
import type { CalculatedBox } from './calculate.ts';
import { depthReached } from './cuts.ts';
import { pairAsCut } from './pair.ts';
import type { Box, Trial } from './records.ts';
import { inSequence } from './sequence.ts';

/** How far the lid went on before and after the last deepening, where both were counted. */
const triesOf = (box: Box, trial: Trial): TwoTries | null => {
  const before = inSequence(box.trials).findLast(({ seq, turnsOn }) => seq < trial.seq && turnsOn !== null);
  if (!before || before.turnsOn === null || trial.turnsOn === null) return null;
  const upTo = (seq: number, part: 'recess' | 'tenon'): number => depthReached(box, part, seq)?.mm ?? 0;
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
export const knownJoint = (
  box: Box,
  trial: Trial,
  calculated: CalculatedBox,
  unit: 'in' | 'mm',
): KnownJoint => {
  const { plan, bore, isBoreMeasured, tenon, input, given } = calculated;
  const { wall, least } = plan.wall;
  return {
    pair: pairAsCut(box, given, trial.seq),
    wantedClearance: plan.clearance.clearance,
    threads: box.plan.threads,
    boreTaper: isBoreMeasured ? bore.taper : null,
    outOfRound: isBoreMeasured ? bore.outOfRound : null,
    tenonTaper: tenon?.taper ?? null,
    bottomGap: trial.bottomGap?.mm ?? null,
    wall: wall === null ? null : { wall, least },
    tries: triesOf(box, trial),
    onJig: inSequence(box.cuts).at(-1)?.part ?? null,
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
