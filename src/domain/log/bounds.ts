import { GREATEST_COUNT, GREATEST_REV, LONGEST_LIST } from './count-up.ts';

/**
 * How long a text, how large a count and how long a list may be, in a form as in a file. Whatever a form accepts here passes
 * the check of a backup (validate.ts), so nobody can enter what no phone takes back.
 */

/** Longest texts, in UTF-16 code units as `length` counts them. */
export const LONGEST = {
  /** Names of boxes, rigs, procedures and woods. */
  name: 500,
  note: 20_000,
  /** An id; also a wood that is no table's, which goes by what was typed. */
  id: 200,
  /** A length as it was typed, with its unit. */
  length: 100,
} as const;

/** Most entries a list may hold. */
export const MOST_ITEMS = { list: LONGEST_LIST, steps: 200, lots: 200 } as const;

/** Greatest values of what the app counts up itself. */
export const GREATEST = { count: GREATEST_COUNT, rev: GREATEST_REV } as const;
