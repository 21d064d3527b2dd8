import { intlFormat, parseISO } from 'date-fns';
import type { Day } from '../../domain/box/records.ts';

const DAY = { day: 'numeric', month: 'short', year: 'numeric' } as const;
const ENGLISH = { locale: 'en-GB' };

/** 14 Mar 2026: a calendar day as it was in the user's own time zone, which parseISO keeps (new Date would read it as UTC). */
export const dayWords = (day: Day): string => intlFormat(parseISO(day), DAY, ENGLISH);

/** 14 Mar 2026, 10:42. */
export const momentWords = (at: number): string =>
  intlFormat(at, { ...DAY, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }, ENGLISH);
