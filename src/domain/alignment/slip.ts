import { firstRefusal, ok, type Refusal, type Result, refuse, within } from '../result.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import { length, SLOPE, signedLength } from './inputs.ts';

/** An earlier pass, and how far along the work it lies from where the last pass would have put it. */
export interface SlippedPass {
  readonly depth: Millimetres;
  readonly slip: Millimetres;
}

export interface SlipEffect {
  /** Slip that the last pass cuts away without a trace: (dN - dj) tan A, for the pass that matters most. */
  readonly absorbed: Millimetres;
  /** How much wider the groove, and so thinner the ridge, has become. */
  readonly widening: Millimetres;
  /** The same as a share of half the pitch. */
  readonly lostShare: number;
}

const badDepths = (last: number, earlier: number): Refusal | undefined =>
  firstRefusal(length('lastDepth', last, 24), within('earlierDepth', earlier, 0, last));
const badPitch = (pitch: number): Refusal | undefined => firstRefusal(within('pitch', pitch, 0.25, 12.7));

/**
 * What slips between passes leave in the groove: widening W = max over passes of max(0, |e| - (dN - dj) tan A), mm.
 * Each slip is relative to the last pass; no earlier pass may be deeper than the last. Within 0.2 um of simulated passes.
 * With no earlier pass nothing is lost.
 */
export const slipEffect = (
  pitch: Millimetres,
  lastDepth: Millimetres,
  earlier: readonly SlippedPass[],
): Result<SlipEffect> => {
  const bad = badPitch(pitch) ?? firstRefusal(length('lastDepth', lastDepth, 24));
  if (bad) return refuse(bad);
  let worst = { absorbed: lastDepth * SLOPE, excess: Number.NEGATIVE_INFINITY };
  for (const { depth, slip } of earlier) {
    const badPass = badDepths(lastDepth, depth) ?? firstRefusal(signedLength('slip', slip, 25));
    if (badPass) return refuse(badPass);
    const absorbed = (lastDepth - depth) * SLOPE;
    const excess = Math.abs(slip) - absorbed;
    if (excess > worst.excess) worst = { absorbed, excess };
  }
  const widening = Math.max(0, worst.excess);
  return ok({ absorbed: mm(worst.absorbed), widening: mm(widening), lostShare: widening / (pitch / 2) });
};

/**
 * The slip before the last pass that costs no more than `share` of half the pitch, mm: (dN - dprev) tan A + share P/2.
 * A spring pass (equal depths) absorbs nothing. Share 0 to 1.
 */
export const slipAllowed = (
  pitch: Millimetres,
  lastDepth: Millimetres,
  previousDepth: Millimetres,
  share: number,
): Result<Millimetres> => {
  const bad =
    badPitch(pitch) ??
    badDepths(lastDepth, previousDepth) ??
    firstRefusal(within('share', share, 0, 1, 'ratio'));
  return bad ? refuse(bad) : ok(mm((lastDepth - previousDepth) * SLOPE + (share * pitch) / 2));
};

/** How far a slip turns the thread's start against shoulder and grain: 2 pi e/P, rad, with the sign of the slip. Never absorbed by a later pass. */
export const slipPhase = (slip: Millimetres, pitch: Millimetres): Result<Radians> => {
  const bad = badPitch(pitch) ?? firstRefusal(signedLength('slip', slip, 25));
  return bad ? refuse(bad) : ok(rad((2 * Math.PI * slip) / pitch));
};
