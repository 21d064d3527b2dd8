import type { IDBPDatabase } from 'idb';
import { BOXES_BY_NUMBER, BOXES_CLOSED } from './names.ts';
import type { LidwrightDb } from './schema.ts';

/** Additive steps, in order. Each is tested from a frozen copy of the version before it. */
export const MIGRATIONS: readonly {
  readonly version: number;
  readonly migrate: (db: IDBPDatabase<LidwrightDb>) => void;
}[] = [
  {
    version: 1,
    migrate: (db) => {
      const records = db.createObjectStore('records', { keyPath: ['logId', 'kind', 'id'] });
      records.createIndex(BOXES_BY_NUMBER, ['logId', 'kind', 'body.number']);
      records.createIndex(BOXES_CLOSED, ['logId', 'kind', 'body.closing.at']);
      db.createObjectStore('superseded', { keyPath: ['logId', 'kind', 'id', 'rev', 'writer'] });
      db.createObjectStore('events', { keyPath: ['logId', 'runId', 'n', 'writer'] });
      db.createObjectStore('photos', { keyPath: ['logId', 'id'] });
      db.createObjectStore('thumbnails', { keyPath: ['logId', 'id'] });
      db.createObjectStore('drafts', { keyPath: ['logId', 'form'] });
      db.createObjectStore('device');
      db.createObjectStore('imports', { keyPath: ['logId', 'id'] });
      db.createObjectStore('stale', { keyPath: ['logId', 'what', 'id'] });
      db.createObjectStore('cache', { keyPath: ['logId', 'what'] });
    },
  },
];
