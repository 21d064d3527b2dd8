import type { Stored } from '../../domain/box/records.ts';
import { photosShown } from '../superseded.ts';
import { write } from '../write.ts';

/** Removes photos that no box shows, in no version: what an import that did not come to its end has left. */
export const sweepOrphanPhotos = (): Promise<number> =>
  write(['records', 'superseded', 'photos', 'thumbnails'], async (tx) => {
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
    return orphans.length;
  });

const key = (logId: string, id: string): string => JSON.stringify([logId, id]);
