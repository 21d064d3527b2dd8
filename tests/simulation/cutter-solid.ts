import type { Vec } from './rigid.ts';

/** The spinning cutter as a solid of revolution about the lathe's axis: a disc with a flat tip and 30 degree flanks. */
export interface Cutter {
  readonly radius: number;
  readonly tipFlat: number;
}

const T = Math.tan(Math.PI / 6);

/** Most that a point fails any of the solid's conditions by; inside when zero or less. Convex along any line. */
export const outsideBy = ({ radius, tipFlat }: Cutter, [x, y, z]: Vec): number => {
  const rho = Math.hypot(x, y);
  return Math.max(Math.abs(z) - tipFlat / 2 - (radius - rho) * T, rho - radius);
};

export interface Span {
  readonly low: number;
  readonly high: number;
}

/**
 * Where a line `from + s along` lies in the solid. Exact: the solid is where two cones and a cylinder overlap, each met at the root of a
 * quadratic. The line must lie nearer to the axis' direction than 60 degrees. An empty span has low > high.
 */
export const spanIn = ({ radius, tipFlat }: Cutter, from: Vec, along: Vec): Span => {
  const height = tipFlat / 2 + radius * T;
  const bb = along[0] * along[0] + along[1] * along[1];
  const ab = from[0] * along[0] + from[1] * along[1];
  const aa = from[0] * from[0] + from[1] * from[1];
  // z + T rho <= height bounds s above, -z + T rho <= height below; squared: T^2 rho^2 = (height - side z)^2.
  const bound = (side: 1 | -1): number => {
    const [q, u] = [height - side * from[2], side * along[2]];
    const a = u * u - T * T * bb;
    const half = q * u + T * T * ab;
    const inside = half * half - a * (q * q - T * T * aa);
    if (inside < 0) return Number.NaN;
    return u > 0 ? (half - Math.sqrt(inside)) / a : (half + Math.sqrt(inside)) / a;
  };
  let [low, high] = [bound(-1), bound(1)];
  if (Number.isNaN(low) || Number.isNaN(high)) return { low: 1, high: -1 };
  if (bb < 1e-24) return aa <= radius * radius ? { low, high } : { low: 1, high: -1 };
  const within = ab * ab - bb * (aa - radius * radius);
  if (within < 0) return { low: 1, high: -1 };
  low = Math.max(low, (-ab - Math.sqrt(within)) / bb);
  high = Math.min(high, (-ab + Math.sqrt(within)) / bb);
  return { low, high };
};
