import { ok, type Result, refuse } from '../result.ts';
import type { Part } from '../setup/events.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { fullEngagement } from './engagement.ts';
import { type CutPiece, fitOf, type Pair } from './fit.ts';
import { LEAST_CREST, LEAST_CREST_GAP, LEAST_ENGAGEMENT } from './least.ts';
import { SLOPE } from './profile.ts';

/** A limit that a pair would break once both pieces are cut, with the number that breaks it. */
export type BrokenLimit =
  | { readonly code: 'engagement-low'; readonly percent: number }
  | { readonly code: 'crest-thin'; readonly part: Part; readonly crestFlat: Millimetres }
  /** The part's crests reach the other's roots; a gap below nothing is interference, radial. */
  | { readonly code: 'crests-meet'; readonly part: Part; readonly gap: Millimetres };

/** Room for the last bits of a sum, mm. */
const NOTHING = 1e-9;

/** Crest flat that a cut leaves, mm: P - f - 2 s - 2 d tan A; below nothing the crest itself is cut away. Exact. */
const crestLeft = (pitch: number, { depth, tipFlat, flankShift }: Omit<CutPiece, 'diameter'>): number =>
  pitch - tipFlat - 2 * (flankShift ?? 0) - 2 * depth * SLOPE;

/** Deepest cut that leaves the least crest, mm; below nothing where no cut does. Exact. */
export const deepestFor = (
  pitch: number,
  { tipFlat, flankShift }: Omit<CutPiece, 'diameter' | 'depth'>,
): number => (pitch - tipFlat - 2 * (flankShift ?? 0) - LEAST_CREST) / (2 * SLOPE);

/**
 * Where the recess's crests reach the tenon's roots or are too thin: the diameter (mm) to bore them out to, its thread left as it is. Null
 * where that would leave too little thread.
 */
export const boreCrestsTo = (pair: Pair): Millimetres | null => {
  const fit = fitOf(pair);
  if (!fit.ok) return null;
  const thin = (LEAST_CREST - crestLeft(pair.pitch, pair.recess)) / (2 * SLOPE);
  const bored = mm(pair.recess.diameter + 2 * Math.max(0, thin, LEAST_CREST_GAP - fit.value.recessCrestGap));
  const left = (pair.tenon.diameter - bored) / 2;
  return left < (LEAST_ENGAGEMENT / 100) * fullEngagement(pair.pitch, '0.75H') ? null : bored;
};

/** The limits that a pair breaks, the weightiest first; none is a thread that holds and clears. Exact for the ideal profile. */
export const brokenLimits = (pair: Pair): Result<readonly BrokenLimit[]> => {
  const fit = fitOf(pair);
  if (!fit.ok) return refuse(fit.error);
  const { percentOf75, tenonCrestGap, recessCrestGap } = fit.value;
  const broken: BrokenLimit[] = [];
  if (percentOf75 < LEAST_ENGAGEMENT - NOTHING) broken.push({ code: 'engagement-low', percent: percentOf75 });
  for (const part of ['recess', 'tenon'] as const) {
    const gap = part === 'recess' ? recessCrestGap : tenonCrestGap;
    if (gap < -NOTHING) broken.push({ code: 'crests-meet', part, gap });
    const crestFlat = mm(crestLeft(pair.pitch, pair[part]));
    if (crestFlat < LEAST_CREST - NOTHING) broken.push({ code: 'crest-thin', part, crestFlat });
  }
  return ok(broken);
};
