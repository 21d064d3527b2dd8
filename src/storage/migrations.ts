import type { IDBPDatabase } from 'idb';
import { EVENTS_BY_BOX } from './names.ts';
import type { LidwrightDb } from './schema.ts';

type Db = IDBPDatabase<LidwrightDb>;

/** Additive steps, in order. Each is tested from a frozen copy of the version before it. */
export const MIGRATIONS: readonly { readonly version: number; readonly migrate: (db: Db) => void }[] = [
  {
    version: 1,
    migrate: (db) => {
      db.createObjectStore('records', { keyPath: ['logId', 'kind', 'id'] });
      db.createObjectStore('superseded', { keyPath: ['logId', 'kind', 'id', 'rev', 'writer'] });
      db.createObjectStore('events', { keyPath: ['logId', 'runId', 'n', 'writer'] }).createIndex(
        EVENTS_BY_BOX,
        ['logId', 'boxId'],
      );
      db.createObjectStore('photos', { keyPath: ['logId', 'id'] });
      db.createObjectStore('thumbnails', { keyPath: ['logId', 'id'] });
      db.createObjectStore('drafts', { keyPath: ['logId', 'form'] });
      db.createObjectStore('device');
      db.createObjectStore('imports', { keyPath: ['logId', 'id'] });
    },
  },
];
