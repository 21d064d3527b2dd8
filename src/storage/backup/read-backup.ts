import type { Stored } from '../../domain/box/records.ts';
import { LONGEST } from '../../domain/log/bounds.ts';
import { checkProcedure, checkRecord, checkSettings, type Misfit } from '../../domain/log/validate.ts';
import { ok, type Result, refuse } from '../../domain/result.ts';
import type { ForeignEvent, SetUpEvent } from '../../domain/setup/events.ts';
import { sha256 } from '../../domain/sha256.ts';
import type { Superseded } from '../schema.ts';
import {
  type BackupLog,
  type BackupRefusal,
  ENTRIES,
  FORMAT,
  FORMAT_VERSION,
  type PhotoEntry,
} from './format.ts';
import { aTurn, inPieces } from './in-pieces.ts';
import { checkLeanEvent } from './procedures-once.ts';
import { openZip, type ZipEntries } from './zip-entries.ts';

/** A backup that passed every check. Its pictures are still in the file. */
export interface Backup {
  readonly log: BackupLog;
  /** SHA-256 of log.json: the id of this backup when it is imported. */
  readonly id: string;
  readonly picture: (entry: string) => Promise<Result<Uint8Array<ArrayBuffer>, BackupRefusal>>;
}

const MOST_LOG_BYTES = 256 * 1024 * 1024;
const MOST_PICTURE_BYTES = 32 * 1024 * 1024;
const MOST_ITEMS = 1_000_000;
const HASH = /^[0-9a-f]{64}$/;

type Refused = { readonly ok: false; readonly error: BackupRefusal };

