import { formatDistanceStrict } from 'date-fns';

/** "3 months", the age of something. Apart from the other dates, for it brings a table of words. */
export const ageWords = (at: number, now: number): string => formatDistanceStrict(at, now);
