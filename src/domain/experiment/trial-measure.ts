import type { BothWaysPlan, TrialMeasure } from '../box/records.ts';

/** Right at the first trial, or not: always told, if only second. */
export const FIT: TrialMeasure = { kind: 'fit' };

/** What a trial measures; those of older versions, the fit. */
export const measureOf = ({ measure }: Pick<BothWaysPlan, 'measure'>): TrialMeasure => measure ?? FIT;
