import type { PhotoBytes, Thumbnail } from './schema.ts';
import { read } from './write.ts';

export const getPhoto = (logId: string, id: string): Promise<PhotoBytes | undefined> =>
  read(['photos'], (tx) => tx.objectStore('photos').get([logId, id]));

export const getThumbnail = (logId: string, id: string): Promise<Thumbnail | undefined> =>
  read(['thumbnails'], (tx) => tx.objectStore('thumbnails').get([logId, id]));