/** Reads and checks a whole backup: every checksum, every field, every limit. The first fault refuses the whole file. */
export const readBackup = async (file: Blob): Promise<Result<Backup, BackupRefusal>> => {
  const zip = await openZip(file);
  if (!zip?.names.includes(ENTRIES.manifest)) return refuse({ why: 'not-a-backup' });
  const sums = await readSums(zip);
  if (!sums) return refuse({ why: 'entry-damaged', entry: ENTRIES.manifest });

  const readChecked = async (
    entry: string,
    most: number,
  ): Promise<Result<Uint8Array<ArrayBuffer>, BackupRefusal>> => {
    if (!zip.names.includes(entry) || !sums[entry]) return refuse({ why: 'entry-missing', entry });
    const bytes = await zip.read(entry, most);
    if (!bytes || sha256(bytes) !== sums[entry]) return refuse({ why: 'entry-damaged', entry });
    return ok(bytes);
  };

  const logBytes = await readChecked(ENTRIES.log, MOST_LOG_BYTES);
  if (!logBytes.ok) return logBytes;
  const log = await checkLog(parse(logBytes.value));
  if (!log.ok) return log;

  const picture = (entry: string) => readChecked(entry, MOST_PICTURE_BYTES);
  const checked = new Set<string>();
  for (const { sha256: hash } of log.value.photos) {
    if (checked.has(hash)) continue;
    checked.add(hash);
    for (const entry of [ENTRIES.photo(hash), ENTRIES.thumbnail(hash)]) {
      const bytes = await picture(entry);
      if (!bytes.ok) return bytes;
      if (!isJpeg(bytes.value)) return refuse({ why: 'entry-damaged', entry });
    }
    if (sums[ENTRIES.photo(hash)] !== hash)
      return refuse({ why: 'entry-damaged', entry: ENTRIES.photo(hash) });
  }
  // Entries that the manifest lists and nothing here reads must be present too, or the backup is incomplete.
  for (const entry of Object.keys(sums)) {
    if (entry === ENTRIES.log || /^(photos|thumbnails)\//.test(entry)) continue;
    const bytes = await readChecked(entry, MOST_LOG_BYTES);
    if (!bytes.ok) return bytes;
  }
  return ok({ log: log.value, id: sums[ENTRIES.log] as string, picture });
};

const readSums = async (zip: ZipEntries): Promise<Readonly<Record<string, string>> | null> => {
  const bytes = await zip.read(ENTRIES.manifest, MOST_LOG_BYTES);
  const manifest = bytes && parse(bytes);
  const sums = isObject(manifest) ? manifest.sha256 : null;
  if (!isObject(sums)) return null;
  const isSound = Object.values(sums).every((sum) => typeof sum === 'string' && HASH.test(sum));
  return isSound ? (sums as Record<string, string>) : null;
};

const checkLog = async (input: unknown): Promise<Result<BackupLog, BackupRefusal>> => {
  if (!isObject(input) || input.format !== FORMAT) return refuse({ why: 'not-a-backup' });
  if (typeof input.version !== 'number' || !Number.isInteger(input.version) || input.version < 1)
    return misfit('version', { at: '', expected: 'whole number', found: String(input.version) });
  if (input.version > FORMAT_VERSION) return refuse({ why: 'newer-format', version: input.version });
  const { madeAt } = input;
  if (typeof madeAt !== 'number' || !(madeAt >= 0 && madeAt <= 8.64e15))
    return misfit('madeAt', { at: '', expected: 'moment', found: String(madeAt) });

  const records = await checkEach('records', input.records, checkRecord, (r: Stored) => [
    r.logId,
    r.kind,
    r.id,
  ]);
  if (!records.ok) return records;
  const superseded = await checkEach('superseded', input.superseded, checkSuperseded, (r: Superseded) => [
    r.logId,
    r.kind,
    r.id,
    r.rev,
    r.writer,
  ]);
  if (!superseded.ok) return superseded;
  // Version 1 has none apart: each start of a set-up carries its own.
  const apart = input.version < 2 || !Array.isArray(input.procedures) ? [] : input.procedures;
  const procedures = await checkEach('procedures', apart, checkProcedure);
  if (!procedures.ok) return procedures;
  const events = await checkEach(
    'events',
    input.events,
    checkLeanEvent(procedures.value),
    (e: SetUpEvent | ForeignEvent) => [e.logId, e.runId, e.n, e.writer],
  );
  if (!events.ok) return events;
  const photos = await checkEach('photos', input.photos, checkPhoto, (p: PhotoEntry) => [p.logId, p.id]);
  if (!photos.ok) return photos;
  const settings = input.settings === null ? ok(null) : checkSettings(input.settings);
  if (!settings.ok) return misfit('settings', settings.error);
  return ok({
    format: FORMAT,
    version: input.version,
    madeAt,
    records: records.value,
    superseded: superseded.value,
    events: events.value,
    photos: photos.value,
    settings: settings.value,
  });
};

/** Checks every item and, where they have keys, that no key occurs twice. */
const checkEach = async <T>(
  name: string,
  items: unknown,
  check: (item: unknown) => Result<T, Misfit>,
  keyOf?: (item: T) => readonly unknown[],
): Promise<Result<readonly T[], BackupRefusal>> => {
  if (!Array.isArray(items)) return misfit(name, { at: '', expected: 'list', found: typeof items });
  if (items.length > MOST_ITEMS) return refuse({ why: 'too-big' });
  const sound: T[] = [];
  const keys = new Set<string>();
  let fault: Refused | undefined;
  await inPieces(items, async (piece, from) => {
    for (const [i, item] of piece.entries()) {
      if (fault) return;
      const answer = check(item);
      const key = answer.ok && keyOf ? JSON.stringify(keyOf(answer.value)) : String(from + i);
      if (!answer.ok) fault = misfit(`${name}.${from + i}`, answer.error, whichOf(item));
      else if (keys.has(key))
        fault = misfit(`${name}.${from + i}`, { at: '', expected: 'one of each', found: key });
      else sound.push(answer.value);
      keys.add(key);
    }
    await aTurn();
  });
  return fault ?? ok(sound);
};

const checkSuperseded = (input: unknown): Result<Superseded, Misfit> => {
  if (!isObject(input)) return refuse({ at: '', expected: 'record', found: typeof input });
  const { supersededAt, ...version } = input;
  if (typeof supersededAt !== 'number' || !(supersededAt >= 0 && supersededAt <= 8.64e15))
    return refuse({ at: 'supersededAt', expected: 'moment', found: String(supersededAt) });
  const record = checkRecord(version);
  return record.ok ? ok({ ...record.value, supersededAt }) : record;
};

const checkPhoto = (input: unknown): Result<PhotoEntry, Misfit> => {
  const isId = (value: unknown): value is string =>
    typeof value === 'string' && value.length > 0 && value.length <= LONGEST.id;
  const isSide = (value: unknown): value is number =>
    Number.isInteger(value) && Number(value) > 0 && Number(value) <= 10_000;
  if (!isObject(input)) return refuse({ at: '', expected: 'photo', found: typeof input });
  const { logId, id, sha256: hash, width, height, ...rest } = input;
  if (!isId(logId) || !isId(id)) return refuse({ at: 'id', expected: 'id', found: String(id) });
  if (typeof hash !== 'string' || !HASH.test(hash))
    return refuse({ at: 'sha256', expected: 'SHA-256', found: String(hash) });
  if (!isSide(width) || !isSide(height))
    return refuse({ at: 'width', expected: '1 to 10000', found: `${width} x ${height}` });
  const [stranger] = Object.keys(rest);
  if (stranger !== undefined) return refuse({ at: stranger, expected: 'never', found: 'a field' });
  return ok({ logId, id, sha256: hash, width, height });
};

const misfit = (path: string, { at, expected, found }: Misfit, which: string | null = null): Refused =>
  refuse({ why: 'misfit', entry: ENTRIES.log, at: at ? `${path}.${at}` : path, which, expected, found });

/** Enough of a name to find something by. */
const ENOUGH = 40;

/** A record or event by its kind, its number and its name, or its id where it has none; null when there is nothing to go by. */
const whichOf = (item: unknown): string | null => {
  if (!isObject(item) || typeof item.kind !== 'string') return null;
  const body = isObject(item.body) ? item.body : {};
  const names = [item.kind, body.number, body.name || (item.id ?? item.runId)];
  return names
    .filter((part) => typeof part === 'string' || typeof part === 'number')
    .map((part) => String(part).slice(0, ENOUGH))
    .join(' ');
};

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const parse = (bytes: Uint8Array<ArrayBuffer>): unknown => {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
};

const isJpeg = (bytes: Uint8Array): boolean => bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff;
