import { type Level, zOf } from '../../../src/domain/findings/statistics/distributions.ts';
import type { Design, FirthFit } from '../../../src/domain/findings/statistics/firth.ts';
import { profileEnd } from '../../../src/domain/findings/statistics/firth-profile.ts';

/** Both ends of the profile interval of one coefficient. */
export const profileEnds = (design: Design, fit: FirthFit, index: number, level: Level = 0.95) => ({
  low: profileEnd(design, fit, index, -1, zOf(level)),
  high: profileEnd(design, fit, index, 1, zOf(level)),
});
