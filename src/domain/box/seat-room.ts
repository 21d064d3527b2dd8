import { type Millimetres, mm } from '../units/brands.ts';
import type { Box } from './records.ts';

/** Degrees that the lid went on from one try to another; a lid that goes on past the mark has a turn to go again. */
const wentOn = (from: number, to: number): number => {
  const degrees = from - to;
  return Math.max(0, degrees < -180 ? degrees + 360 : degrees);
};

/**
 * Room from the end of the tenon to the floor as it was measured last, mm, less what was rubbed off since: the lid went on by that. Null
 * when it was never measured.
 */
export const measuredRoom = ({
  plan,
  trials,
  seats,
}: Pick<Box, 'plan' | 'trials' | 'seats'>): Millimetres | null => {
  const last = trials.findLast(({ bottomGap }) => bottomGap);
  if (!last?.bottomGap) return null;
  const since = seats.flatMap(({ seq, degreesToGo }) =>
    seq > last.seq && degreesToGo !== null ? [degreesToGo] : [],
  );
  const [first = 0, latest = first] = [since[0], since.at(-1)];
  return mm(Math.max(0, last.bottomGap.mm - (plan.pitch.mm * wentOn(first, latest)) / 360));
};
