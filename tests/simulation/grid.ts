/** The long grids run when LIDWRIGHT_SLOW=1; the usual run takes a part of each. */
export const SLOW = process.env.LIDWRIGHT_SLOW === '1';

/** All of a grid, or what the usual run takes of it. */
export const grid = <T>(usual: readonly T[], more: readonly T[]): readonly T[] =>
  SLOW ? [...usual, ...more] : usual;

export const inDeg = (angle: number): number => (angle * 180) / Math.PI;
export const inRad = (angle: number): number => (angle * Math.PI) / 180;
