import type { Day } from '../../src/domain/box/records.ts';
import type { Random } from '../../src/domain/random.ts';

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
/** Days of the week on which the workshop meets, counted back from today, so that the log is the same whenever it is made. */
const MEETS = new Set([3, 6]);
/** Whole weeks when nobody came, counted from the start. */
const SHUT = [
  { from: 18, to: 22 },
  { from: 49, to: 52 },
  { from: 77, to: 81 },
];

/** Calendar day of a moment. The workshop's clock is UTC here; whoever shows the log moves it to the clock on the wall. */
export const dayOf = (at: number): Day => new Date(at).toISOString().slice(0, 10);

export interface Session {
  /** When work began, epoch ms. */
  readonly at: number;
  readonly boxes: 1 | 2;
}

/**
 * The afternoons on which so many boxes were made, oldest first, over so many days, the last at least two days before `now`.
 */
export const sessions = (random: Random, boxes: number, days: number, now: number): readonly Session[] => {
  const today = Math.floor(now / DAY);
  const isShut = (fromStart: number) =>
    SHUT.some(({ from, to }) => fromStart >= from * 7 && fromStart < to * 7);
  const open = Array.from({ length: days }, (_, fromStart) => fromStart)
    .filter((fromStart) => MEETS.has((days - fromStart) % 7) && !isShut(fromStart))
    .map((fromStart) => today - days + fromStart);
  const doubles = Math.round(boxes * 0.26);
  const chosen = new Set<number>();
  while (chosen.size < Math.min(boxes - doubles, open.length)) chosen.add(random.pick(open));
  const twice = new Set<number>();
  const ordered = [...chosen].sort((a, b) => a - b);
  while (twice.size < doubles) twice.add(random.pick(ordered));
  return ordered.map((day) => ({
    at: day * DAY + (twice.has(day) ? random.whole(540, 560) : random.whole(570, 800)) * MINUTE,
    boxes: twice.has(day) ? 2 : 1,
  }));
};
