import type { ExperimentMeasure, ExperimentPlan } from '../box/records.ts';

/** Whether the first trial fit was right. Every experiment shows it, second beside another measure. */
export const FIT: ExperimentMeasure = { kind: 'fit' };

/** What an experiment measures; the fit where the plan names nothing. */
export const measureOf = ({ measure }: Pick<ExperimentPlan, 'measure'>): ExperimentMeasure => measure ?? FIT;
