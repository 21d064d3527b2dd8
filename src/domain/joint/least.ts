import { type Millimetres, mm } from '../units/brands.ts';

// What a wooden thread is judged by, the same in the plan, as measured, before a cut and after a trial.

/** Below this share of 0.75 H a wooden thread strips easily, percent. An estimate, no source. */
export const LEAST_ENGAGEMENT = 50;
/** A thinner crest flat chips in most woods. An estimate, no source. */
export const LEAST_CREST: Millimetres = mm(0.15);
/** Crests nearer than this to a root rub on fuzz, radial. An estimate, no source. */
export const LEAST_CREST_GAP: Millimetres = mm(0.02);
/** Kept between the end of the tenon and the floor. Common practice, no source. */
export const LEAST_FLOOR_GAP: Millimetres = mm(0.3);
/** One reading with a caliper on wood is seldom better than this. Common practice, no source. */
export const CALIPER_ERROR: Millimetres = mm(0.03);
