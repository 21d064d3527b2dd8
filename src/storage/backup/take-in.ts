import { canonical } from '../../domain/log/canonical.ts';
import { compareVersions } from '../../domain/log/version.ts';
import { ok, type Result, refuse } from '../../domain/result.ts';
import type { ForeignEvent, SetUpEvent } from '../../domain/setup/events.ts';
import { StorageFailure } from '../failure.ts';
import { DEVICE_KEYS } from '../names.ts';
import { markRecordsStale, markRunStale } from '../stale.ts';
import { mergeRecord } from '../superseded.ts';
import { wholeLog } from '../whole-log.ts';
import { type ReadTx, read, type WriteTx, write } from '../write.ts';
import { type BackupRefusal, ENTRIES, type PhotoEntry } from './format.ts';
import { inPieces } from './in-pieces.ts';
import type { Backup } from './read-backup.ts';
import { asTheOneImport, sweepStagedPhotos } from './sweep-photos.ts';

type AnyEvent = SetUpEvent | ForeignEvent;

/** What an import would do. `fresh`, `changed` and `same` count records, events and photos together. */
export interface Summary {
  /** Not on this phone yet. */
  readonly fresh: number;
  /** Records that differ: the later version stays, the other can be restored for 30 days. */
  readonly changed: number;
  readonly same: number;
  readonly boxes: number;
  readonly photos: number;
  readonly madeAt: number;
  /** This file was imported before. */
  readonly takenInBefore: boolean;
}

/** Tells which events of a backup are stored here, from one list of keys instead of one request for each event. */
const eventsHere = async (tx: ReadTx | WriteTx, backup: Backup): Promise<(event: AnyEvent) => boolean> => {
  const store = tx.objectStore('events');
  const keys = await Promise.all(logsOf(backup).map((logId) => store.getAllKeys(wholeLog(logId))));
  const here = new Set(keys.flat().map((key) => JSON.stringify(key)));
  return ({ logId, runId, n, writer }) => here.has(JSON.stringify([logId, runId, n, writer]));
};

const isSame = async (tx: ReadTx | WriteTx, event: AnyEvent): Promise<boolean> => {
  const here = await tx.objectStore('events').get([event.logId, event.runId, event.n, event.writer]);
  return here !== undefined && canonical(here) === canonical(event);
};

/** Compares a checked backup with what is stored here. Changes nothing. Refuses one that contradicts an event or photo stored here. */
export const summarize = (backup: Backup): Promise<Result<Summary, BackupRefusal>> =>
  read(['records', 'events', 'photos', 'imports'], async (tx) => {
    const { log } = backup;
    const recordsHere = await Promise.all(
      log.records.map(({ logId, kind, id }) => tx.objectStore('records').get([logId, kind, id])),
    );
    let fresh = 0;
    let changed = 0;
    let same = 0;
    for (const [i, record] of log.records.entries()) {
      const here = recordsHere[i];
      if (!here) fresh += 1;
      else if (compareVersions(here, record) === 0) same += 1;
      else changed += 1;
    }
    const isHere = await eventsHere(tx, backup);
    let contradicts: AnyEvent | undefined;
    await inPieces(log.events, (piece) =>
      Promise.all(
        piece.map(async (event) => {
          if (!isHere(event)) fresh += 1;
          else if (await isSame(tx, event)) same += 1;
          else contradicts ??= event;
        }),
      ),
    );
    if (contradicts)
      return refuse({ why: 'contradicts', what: 'event', id: `${contradicts.runId} ${contradicts.n}` });
    // One after another, because each read loads the picture too.
    for (const photo of log.photos) {
      const here = await tx.objectStore('photos').get([photo.logId, photo.id]);
      if (!here) fresh += 1;
      else if (here.sha256 === photo.sha256) same += 1;
      else return refuse({ why: 'contradicts', what: 'photo', id: photo.id });
    }
    const marks = await Promise.all(
      logsOf(backup).map((logId) => tx.objectStore('imports').get([logId, backup.id])),
    );
    return ok({
      fresh,
      changed,
      same,
      boxes: log.records.filter((record) => record.kind === 'box' && record.body).length,
      photos: log.photos.length,
      madeAt: log.madeAt,
      takenInBefore: marks.length > 0 && marks.every((mark) => mark !== undefined),
    });
  });

