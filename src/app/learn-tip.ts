import { flankShift } from '../domain/joint/helix.ts';
import { type LearnedTip, learnTipFlat, type ScrapPair } from '../domain/joint/tip-flat.ts';
import type { Result } from '../domain/result.ts';
import { type Millimetres, mm } from '../domain/units/brands.ts';

type Pair = Omit<ScrapPair, 'flankShifts' | 'uncertainty'>;

/** The tip flat that a scrap pair tells; with the cutter's radius known, the helix's own share of the play is taken off first. */
export const learnTip = (pair: Pair, cutterRadius: Millimetres | null): Result<LearnedTip> => {
  if (cutterRadius === null) return learnTipFlat(pair);
  // The helix is looked at half-way up the engaged flank.
  const workRadius = mm((pair.recess + pair.tenon) / 4);
  const half = (pair.tenon - pair.recess) / 4;
  const shift = (part: 'recess' | 'tenon', depth: number) =>
    flankShift({ part, pitch: pair.pitch, workRadius, cutterRadius: mm(cutterRadius - (depth - half)) });
  const recess = shift('recess', pair.recessDepth);
  const tenon = shift('tenon', pair.tenonDepth);
  // A cutter that could not have cut this pair says nothing about it.
  return recess.ok && tenon.ok
    ? learnTipFlat({ ...pair, flankShifts: mm(recess.value + tenon.value) })
    : learnTipFlat(pair);
};
