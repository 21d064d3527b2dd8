import type { MeasuredAngle } from './gauge.ts';

/** How a reading stands to its tolerance. */
export type Grade = 'well-inside' | 'inside' | 'at-the-edge' | 'outside';

/** Two standard uncertainties either way, about 95 in 100 (JCGM 100, GUM, clause 6.3.3). */
const COVERAGE = 2;

/**
 * Grade of a magnitude against its limit: well inside when it is surely within half of it, inside when surely within, outside when
 * surely beyond AND a hand can feel what it does; between those, at the edge. Sure means by two standard uncertainties.
 */
export const gradeOf = (measured: MeasuredAngle, limit: number, canBeFelt: boolean): Grade => {
  const [size, doubt] = [Math.abs(measured.angle), COVERAGE * measured.uncertainty];
  if (size + doubt <= limit / 2) return 'well-inside';
  if (size + doubt <= limit) return 'inside';
  return size - doubt > limit && canBeFelt ? 'outside' : 'at-the-edge';
};

const ORDER: readonly Grade[] = ['well-inside', 'inside', 'at-the-edge', 'outside'];

/** Of two judgements on one reading, the one that matters more. */
export const worse = <V extends { readonly grade: Grade }>(one: V, other: V): V =>
  ORDER.indexOf(other.grade) > ORDER.indexOf(one.grade) ? other : one;
