import type { Box } from '../../box/records.ts';
import { firstFit, threadWood } from '../../box/story.ts';

/** The wood and pitch of the newest box, and the last boxes tried in them. Useful from the second box on. */
export interface LastAlike {
  readonly wood: string;
  /** As it was typed. */
  readonly pitch: string;
  /** Ids, the newest first. */
  readonly boxes: readonly string[];
}

/** Most boxes listed. */
const LAST = 5;

/** By the lid of the newest box, tried or not; null in an empty log. */
export const lastAlike = (boxes: ReadonlyMap<string, Box>): LastAlike | null => {
  const newestFirst = [...boxes].sort(([idA, a], [idB, b]) => b.number - a.number || (idA < idB ? -1 : 1));
  const newest = newestFirst[0]?.[1];
  if (!newest) return null;
  const wood = threadWood(newest, 'lid');
  const { text } = newest.plan.pitch;
  const alike = newestFirst.filter(
    ([, box]) => box.plan.pitch.text === text && threadWood(box, 'lid') === wood && firstFit(box) !== null,
  );
  return { wood, pitch: text, boxes: alike.slice(0, LAST).map(([id]) => id) };
};
