import type { JointRow, StepAtCut, StepOutcome } from '../../../src/domain/findings/rows/joint-row.ts';
import { mm } from '../../../src/domain/units/brands.ts';

const step = (outcome: StepOutcome): StepAtCut => ({ outcome, carriedOver: false, exactMs: null });

/** A joint in a plain wood, right at the first trial, with these steps in the recess. */
export const rowOf = (
  number: number,
  outcomes: Readonly<Record<string, StepOutcome>>,
  rest: Partial<JointRow> = {},
): JointRow => ({
  id: `joint-${number}`,
  log: 'mine',
  boxNumber: number,
  day: `2026-${String(1 + Math.floor(number / 28)).padStart(2, '0')}-${String(1 + (number % 28)).padStart(2, '0')}`,
  cluster: `c${number}`,
  rig: 'rig',
  experience: number,
  wood: 'cherry',
  woodGroup: 'hardwood',
  hardness: 4200,
  pitch: mm(2.54),
  hardener: 'none',
  insertRing: false,
  steps: {
    recess: Object.fromEntries(Object.entries(outcomes).map(([key, outcome]) => [key, step(outcome)])),
    tenon: {},
  },
  firstTry: 'right',
  symptoms: [],
  clearanceTrials: [],
  tipFlatKnown: true,
  ...rest,
});
