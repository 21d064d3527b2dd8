/** How much thread a drawing of the section shows, and what part of its width the thread takes. */
interface Shown {
  readonly threads: number;
  readonly share: number;
}

/** The lettered drawing: 222 of its 362 units are thread, the rest is letters. */
export const TO_FIT: Shown = { threads: 3, share: 222 / 362 };
/** Without letters all but a rim of 4 at either side is thread. */
const BARE_SHARE = 354 / 362;

/** CSS pixels of one millimetre in a section drawn so wide. */
export const sectionScale = ({ threads, share }: Shown, pitch: number, width: number): number =>
  (width * share) / (threads * pitch);

export interface Magnified {
  readonly times: number;
  readonly threads: number;
  /** CSS pixels the drawing must be wide. */
  readonly width: number;
}

/** Fewest and most turns that the section draws. */
const [FEWEST, MOST] = [2, 6];
const TIMES = [1, 5, 10];

/** The magnifications at which at least two turns go on a screen so wide, each with as many turns as will. */
export const magnifiedTo = (pitch: number, pxPerMm: number, room: number): readonly Magnified[] =>
  TIMES.flatMap((times) => {
    const ofATurn = (times * pxPerMm * pitch) / BARE_SHARE;
    const threads = Math.min(MOST, Math.floor(room / ofATurn));
    return threads >= FEWEST ? [{ times, threads, width: threads * ofATurn }] : [];
  });
