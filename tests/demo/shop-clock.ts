import type { Random } from '../../src/domain/random.ts';
import type { Stamp } from '../../src/domain/setup/events.ts';

/** The clock on the wall and the phone beside the lathe, moved on by hand in whole seconds. */
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
  const whole = (seconds: number) => Math.round(seconds) * 1000;
  let now = whole(startsAt / 1000);
  let loads = 0;
  let loadedAt = now;
  let hidden = 0;
  const load = () => {
    loads += 1;
    loadedAt = now - whole(random.between(2, 40));
    hidden = 0;
  };
  load();
  return {
    get now() {
      return now;
    },
    pass: (seconds) => {
      now += whole(seconds);
    },
    passUnseen: (seconds) => {
      now += whole(seconds);
      hidden += whole(seconds);
    },
    reload: load,
    stamp: () => ({ at: now, mono: now - loadedAt, hid: hidden, session: `${name}.${loads}` }),
  };
};
