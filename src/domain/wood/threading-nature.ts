/** How a wood takes a thread: how readily crests crumble, and how readily the cutter leaves fuzz. 0 never, 1 nearly always. */
export interface ThreadingNature {
  readonly crumbles: number;
  readonly furs: number;
}

/** Taken for a wood of which nothing is known. */
export const UNKNOWN_NATURE: ThreadingNature = { crumbles: 0.3, furs: 0.3 };

/**
 * Woods whose large pores break a thread's crest: ring-porous or coarse-textured. Wood Handbook FPL-GTR-282, chapter 2 (characteristics of
 * the woods), from memory.
 */
const COARSE =
  /^(ash|butternut|catalpa|chestnut|elm|hackberry|hickory|locust|mesquite|oak|pecan|sassafras|teak|wenge|keruing|iroko|zebrawood|padauk)\b/i;

/** Side hardness (N) at which a fine-textured wood holds any thread, and at which it holds none. Common practice, no source. */
const HOLDS = 9000;
const HOLDS_NONE = 1600;
/** Below this a wood is cut woolly, above the other hardly ever. Common practice, no source. */
const WOOLLY = 1500;
const CLEAN = 7500;
const COARSE_CRUMBLES = 0.25;

/** 1 at `most`, 0 at `none`, even in the logarithm between: woods differ by ratios. */
const falling = (hardness: number, most: number, none: number): number =>
  Math.min(1, Math.max(0, Math.log(none / hardness) / Math.log(none / most)));

/**
 * Nature of a wood for threads from its tabled name and side hardness (N, 100 to 30 000; null or outside: unknown, 0.3 each). The slopes are
 * common practice without a source: hard and fine holds, soft furs, coarse crumbles.
 */
export const threadingNature = (key: string | null, hardness: number | null): ThreadingNature => {
  if (hardness === null || !(hardness >= 100 && hardness <= 30000)) return UNKNOWN_NATURE;
  const coarse = key !== null && COARSE.test(key) ? COARSE_CRUMBLES : 0;
  return {
    crumbles: Math.min(1, 0.05 + 0.75 * falling(hardness, HOLDS_NONE, HOLDS) + coarse),
    furs: Math.min(1, 0.05 + 0.8 * falling(hardness, WOOLLY, CLEAN)),
  };
};
