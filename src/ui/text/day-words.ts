import { format, formatDistanceStrict, parse } from 'date-fns';
import type { Day } from '../../domain/log/records.ts';

/** A calendar day as it was in the user's own time zone: parsed by parts, for 'yyyy-MM-dd' alone would be read as UTC. */
const dateOf = (day: Day): Date => parse(day, 'yyyy-MM-dd', new Date(2000, 0, 1));

/** 14 Mar 2026. */
export const dayWords = (day: Day): string => format(dateOf(day), 'd MMM yyyy');

/** 14 Mar 2026, 10:42. */
export const momentWords = (at: number): string => format(at, 'd MMM yyyy, HH:mm');

/** "3 months", the age of something. */
export const ageWords = (at: number, now: number): string => formatDistanceStrict(at, now);
