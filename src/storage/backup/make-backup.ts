import { strToU8, Zip, ZipDeflate, ZipPassThrough } from 'fflate';
import type { Settings } from '../../domain/log/settings.ts';
import { sha256 } from '../../domain/sha256.ts';
import { DEVICE_KEYS } from '../names.ts';
import { getPhoto, getThumbnail } from '../photos.ts';
import { read } from '../write.ts';
import { boxesCsv } from './boxes-csv.ts';
import { ENTRIES, FORMAT, FORMAT_VERSION, type PhotoEntry } from './format.ts';
import { proceduresApart } from './procedures-once.ts';

/** At this size the bytes go into a Blob, which the browser may keep on disk instead of in memory. */
const FOLD_BYTES = 8 * 1024 * 1024;

/** Writes a ZIP piece by piece. */
const startZip = () => {
  const sums: Record<string, string> = {};
  let finished = new Blob([]);
  let pending: Uint8Array<ArrayBuffer>[] = [];
  let pendingBytes = 0;
  const fold = (): void => {
    finished = new Blob([finished, ...pending]);
    pending = [];
    pendingBytes = 0;
  };
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    pending.push(chunk as Uint8Array<ArrayBuffer>);
    pendingBytes += chunk.length;
    if (pendingBytes > FOLD_BYTES) fold();
  });
  const put = (name: string, bytes: Uint8Array<ArrayBuffer>, isPacked: boolean): void => {
    const entry = isPacked ? new ZipPassThrough(name) : new ZipDeflate(name);
    zip.add(entry);
    entry.push(bytes, true);
  };
  return {
    /** Adds an entry and its checksum. Pictures are not compressed again. */
    add: async (name: string, bytes: Uint8Array<ArrayBuffer>): Promise<void> => {
      sums[name] = sha256(bytes);
      put(name, bytes, name.endsWith('.jpg'));
    },
    finish: (): Blob => {
      put(ENTRIES.manifest, strToU8(JSON.stringify({ sha256: sums }, null, 1)), false);
      zip.end();
      fold();
      return new Blob([finished], { type: 'application/zip' });
    },
  };
};

/**
 * A backup of every log except those in `leaveOut` (the demo, which the app carries), as a ZIP: log.json, the pictures named by
 * their hash, the boxes as a table, and a manifest of checksums. Records, events and settings are read in one transaction.
 */
export const makeBackup = async (madeAt: number, leaveOut: readonly string[]): Promise<Blob> => {
  const isWanted = (entry: { readonly logId: string }): boolean => !leaveOut.includes(entry.logId);
  const there = await read(['records', 'superseded', 'events', 'photos', 'device'], async (tx) => ({
    records: (await tx.objectStore('records').getAll()).filter(isWanted),
    superseded: (await tx.objectStore('superseded').getAll()).filter(isWanted),
    events: (await tx.objectStore('events').getAll()).filter(isWanted),
    photoKeys: await tx.objectStore('photos').getAllKeys(),
    settings:
      ((await tx.objectStore('device').get(DEVICE_KEYS.settings)) as Partial<Settings> | undefined) ?? null,
  }));

  const zip = startZip();
  const photos: PhotoEntry[] = [];
  const written = new Set<string>();
  for (const [logId, id] of there.photoKeys) {
    if (!isWanted({ logId })) continue;
    const photo = await getPhoto(logId, id);
    const thumbnail = await getThumbnail(logId, id);
    // Deleted since the list was read.
    if (!photo || !thumbnail) continue;
    const hash = sha256(photo.bytes);
    photos.push({ logId, id, sha256: hash, width: photo.width, height: photo.height });
    if (written.has(hash)) continue;
    written.add(hash);
    await zip.add(ENTRIES.photo(hash), new Uint8Array(photo.bytes));
    await zip.add(ENTRIES.thumbnail(hash), new Uint8Array(thumbnail.bytes));
  }

  const { photoKeys: _, ...parts } = there;
  const log = {
    ...{ format: FORMAT, version: FORMAT_VERSION, madeAt },
    ...parts,
    ...proceduresApart(parts.events),
    photos,
  };
  await zip.add(ENTRIES.log, strToU8(JSON.stringify(log)));
  await zip.add(ENTRIES.boxes, strToU8(boxesCsv(there.records)));
  return zip.finish();
};
