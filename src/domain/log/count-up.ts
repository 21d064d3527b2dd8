// Apart from the rest of bounds.ts, which the first load does not need.

/** Greatest number of a box, place in its sequence, version of a procedure, place of an event in its set-up. */
export const GREATEST_COUNT = 1_000_000;
/** Greatest version of a record. */
export const GREATEST_REV = 1_000_000_000;
/** Most entries of a list. */
export const LONGEST_LIST = 2_000;

/** One more, but never past the greatest. Only a file made to do harm brings a count so far; then its order is lost, nothing else. */
export const countUp = (count: number, greatest = GREATEST_COUNT): number => Math.min(count + 1, greatest);

/** Whether a list of a record holds more than a backup could bring back. */
export const isOverfull = (body: object): boolean =>
  Object.values(body).some((value) => Array.isArray(value) && value.length > LONGEST_LIST);
