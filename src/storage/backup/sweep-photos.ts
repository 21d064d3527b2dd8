import type { Stored } from '../../domain/box/records.ts';
import { DEVICE_KEYS } from '../names.ts';
import { photosShown } from '../superseded.ts';
import { write } from '../write.ts';

/** Held while a backup is taken in, so that no other tab takes its staged photos for left ones. */
const IMPORT = 'lidwright-import';

/** Absent in workers of a test, and on pages whose address is not secure. */
const locks = (): LockManager | undefined => globalThis.navigator?.locks;

/** Does the work of an import when no other tab is at one. */
export const asTheOneImport = async <T>(work: () => Promise<T>): Promise<T> => {
  let value: T | undefined;
  const run = async (): Promise<void> => {
    value = await work();
  };
  await (locks()?.request(IMPORT, run) ?? run());
  return value as T;
};

/** At a start: removes what a killed import has staged, unless an import runs in another tab; without locks, which tell, never. */
export const sweepLeftPhotos = async (): Promise<void> => {
  await locks()?.request(IMPORT, { ifAvailable: true }, async (lock) => {
    if (lock) await sweepStagedPhotos();
  });
};

/**
 * For the one import: removes photos that no box shows, in no version, if an import staged any and did not come to its end.
 * How many.
 */
export const sweepStagedPhotos = (): Promise<number> =>
  write(['records', 'superseded', 'photos', 'thumbnails', 'device'], async (tx) => {
    const device = tx.objectStore('device');
    if ((await device.getKey(DEVICE_KEYS.staged)) === undefined) return 0;
    const versions: readonly Stored[] = [
      ...(await tx.objectStore('records').getAll()),
      ...(await tx.objectStore('superseded').getAll()),
    ];
    const shown = new Set(
      versions.flatMap((version) => photosShown(version).map((id) => key(version.logId, id))),
    );
    const orphans = (await tx.objectStore('photos').getAllKeys()).filter(
      ([logId, id]) => !shown.has(key(logId, id)),
    );
    for (const orphan of orphans) {
      await tx.objectStore('photos').delete(orphan);
      await tx.objectStore('thumbnails').delete(orphan);
    }
    await device.delete(DEVICE_KEYS.staged);
    return orphans.length;
  });

const key = (logId: string, id: string): string => JSON.stringify([logId, id]);
