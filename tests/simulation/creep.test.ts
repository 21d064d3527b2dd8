import { describe, expect, test } from 'vitest';
import { creepTaper, postTurned } from '../../src/domain/alignment/creep.ts';
import { mm, rad } from '../../src/domain/units/brands.ts';
import { value } from './answer.ts';
import { grid, inRad } from './grid.ts';
import { rootAt, type Sweep } from './groove.ts';
import { aboutPost, jigAt, turned, type Vec } from './rigid.ts';

const PITCH = 2.54;
const TURNS = 4;
const jig = jigAt(-36, 0, 0, 0);
/** The cutter touches the work at its rear, 21 mm from the work's axis. */
const CONTACT: Vec = [-15, 0, 0];

describe('a post that creeps during the cut', () => {
  const cases = grid([0.1, 0.02], [0.05, -0.1]).flatMap((crept) =>
    [80, -60].map((lever) => [crept, lever] as const),
  );
  test.each(cases)(
    'by %s degrees at a lever of %s mm makes the taper foretold, within a fiftieth',
    (crept, lever) => {
      const post: Vec = [-60, 0, CONTACT[2] - lever];
      const perTurn = inRad(crept) / TURNS;
      const sweep: Sweep = {
        part: 'tenon',
        pitch: PITCH,
        cutter: { radius: 15, tipFlat: 0.2 },
        jig: (crank) => aboutPost(jig, post, (perTurn * crank) / (2 * Math.PI)),
      };
      const roots = [];
      for (let turn = 0; turn <= TURNS; turn += 1) roots.push(rootAt(sweep, 0, turn));
      const slope = ((roots.at(-1) ?? 0) - (roots[0] ?? 0)) / (TURNS * PITCH);
      const taper = value(creepTaper(mm(lever), rad(inRad(crept)), mm(TURNS * PITCH)));
      // Work carried to the rear comes nearer to a cutter that stands behind it.
      expect(Math.abs(slope + taper)).toBeLessThan(0.02 * Math.abs(taper));
    },
  );
});

test('a post turned between passes shifts the contact as foretold, within 0.5 %', () => {
  for (const angle of [0.1, -0.3, 0.5])
    for (const [across, along] of [
      [-60, -80],
      [45, 80],
    ] as const) {
      const exact = turned(aboutPost(jig, [0, 0, 0], inRad(angle)).turn, [across, 0, along]);
      const { radial, axial } = value(postTurned(mm(across), mm(along), rad(inRad(angle))));
      const error = Math.hypot(radial - (exact[0] - across), axial - (exact[2] - along));
      expect(error).toBeLessThan(0.005 * Math.hypot(radial, axial));
    }
});
