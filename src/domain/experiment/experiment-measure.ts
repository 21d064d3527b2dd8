import type { ExperimentMeasure, ExperimentPlan } from '../box/records.ts';

/** Right at the first trial, or not: always told, if only second. */
export const FIT: ExperimentMeasure = { kind: 'fit' };

/** What an experiment measures; those of older versions, the fit. */
export const measureOf = ({ measure }: Pick<ExperimentPlan, 'measure'>): ExperimentMeasure => measure ?? FIT;
