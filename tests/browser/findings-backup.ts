import { createHash } from 'node:crypto';
import { strToU8, zipSync } from 'fflate';
import type { Bodies, Kind, Stored } from '../../src/domain/box/records.ts';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { type BackupLog, ENTRIES, FORMAT, FORMAT_VERSION } from '../../src/storage/backup/format.ts';
import { CALIPER, PEAR, RIGS } from '../demo/rigs.ts';
import { manyBoxes, NOW } from '../demo/workshop.ts';

const DAY = 86_400_000;
/** Boxes the workshop makes of an afternoon, and days between afternoons. */
const PER_DAY = 2;

/**
 * A backup of the user's own log with so many boxes of the invented workshop in it, for the app's import. Boxes come two an
 * afternoon, the newest three days ago.
 */
export const backupOfBoxes = (seed: number, count: number): Uint8Array => {
  const made = manyBoxes(seed, count).map((each, i) => {
    const at = NOW - (3 + Math.floor((count - 1 - i) / PER_DAY)) * DAY;
    const day = new Date(at).toISOString().slice(0, 10);
    return { ...each, box: { ...each.box, startedOn: day } };
  });
  return backupOf(
    [
      ...Object.entries(RIGS).map(([id, rig]) => stored('rig', id, rig)),
      stored('instrument', 'caliper', CALIPER),
      stored('wood', 'hedge-pear', PEAR),
      ...made.map(({ id, box }) => stored('box', id, box)),
    ],
    made.flatMap(({ events }) => events),
  );
};

export const stored = <K extends Kind>(kind: K, id: string, body: Bodies[K], rev = 1): Stored<K> => ({
  ...{ logId: 'mine', kind, id, rev },
  ...{ writer: 'workshop', savedAt: NOW, body },
});

/** A backup of the user's own log that holds these. */
export const backupOf = (records: readonly Stored[], events: readonly SetUpEvent[]): Uint8Array => {
  const log: BackupLog = {
    format: FORMAT,
    version: FORMAT_VERSION,
    madeAt: NOW,
    records,
    superseded: [],
    events: events.map((event) => ({ ...event, logId: 'mine' })),
    photos: [],
    settings: null,
  };
  const bytes = strToU8(JSON.stringify(log));
  const sum = createHash('sha256').update(bytes).digest('hex');
  const boxes = strToU8('');
  return zipSync({
    [ENTRIES.log]: [bytes, { level: 1 }],
    [ENTRIES.boxes]: boxes,
    [ENTRIES.manifest]: strToU8(
      JSON.stringify({
        sha256: {
          [ENTRIES.log]: sum,
          [ENTRIES.boxes]: createHash('sha256').update(boxes).digest('hex'),
        },
      }),
    ),
  });
};
