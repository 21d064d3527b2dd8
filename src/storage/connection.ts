import { type IDBPDatabase, openDB } from 'idb';
import { asFailure, StorageFailure } from './failure.ts';
import { MIGRATIONS } from './migrations.ts';
import { DATABASE, VERSION } from './names.ts';
import type { LidwrightDb } from './schema.ts';

export type Db = IDBPDatabase<LidwrightDb>;

/** An open that takes longer counts as stuck. Phones waking up can take a second or two. */
const OPEN_LIMIT_MS = 8_000;

let opening: Promise<Db> | undefined;
let opened: Db | undefined;

/** How to go on without IndexedDB; a realm that names none, as a worker, which could not see what the page holds, fails. */
let substitute: (() => Promise<unknown>) | undefined;

/** Where there is no IndexedDB, `load` puts something in its place, and what is written lasts as long as the page. */
export const withoutStorage = (load: () => Promise<unknown>): void => {
  substitute = load;
};

const open = (): Promise<Db> =>
  openHere().catch(async (error) => {
    if (!substitute || asFailure(error).reason !== 'none') throw error;
    await substitute();
    return openHere();
  });

const openHere = async (): Promise<Db> => {
  if (typeof indexedDB === 'undefined') throw new StorageFailure('none');
  let isBlocked = false;
  const request = openDB<LidwrightDb>(DATABASE, VERSION, {
    upgrade: (db, from) => {
      for (const step of MIGRATIONS) if (step.version > from) step.migrate(db);
    },
    blocked: () => {
      isBlocked = true;
    },
    blocking: (_current, _blocked, event) => {
      // Another tab wants to upgrade, and waits until this connection is closed.
      (event.target as IDBDatabase).close();
      forget();
    },
    terminated: () => forget(),
  });
  let timer: ReturnType<typeof setTimeout> | undefined;
  const limit = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new StorageFailure(isBlocked ? 'blocked' : 'lost')), OPEN_LIMIT_MS);
  });
  try {
    return await Promise.race([request, limit]);
  } catch (error) {
    // A late success must not leak a connection that blocks others.
    request.then((db) => db.close()).catch(() => {});
    throw error;
  } finally {
    clearTimeout(timer);
  }
};

/** Forgets the connection, or only `dead` if that is still the current one. The next use opens a new connection. */
export const forget = (dead?: Db): void => {
  if (dead && dead !== opened) return;
  opening = undefined;
  opened = undefined;
};

/** The one connection of this page or worker. Returned without a promise when it is open, so that a tap is written without delay. */
export const connection = (): Db | Promise<Db> => {
  if (opened) return opened;
  if (opening) return opening;
  const mine: Promise<Db> = open().then(
    (db) => {
      // If it was forgotten meanwhile, only the callers who already wait for it may use it.
      if (opening === mine) opened = db;
      return db;
    },
    (error: unknown) => {
      if (opening === mine) forget();
      throw error;
    },
  );
  opening = mine;
  return mine;
};

/** Closes and forgets the connection. Workers call it after each piece of work. */
export const disconnect = async (): Promise<void> => {
  const held = opening;
  forget();
  if (held) (await held).close();
};
