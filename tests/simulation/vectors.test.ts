import { expect, test } from 'vitest';
import table from '../../shared/joint-vectors.json' with { type: 'json' };
import { type Sweep, wallsAt } from './groove.ts';
import { playOf } from './mating.ts';
import { cutJoint } from './pieces.ts';
import { jigAt } from './rigid.ts';

/* Source of the numbers: shared/joint-vectors.json, brute-force results of a separate program of this project. This simulation shares no code with it. */

interface Vector {
  readonly id: string;
  readonly item: string;
  readonly fn: string;
  readonly inputs: Readonly<Record<string, number | boolean | string>>;
  readonly outputs: Readonly<Record<string, number>>;
  readonly tol?: number;
}
const vectors = (table.vectors as unknown as readonly Vector[]).filter(({ item }) => /^sim/.test(item));

const run: Readonly<Record<string, (n: (key: string) => number, vector: Vector) => Record<string, number>>> =
  {
    grooveWalls: (n, { inputs }) => {
      const jig = jigAt(n('ax'), n('v'), n('yawDeg'), n('tiltDeg'));
      const sweep: Sweep = {
        part: inputs.external ? 'tenon' : 'recess',
        pitch: n('P'),
        cutter: { radius: n('Rc'), tipFlat: n('f') },
        jig: () => jig,
      };
      const azimuth = Math.atan2(-n('v'), -n('ax'));
      const { low, high } = wallsAt(sweep, n('r'), azimuth);
      return { sLo: low, sHi: high };
    },
    matePlay: (n, { inputs }) => {
      const joint = {
        pitch: n('P'),
        opening: n('Dr'),
        engagement: n('E'),
        clearance: n('c'),
        tipFlat: n('f'),
        cutterRadius: { tenon: n('RcMale'), recess: n('RcFemale') },
      };
      const stood = { yawDeg: inputs.case === 'yaw 2 both, same wall' ? 2 : 0, side: 1 } as const;
      return { play: playOf(cutJoint(joint, { tenon: stood, recess: stood }), { azimuths: 8, radii: 5 }) };
    },
  };

test('every simulated vector is run', () => {
  expect(vectors.filter(({ item }) => item === 'sim').length).toBeGreaterThan(0);
  expect(vectors.filter(({ item }) => item === 'sim3d').map(({ inputs }) => inputs.case)).toEqual([
    'no yaw',
    'yaw 2 both, same wall',
  ]);
  expect(vectors.filter(({ fn, tol }) => !(fn in run) || tol === undefined)).toEqual([]);
});

test.each(vectors.map((vector) => [vector.id, vector] as const))('%s', (_id, vector) => {
  const number = (key: string): number => {
    const found = vector.inputs[key];
    if (typeof found !== 'number') throw new Error(`${vector.id} has no ${key}`);
    return found;
  };
  const got = run[vector.fn]?.(number, vector) ?? {};
  for (const [key, expected] of Object.entries(vector.outputs))
    expect(Math.abs((got[key] ?? Number.NaN) - expected), `${key}: ${got[key]}`).toBeLessThanOrEqual(
      vector.tol ?? 0,
    );
});
