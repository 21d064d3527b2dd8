/**
 * A seeded tenth by default; the full set with LIDWRIGHT_SLOW=1:
 * `LIDWRIGHT_SLOW=1 npx vitest run tests/simulation/findings`. What it measured is in RESULTS.md beside this file.
 */
export const SLOW = process.env.LIDWRIGHT_SLOW === '1';

export const pick = <T>(fast: T, full: T): T => (SLOW ? full : fast);

/** Fast ones must not fail by luck on a loaded machine, full ones take minutes. */
export const TIMEOUT = SLOW ? 3_600_000 : 120_000;

/** One measured figure a line, for RESULTS.md. */
export const measured = (what: string, ...figures: readonly (string | number)[]): void => {
  if (SLOW) console.info(`| ${[what, ...figures].join(' | ')} |`);
};
