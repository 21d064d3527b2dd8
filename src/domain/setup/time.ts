import type { Stamp } from './events.ts';

/**
 * How long something took, in ms. `exact` when the page stayed awake and both clocks agree; otherwise the true
 * length lies in [min, max]. A span is never negative.
 */
export interface Span {
  readonly min: number;
  readonly max: number;
  readonly exact: boolean;
}

export const NO_TIME: Span = { min: 0, max: 0, exact: true };

/** The page may be out of sight this long before a gap stops being exact. */
const LONGEST_GLANCE_MS = 30_000;
/** Wall and monotonic clock may differ this much before a gap stops being exact. */
const CLOCK_TOLERANCE_MS = 2_000;

/**
 * The time between two stamps. Exact (the monotonic difference) within one page load when hidden at most 30 s and the
 * clocks agree within 2 s; never when the monotonic clock ran backwards. Otherwise bounds: at least the time that the page was
 * certainly visible, at most the larger of the two clocks. Across page loads only the wall clock is left; when it ran
 * backwards the span is [0, 0], not exact.
 */
export const between = (from: Stamp, to: Stamp): Span => {
  const wall = to.at - from.at;
  if (from.session !== to.session) return { min: 0, max: Math.max(0, wall), exact: false };
  const watched = to.mono - from.mono;
  const mono = Math.max(0, watched);
  const hidden = Math.max(0, to.hid - from.hid);
  if (watched >= 0 && hidden <= LONGEST_GLANCE_MS && Math.abs(wall - mono) <= CLOCK_TOLERANCE_MS)
    return { min: mono, max: mono, exact: true };
  return { min: Math.max(0, mono - hidden), max: Math.max(mono, wall), exact: false };
};

export const addSpans = (a: Span, b: Span): Span => ({
  min: a.min + b.min,
  max: a.max + b.max,
  exact: a.exact && b.exact,
});
