import type { Random } from '../../random.ts';
import type { Stamp } from '../../setup/events.ts';

/** The clock on the wall and the phone beside the lathe, moved on by hand. */
export interface ShopClock {
  readonly now: number;
  pass(seconds: number): void;
  /** Time during which the phone's screen was dark or showed something else. */
  passUnseen(seconds: number): void;
  /** The page was loaded afresh. */
  reload(): void;
  stamp(): Stamp;
}

export const shopClock = (startsAt: number, name: string, random: Random): ShopClock => {
  let now = Math.round(startsAt);
  let loads = 0;
  let loadedAt = now;
  let hidden = 0;
  const load = () => {
    loads += 1;
    loadedAt = now - Math.round(random.between(2_000, 40_000));
    hidden = 0;
  };
  load();
  return {
    get now() {
      return now;
    },
    pass: (seconds) => {
      now += Math.round(seconds * 1000);
    },
    passUnseen: (seconds) => {
      now += Math.round(seconds * 1000);
      hidden += Math.round(seconds * 1000);
    },
    reload: load,
    stamp: () => ({ at: now, mono: now - loadedAt, hid: hidden, session: `${name}.${loads}` }),
  };
};
