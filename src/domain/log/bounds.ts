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
export const MOST_ITEMS = { list: 2_000, steps: 200, lots: 200 } as const;

/** Whether a list of a record holds more than a backup could bring back. */
export const isOverfull = (body: object): boolean =>
  Object.entries(body).some(
    ([name, value]) =>
      Array.isArray(value) && value.length > (name === 'steps' ? MOST_ITEMS.steps : MOST_ITEMS.list),
  );

/** Greatest values of what the app counts up itself. */
export const GREATEST = {
  /** Number of a box, place in a box's sequence, version of a procedure, place of an event in its set-up. */
  count: 1_000_000,
  /** Version of a record. */
  rev: 1_000_000_000,
} as const;

/** One more, but never past the greatest. Only a file made to do harm brings a count so far; then its order is lost, nothing else. */
export const countUp = (count: number, greatest: number = GREATEST.count): number =>
  Math.min(count + 1, greatest);
