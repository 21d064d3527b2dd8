import type { PlanInput } from '../../../src/domain/joint/plan-input.ts';
import { mm, moisture, pitchFromTpi } from '../../../src/domain/units/brands.ts';

/** Black cherry, Wood Handbook FPL-GTR-190 (2010), Table 13-5. */
export const cherry = { strain: { radial: 0.00126, tangential: 0.00248 }, grain: 'end' } as const;

/** A recess of 40 mm in cherry, for an ordinary cutter: no outside, dial or slide told. */
export const tenToTheInch: PlanInput = {
  recess: mm(40),
  pitch: pitchFromTpi(10),
  woodOfRecess: cherry,
  woodOfTenon: cherry,
  moistureSwing: moisture(3),
  cutter: { radius: mm(15), tipFlat: mm(0.2), aheadOfTooth: mm(1.9), neckRadius: null },
  aim: { by: 'fit', clearance: null },
  recessIn: 'lid',
  threads: 3,
  kerf: mm(1.6),
  film: mm(0),
  outside: null,
  turnedDepth: null,
  passes: 'two-thirds',
  dial: null,
  slide: null,
};
