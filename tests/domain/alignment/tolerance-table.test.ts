import { expect, test } from 'vitest';
import {
  type AlignedJoint,
  leanLimits,
  squareLimits,
  tiltLimit,
} from '../../../src/domain/alignment/tolerance.ts';
import type { Result } from '../../../src/domain/result.ts';
import { degreesFromRad, mm, type Radians } from '../../../src/domain/units/brands.ts';

/*
 * Source of the expected numbers: this project's own geometric model, tabled to two figures before the code was written. A cross-check of
 * the code against the model, not against the world.
 */

const value = <T>(answer: Result<T>): T => {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
};
const deg = (angle: Radians) => degreesFromRad(angle);

/** Engagement 75 % of 0.75 H, 2.5 turns, shoulder 8 mm wider than the tenon. */
const jointOf = (pitch: number, opening: number, cutterRadius: number): AlignedJoint => {
  const coarse = pitch === 2.54;
  const engaged = 0.75 * 0.75 * (pitch / (2 * Math.tan(Math.PI / 6)));
  const tenon = opening + 2 * engaged;
  return {
    pitch: mm(pitch),
    hand: 'right',
    opening: mm(opening),
    tenon: mm(tenon),
    depth: mm(coarse ? 1.639 : 1.025),
    clearance: mm(coarse ? 0.2 : 0.15),
    threads: 2.5,
    cutterRadius: mm(cutterRadius),
    shoulder: mm(tenon + 8),
  };
};

const columns = [
  [2.54, 25, 8],
  [2.54, 50, 15],
  [2.54, 75, 20],
  [1.5875, 25, 8],
  [1.5875, 50, 15],
  [1.5875, 75, 20],
].map(([pitch = 0, opening = 0, cutter = 0]) => jointOf(pitch, opening, cutter));

const rows: readonly (readonly [string, (joint: AlignedJoint) => number, readonly number[], number])[] = [
  ['mismatch', (j) => deg(value(leanLimits(j)).mismatch), [1, 1, 1, 1.2, 1.2, 1.2], 0.005],
  ['lean each, same wall', (j) => deg(value(leanLimits(j)).each), [0.5, 0.5, 0.5, 0.6, 0.6, 0.6], 0.005],
  ['lean each at which it binds', (j) => deg(value(leanLimits(j)).binds) / 2, [2, 2, 2, 2.4, 2.4, 2.4], 0.05],
  ['tilt of a recess', (j) => deg(value(tiltLimit(j, 'recess'))), [2.6, 2, 2, 2, 1.6, 1.6], 0.05],
  ['tilt of a tenon', (j) => deg(value(tiltLimit(j, 'tenon'))), [5.6, 4.3, 3.8, 4.6, 3.5, 3.1], 0.05],
  [
    'out of square, flush',
    (j) => deg(value(squareLimits(j)).flush),
    [0.22, 0.12, 0.083, 0.18, 0.094, 0.064],
    0.005,
  ],
  [
    'out of square at the lean limit',
    (j) => deg(value(squareLimits(j, mm((j.clearance * Math.tan(Math.PI / 6)) / 4))).flush),
    [0.17, 0.09, 0.062, 0.13, 0.07, 0.048],
    0.005,
  ],
  [
    'out of square, paper at the rim',
    (j) => deg(value(squareLimits(j)).paperAtRim),
    [0.3, 0.17, 0.12, 0.26, 0.14, 0.097],
    0.005,
  ],
];

test.each(rows)('%s', (_name, limitOf, expected, half) => {
  // Half of the last figure tabled, and a little for the table's own rounded inputs.
  for (const [column, wanted] of expected.entries()) {
    const joint = columns[column];
    if (!joint) throw new Error('no such column');
    expect(
      Math.abs(limitOf(joint) - wanted),
      `column ${column}: ${limitOf(joint)} for ${wanted}`,
    ).toBeLessThan(half * 1.05);
  }
});
