import type { TwoByTwo } from '../statistics/counts.ts';
import { sizeOf } from '../statistics/counts.ts';
import { exactPower, type Prospect } from '../statistics/exact-power.ts';

/** How many more boxes give an even chance, and four in five, of a clear answer. 'past': more than a log will ever hold. */
export interface HowManyMore {
  readonly fifty: number | 'past';
  readonly eighty: number | 'past';
}

/** More boxes than this are not worth waiting for. */
const MOST_MORE = 300;
/** A log of this size that has not settled the question never will. */
const LARGE = 500;
const FEWEST_MISSED = 3;

/**
 * From the difference so far, shrunk by adding one box to each cell (the one seen is more often luck than not), at the share
 * missed so far. Null with fewer than three missed or none done, or when boxes that missed the step did no worse,
 * because then no number of boxes can be expected to show that they do.
 */
export const howManyMore = (table: TwoByTwo): HowManyMore | null => {
  const boxes = sizeOf(table);
  const missed = table.a + table.b;
  const missedRate = (table.a + 1) / (missed + 2);
  const doneRate = (table.c + 1) / (boxes - missed + 2);
  const worse = missed > 0 && missed < boxes && table.a / missed > table.c / (boxes - missed);
  if (missed < FEWEST_MISSED || !worse || missedRate <= doneRate) return null;
  if (boxes >= LARGE) return { fifty: 'past', eighty: 'past' };
  const prospect = (more: number): Prospect => {
    const inAll = Math.round((missed * (boxes + more)) / boxes);
    return { missed: inAll, done: boxes + more - inAll, missedRate, doneRate };
  };
  const needed = (power: number, from: number): number | 'past' => {
    if (exactPower(prospect(MOST_MORE)) < power) return 'past';
    let [low, high] = [from - 1, MOST_MORE];
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (exactPower(prospect(middle)) >= power) high = middle;
      else low = middle;
    }
    return high;
  };
  const fifty = needed(0.5, 0);
  return { fifty, eighty: fifty === 'past' ? 'past' : needed(0.8, fifty) };
};
