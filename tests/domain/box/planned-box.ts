import type { Given } from '../../../src/domain/box/given.ts';
import type { Box, Plan, Rig } from '../../../src/domain/box/records.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { sampleBox } from '../../storage/sample-log.ts';

export const length = (value: number, text = `${value} mm`) => ({ mm: mm(value), text });

/** A plain box: 50 mm, 10 to the inch, cherry on end grain, a wanted clearance of 0.35 mm. */
export const PLAN: Plan = {
  route: 'recess-first',
  recessIn: 'lid',
  lid: { wood: 'Cherry, black', grain: 'end' },
  base: { wood: 'Cherry, black', grain: 'end' },
  insert: null,
  pitch: length(2.54, '10 tpi'),
  opening: length(50),
  outside: null,
  aim: { by: 'fit', clearance: length(0.35) },
  threads: 3,
  passes: 'two-thirds',
};

/** A box of that plan, in no log. */
export const plannedBox = (change: Partial<Box> = {}): Box => sampleBox({ plan: PLAN, ...change });

/** What a plan is calculated with beside the box: this rig, a caliper of no known offset, no wood of one's own. */
export const givenOf = (rig: Rig): Given => ({
  rig,
  caliper: { name: 'Caliper', insideMinusOutside: null },
  ownWoods: new Map(),
});
