/** Rigid motions in full, no small angles: x' = turn x + shift. */
export type Vec = readonly [number, number, number];
/** Row by row. */
export type Turn = readonly [Vec, Vec, Vec];
export interface Rigid {
  readonly turn: Turn;
  readonly shift: Vec;
}

const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const turned = (turn: Turn, v: Vec): Vec => [dot(turn[0], v), dot(turn[1], v), dot(turn[2], v)];
export const add = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

const column = (turn: Turn, at: 0 | 1 | 2): Vec => [turn[0][at], turn[1][at], turn[2][at]];
const product = (a: Turn, b: Turn): Turn => {
  const row = (r: Vec): Vec => [dot(r, column(b, 0)), dot(r, column(b, 1)), dot(r, column(b, 2))];
  return [row(a[0]), row(a[1]), row(a[2])];
};

/** Tailstock end to the rear (+x) for a positive angle. */
export const aboutVertical = (angle: number): Turn => [
  [Math.cos(angle), 0, Math.sin(angle)],
  [0, 1, 0],
  [-Math.sin(angle), 0, Math.cos(angle)],
];
/** Tailstock end up (+y) for a positive angle. */
const aboutAcross = (angle: number): Turn => [
  [1, 0, 0],
  [0, Math.cos(angle), Math.sin(angle)],
  [0, -Math.sin(angle), Math.cos(angle)],
];

/** The jig's axis through (x, y) in the cutter's mid-plane, yawed and then tilted; angles in degrees. */
export const jigAt = (x: number, y: number, yawDeg: number, tiltDeg: number): Rigid => ({
  turn: product(aboutVertical((yawDeg * Math.PI) / 180), aboutAcross((tiltDeg * Math.PI) / 180)),
  shift: [x, y, 0],
});
