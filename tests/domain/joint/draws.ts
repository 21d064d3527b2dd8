import fc from 'fast-check';

/** How often a law is drawn: a hundred times, unless the whole run was told otherwise. */
export const draws: number = fc.readConfigureGlobal()?.numRuns ?? 100;
