import type { Bodies, Kind, Stored } from '../../src/domain/box/records.ts';
import { seededRandom } from '../../src/domain/random.ts';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { sessions } from './calendar.ts';
import { type Circumstances, type Made, makeBox } from './make-box.ts';
import { CALIPER, PEAR, RIGS } from './rigs.ts';
import { DEMO_WRITER } from './run-set-up.ts';
import { SCENARIO } from './scenario.ts';
import { type DemoPhoto, takePhotos } from './take-photos.ts';

export interface DemoLog {
  readonly records: readonly Stored[];
  readonly events: readonly SetUpEvent[];
  readonly photos: readonly DemoPhoto[];
}

/** The seed of the demo that the app shows. */
export const DEMO_SEED = SCENARIO.seed;

/** Taps into the tenon's set-up of the box on the lathe, and how long ago the last was, ms. */
const STOP_AFTER = 6;
const LAST_TAP_AGO = 45_000;

/**
 * The invented log of the Saltmarsh Turners: two years of boxes up to `now` (epoch ms), the last one still on the lathe.
 * The same seed and time give the same log.
 */
export const generateDemo = (seed: number, now: number): DemoLog => {
  const boxes: Made[] = [];
  const closed = SCENARIO.boxes - 1;
  for (const session of sessions(seededRandom(seed), closed, SCENARIO.days, now)) {
    let startsAt = session.at;
    let before: Circumstances['before'] = null;
    for (let i = 0; i < session.boxes; i++) {
      const number = boxes.length + 1;
      const practice = 1 - ((1 - SCENARIO.setUpTime.practised) * (number - 1)) / closed;
      const box = makeBox({ seed, number, startsAt, now, practice, before, stopAfter: null });
      boxes.push(box);
      before = { rigId: box.rigId, state: box.last };
      startsAt = box.endedAt + 15 * 60_000;
    }
  }
  boxes.push(onTheLathe(seed, now));
  const { made, photos } = takePhotos(boxes);
  const first = made[0]?.endedAt ?? now;
  return {
    records: [
      ...Object.entries(RIGS).map(([id, rig]) => stored('rig', id, first, rig)),
      stored('instrument', 'caliper', first, CALIPER),
      stored('wood', 'hedge-pear', first, PEAR),
      ...made.map(({ id, box, endedAt }) => stored('box', id, endedAt, box)),
    ],
    events: made.flatMap(({ events }) => events),
    photos,
  };
};

/** The box being made now: told once to learn how long it takes, then again so that its last tap was just now. */
const onTheLathe = (seed: number, now: number): Made => {
  const tell = (startsAt: number): Made =>
    makeBox({
      seed,
      number: SCENARIO.boxes,
      startsAt,
      now,
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