/**
 * Takes a sound backup in. Photos go first, one by one, under their own keys, where nothing shows them yet; then one
 * strict transaction writes records, events and the mark of the import, all or nothing. This installation becomes a new
 * writer, for the backup may hold versions that it wrote itself before a wipe. If it fails, staged photos are swept;
 * what a killed import has staged is swept first.
 */
export const takeIn = (
  backup: Backup,
  now: number,
  freshWriter: string,
): Promise<Result<Summary, BackupRefusal>> => asTheOneImport(() => takeInAlone(backup, now, freshWriter));

const takeInAlone = async (
  backup: Backup,
  now: number,
  freshWriter: string,
): Promise<Result<Summary, BackupRefusal>> => {
  await sweepStagedPhotos();
  const summary = await summarize(backup);
  if (!summary.ok) return summary;
  try {
    for (const photo of backup.log.photos) {
      const staged = await stagePhoto(backup, photo);
      if (!staged.ok) {
        await sweepStagedPhotos();
        return staged;
      }
    }
    await writeAll(backup, now, freshWriter);
  } catch (error) {
    await sweepStagedPhotos().catch(() => {});
    throw error;
  }
  return summary;
};

const stagePhoto = async (
  backup: Backup,
  { logId, id, sha256, width, height }: PhotoEntry,
): Promise<Result<void, BackupRefusal>> => {
  const full = await backup.picture(ENTRIES.photo(sha256));
  if (!full.ok) return full;
  const thumbnail = await backup.picture(ENTRIES.thumbnail(sha256));
  if (!thumbnail.ok) return thumbnail;
  const type = 'image/jpeg';
  await write(['photos', 'thumbnails', 'device'], async (tx) => {
    await tx.objectStore('device').put(true, DEVICE_KEYS.staged);
    if (await tx.objectStore('photos').getKey([logId, id])) return;
    await tx.objectStore('photos').put({ logId, id, type, width, height, bytes: full.value.buffer, sha256 });
    await tx.objectStore('thumbnails').put({ logId, id, type, bytes: thumbnail.value.buffer });
  });
  return ok(undefined);
};

const writeAll = (backup: Backup, now: number, freshWriter: string): Promise<void> =>
  write(['records', 'superseded', 'events', 'imports', 'device', 'stale'], async (tx) => {
    const { log } = backup;
    await inPieces(log.records, (piece) => Promise.all(piece.map((record) => mergeRecord(tx, record, now))));
    for (const record of new Map(log.records.map((each) => [each.logId, each])).values())
      await markRecordsStale(tx, { ...record, writer: `${record.writer} ${now}` });
    await Promise.all(
      log.superseded.map(async (version) => {
        const { logId, kind, id, rev, writer } = version;
        const store = tx.objectStore('superseded');
        if (!(await store.getKey([logId, kind, id, rev, writer]))) await store.put(version);
      }),
    );
    /** For each set-up, its last event that was not stored here before. */
    const freshIn = new Map<string, AnyEvent>();
    const isHere = await eventsHere(tx, backup);
    await inPieces(log.events, (piece) =>
      Promise.all(
        piece.map(async (event) => {
          if (!isHere(event)) {
            await tx.objectStore('events').add(event);
            freshIn.set(JSON.stringify([event.logId, event.runId]), event);
          } else if (!(await isSame(tx, event))) throw new StorageFailure('taken');
        }),
      ),
    );
    await inPieces([...freshIn.values()], (piece) =>
      Promise.all(piece.map((event) => markRunStale(tx, { ...event, writer: `${event.writer} ${now}` }))),
    );
    const device = tx.objectStore('device');
    if (log.settings && !(await device.getKey(DEVICE_KEYS.settings)))
      await device.put(log.settings, DEVICE_KEYS.settings);
    await device.put(freshWriter, DEVICE_KEYS.writer);
    await device.delete(DEVICE_KEYS.staged);
    for (const logId of logsOf(backup))
      await tx.objectStore('imports').put({ logId, id: backup.id, at: now });
  });

const logsOf = ({ log }: Backup): string[] => [
  ...new Set([...log.records, ...log.events].map((entry) => entry.logId)),
];
