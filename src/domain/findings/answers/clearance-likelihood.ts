import type { ClearanceTrial } from '../rows/joint-row.ts';
import { normalCdf } from '../statistics/distributions.ts';

/**
 * What the trials of one fit say about the clearance that this joint wanted, xi: more than `above` + w, less than `below` - w,
 * within w of each of the clearances from `rightFrom` to `rightTo`; w is half the band that feels right.
 */
export interface Wanted {
  readonly above: number;
  readonly below: number;
  readonly rightFrom: number;
  readonly rightTo: number;
  /** How many joints say exactly this. */
  readonly count: number;
}

const NONE = Number.POSITIVE_INFINITY;

/** Trials of one fit together: one statement a joint, since its trials share one xi. */
export const wantedBy = (trials: readonly ClearanceTrial[]): Omit<Wanted, 'count'> => {
  const of = (felt: ClearanceTrial['felt']) =>
    trials.filter((trial) => trial.felt === felt).map((trial) => rounded(trial.clearance));
  return {
    above: Math.max(-NONE, ...of('tight')),
    below: Math.min(NONE, ...of('slack')),
    rightFrom: Math.min(NONE, ...of('right')),
    rightTo: Math.max(-NONE, ...of('right')),
  };
};

/** Hundredths of a millimetre: finer than any caliper here, and equal statements can be counted together. */
const rounded = (clearance: number): number => Math.round(clearance * 100) / 100;

/** Whether no xi fits all of it, whatever the band: tight, then right or slack at less clearance. */
export const contradicts = (w: Omit<Wanted, 'count'>): boolean =>
  w.above >= w.below || w.above >= w.rightFrom || w.rightTo >= w.below;

/** Share of joints that are tight or slack for some other reason than size, and then say any of three things. */
const OTHER_REASON = 0.1;

/** log likelihood of all statements when xi ~ N(mean, spread) and half the band is `band`. */
export const logLikelihood = (
  statements: readonly Wanted[],
  mean: number,
  spread: number,
  band: number,
): number => {
  let sum = 0;
  for (const s of statements) {
    const low = Math.max(s.above + band, s.rightTo - band);
    const high = Math.min(s.below - band, s.rightFrom + band);
    const chance = high > low ? phi((high - mean) / spread) - phi((low - mean) / spread) : 0;
    sum += s.count * Math.log((1 - OTHER_REASON) * chance + OTHER_REASON / 3);
  }
  return sum;
};

const REACH = 8;
const PER_UNIT = 128;
const TABLE = Float64Array.from({ length: 2 * REACH * PER_UNIT + 2 }, (_, i) =>
  normalCdf(i / PER_UNIT - REACH),
);

/** The library's normal distribution function as a table, because millions of values are needed. Linear interpolation is within 2e-6. */
const phi = (z: number): number => {
  if (z <= -REACH) return 0;
  if (z >= REACH) return 1;
  const at = (z + REACH) * PER_UNIT;
  const below = Math.floor(at);
  const from = TABLE[below] as number;
  return from + ((TABLE[below + 1] as number) - from) * (at - below);
};
