/** How the lid goes on; several may hold at once. */
export const goingOn = [
  'will-not-start',
  'drags-more-each-turn',
  'stops-dead',
  'stiff-all-the-way',
  'gritty',
  'tight-once-a-turn',
  'tight-twice-a-turn',
  'tight-four-times-a-turn',
  'rattles-sideways',
  'end-play',
  'jumps-a-thread',
  'free',
] as const;
export type GoingOn = (typeof goingOn)[number];

/** How the lid sits once it is home. */
export const seated = ['flush', 'open-one-side', 'gap-all-round', 'rocks', 'proud-outside'] as const;
export type Seated = (typeof seated)[number];

/** What the threads look like; several may hold at once. */
export const threads = [
  'sound',
  'chipped',
  'furry',
  'torn',
  'burnt',
  'thin-or-double-cut',
  'cross-threaded',
  'shoulder-hit',
] as const;
export type ThreadState = (typeof threads)[number];

/** Where rubbing shows: on the crests or on the flanks. */
export const marks = ['crest', 'flank'] as const;
export type MarksOn = (typeof marks)[number];

/** Along the thread, where those marks are. */
export const marksAt = ['start', 'by-shoulder', 'all-along'] as const;
export type MarksAt = (typeof marksAt)[number];
