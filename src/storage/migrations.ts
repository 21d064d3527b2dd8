import type { IDBPDatabase, IDBPTransaction } from 'idb';
import { BOXES_BY_NUMBER, BOXES_CLOSED, EVENTS_BY_BOX, type StoreName } from './names.ts';
import type { LidwrightDb } from './schema.ts';

type Db = IDBPDatabase<LidwrightDb>;
type Upgrade = IDBPTransaction<LidwrightDb, StoreName[], 'versionchange'>;

/** Additive steps, in order. Each is tested from a frozen copy of the version before it. */
export const MIGRATIONS: readonly {
  readonly version: number;
  readonly migrate: (db: Db, tx: Upgrade) => void;
}[] = [
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
  {
    version: 2,
    migrate: (db, tx) => {
      const records = tx.objectStore('records');
      records.createIndex(BOXES_BY_NUMBER, ['logId', 'kind', 'body.number']);
      records.createIndex(BOXES_CLOSED, ['logId', 'kind', 'body.closing.at']);
      db.createObjectStore('touched', { keyPath: ['logId', 'what', 'id'] });
      db.createObjectStore('kept', { keyPath: ['logId', 'what'] });
    },
  },
];
