import type { Bodies, Kind, Stored } from '../../box/records.ts';
import { seededRandom } from '../../random.ts';
import type { SetUpEvent } from '../../setup/events.ts';
import { sessions } from './calendar.ts';
import { type Circumstances, type Made, makeBox } from './make-box.ts';
import { CALIPER, PEAR, RIGS } from './rigs.ts';
import { DEMO_WRITER } from './run-set-up.ts';
import { SCENARIO } from './scenario.ts';

export interface DemoLog {
  readonly records: readonly Stored[];
  readonly events: readonly SetUpEvent[];
}

/** The seed of the demo that the app shows. */
export const DEMO_SEED = SCENARIO.seed;

/** Taps into the tenon's set-up of the box on the lathe, and how long ago the last was, ms. */
const STOP_AFTER = 6;
const LAST_TAP_AGO = 45_000;

/**
 * The invented log of the Saltmarsh Turners: two years of boxes up to `now` (epoch ms), the last one still on the lathe.
 * The same seed and time give the same log. `minutesEast` is the wall clock's lead over UTC, for calendar days and shop hours.
 */
export const generateDemo = (seed: number, now: number, minutesEast = 0): DemoLog => {
  const made: Made[] = [];
  const closed = SCENARIO.boxes - 1;
  for (const session of sessions(seededRandom(seed), closed, SCENARIO.days, now, minutesEast)) {
    let startsAt = session.at;
    let before: Circumstances['before'] = null;
    for (let i = 0; i < session.boxes; i++) {
      const number = made.length + 1;
      const practice = 1 - ((1 - SCENARIO.setUpTime.practised) * (number - 1)) / closed;
      const box = makeBox({ seed, number, startsAt, now, minutesEast, practice, before, stopAfter: null });
      made.push(box);
      before = { rigId: box.rigId, state: box.last };
      startsAt = box.endedAt + 15 * 60_000;
    }
  }
  made.push(onTheLathe(seed, now, minutesEast));
  const first = made[0]?.endedAt ?? now;
  return {
    records: [
      ...Object.entries(RIGS).map(([id, rig]) => stored('rig', id, first, rig)),
      stored('instrument', 'caliper', first, CALIPER),
      stored('wood', 'hedge-pear', first, PEAR),
      ...made.map(({ id, box, endedAt }) => stored('box', id, endedAt, box)),
    ],
    events: made.flatMap(({ events }) => events),
  };
};

/** The box being made now: told once to learn how long it takes, then again so that its last tap was just now. */
const onTheLathe = (seed: number, now: number, minutesEast: number): Made => {
  const tell = (startsAt: number): Made =>
    makeBox({
      seed,
      number: SCENARIO.boxes,
      startsAt,
      now,
      minutesEast,
      practice: SCENARIO.setUpTime.practised,
      before: null,
      stopAfter: STOP_AFTER,
    });
  const once = tell(now);
  return tell(now - LAST_TAP_AGO - (once.endedAt - now));
};

const stored = <K extends Kind>(kind: K, id: string, savedAt: number, body: Bodies[K]): Stored<K> => ({
  logId: SCENARIO.log,
  kind,
  id,
  rev: 1,
  writer: DEMO_WRITER,
  savedAt,
  body,
});
