import { flankShifts } from '../joint/flank-shifts.ts';
import { type LearnedTip, learnTipFlat, type ScrapPair } from '../joint/tip-flat.ts';
import type { Result } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';

type Pair = Omit<ScrapPair, 'flankShifts' | 'includedAngle' | 'uncertainty'>;

/** The tip flat found from a scrap pair; with the cutter's radius known, the helix's own share of the play is taken off first. */
export const learnTip = (pair: Pair, cutterRadius: Millimetres | null): Result<LearnedTip> => {
  if (cutterRadius === null) return learnTipFlat(pair);
  const shifts = flankShifts({
    pitch: pair.pitch,
    recess: { diameter: pair.recess, depth: pair.recessDepth },
    tenon: { diameter: pair.tenon, depth: pair.tenonDepth },
    cutterRadius,
  });
  // A cutter that could not have cut this pair says nothing about it.
  return shifts.ok
    ? learnTipFlat({ ...pair, flankShifts: mm(shifts.value.recess + shifts.value.tenon) })
    : learnTipFlat(pair);
};
