import type { Span } from './cutter-solid.ts';
import { type Sweep, wallsAt } from './groove.ts';

/** Where, and how closely, two threaded pieces are felt for contact. */
export interface Feeling {
  readonly azimuths: number;
  readonly radii: number;
}

export interface Mate {
  readonly tenon: Sweep;
  readonly recess: Sweep;
  /** Crest radii of both pieces: overlap lies between them. */
  readonly crest: { readonly tenon: number; readonly recess: number };
}

/**
 * How far the tenon can stand in the recess, along the axis, without wood in wood: the tenon is really turned end for end about a line
 * across the lathe (azimuth and s change sign), turned on by `turnedOn` clockwise as seen from behind it, and pushed in by `low` to `high`.
 * Empty (low > high) by as much as the ridge is too thick.
 */
export const standing = (
  { tenon, recess, crest }: Mate,
  turnedOn = 0,
  { azimuths, radii }: Feeling = { azimuths: 4, radii: 3 },
): Span => {
  const pitch = Math.abs(tenon.pitch);
  let [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let i = 0; i < azimuths; i += 1) {
    const azimuth = (2 * Math.PI * i) / azimuths;
    for (let j = 0; j < radii; j += 1) {
      const radius = crest.recess + ((crest.tenon - crest.recess) * j) / (radii - 1);
      const groove = wallsAt(recess, radius, azimuth);
      const own = wallsAt(tenon, radius, turnedOn - azimuth);
      // The ridge before the tenon's groove, turned end for end, lies from -own.low - pitch to -own.high.
      low = Math.max(low, groove.low + own.low + pitch);
      high = Math.min(high, groove.high + own.high);
    }
  }
  return { low, high };
};

export const playOf = (mate: Mate, feeling?: Feeling): number => {
  const { low, high } = standing(mate, 0, feeling);
  return high - low;
};
