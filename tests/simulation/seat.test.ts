import { expect, test } from 'vitest';
import { shoulderRemoval } from '../../src/domain/joint/seat.ts';
import { mm, rad } from '../../src/domain/units/brands.ts';
import { value } from './answer.ts';
import { grid, inRad } from './grid.ts';
import { standing } from './mating.ts';
import { cutJoint, type Joint, type Stood } from './pieces.ts';

const joint: Joint = {
  pitch: 2.54,
  opening: 40,
  engagement: 75,
  clearance: 0.2,
  tipFlat: 0.2,
  cutterRadius: { tenon: 15, recess: 12 },
};
const STRAIGHT: Stood = { yawDeg: 0, side: 1 };

test.each(
  grid<Stood>([STRAIGHT, { yawDeg: 0.5, side: 1 }], [{ yawDeg: 2, side: -1 }]).flatMap((stood) =>
    grid([40, 200], [5, 90, 359]).map((toGo) => [stood.yawDeg, stood.side, toGo] as const),
  ),
)(
  'yaw %s, side %s: turning on by %s degrees moves the seat by what is taken off, within 2 um',
  (yawDeg, side, toGo) => {
    const mate = cutJoint(joint, { tenon: STRAIGHT, recess: { yawDeg, side } });
    const removed = value(shoulderRemoval(mm(joint.pitch), rad(inRad(toGo))));
    const [now, then] = [standing(mate), standing(mate, inRad(toGo))];
    expect(Math.abs(then.low - now.low - removed)).toBeLessThan(0.002);
    expect(Math.abs(then.high - now.high - removed)).toBeLessThan(0.002);
  },
);

test('a left-hand lid goes on the other way', () => {
  const mate = cutJoint(joint, { tenon: STRAIGHT, recess: STRAIGHT }, 'left');
  const removed = value(shoulderRemoval(mm(joint.pitch), rad(inRad(40))));
  expect(standing(mate).low - standing(mate, inRad(40)).low).toBeCloseTo(removed, 3);
});
