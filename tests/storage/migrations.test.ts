import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { connection } from '../../src/storage/connection.ts';
import { MIGRATIONS } from '../../src/storage/migrations.ts';
import { DATABASE, VERSION } from '../../src/storage/names.ts';
import { everything, openRaw, withFreshDatabase } from './fresh-database.ts';

withFreshDatabase();

interface Fixture {
  readonly version: number;
  readonly stores: Readonly<
    Record<
      string,
      {
        readonly keyPath: string[] | null;
        readonly indexes: Readonly<Record<string, string[]>>;
        readonly entries: readonly {
          readonly key?: string;
          readonly value: Record<string, unknown> | string;
        }[];
      }
    >
  >;
}

const directory = new URL('./fixtures/', import.meta.url);
const fixtures: Fixture[] = readdirSync(directory)
  .filter((name) => /^version-\d+\.json$/.test(name))
  .map((name) => JSON.parse(readFileSync(new URL(name, directory), 'utf8')));

/** Bytes stand in the fixture as hexadecimal. */
const revive = (value: Record<string, unknown> | string) =>
  typeof value === 'object' && typeof value.bytes === 'string'
    ? { ...value, bytes: new Uint8Array(Buffer.from(value.bytes, 'hex')).buffer }
    : value;

const build = async ({ version, stores }: Fixture) => {
  const db = await openRaw(DATABASE, version, (upgrading) => {
    for (const [name, { keyPath, indexes }] of Object.entries(stores)) {
      const store = upgrading.createObjectStore(name, { keyPath });
      for (const [index, path] of Object.entries(indexes)) store.createIndex(index, path);
    }
  });
  const tx = db.transaction(Object.keys(stores), 'readwrite');
  for (const [name, { entries }] of Object.entries(stores))
    for (const { key, value } of entries) tx.objectStore(name).put(revive(value), key);
  await new Promise((resolve, reject) => {
    tx.oncomplete = resolve;
    tx.onerror = reject;
  });
  db.close();
};

/** Names, key paths and indexes, as they are now. */
const shape = async () => {
  const db = await connection();
  return Object.fromEntries(
    [...db.objectStoreNames].map((name) => {
      const store = db.transaction(name).store;
      const indexes = [...store.indexNames].map((index) => [index, store.index(index).keyPath]);
      return [name, { keyPath: store.keyPath, indexes: Object.fromEntries(indexes) }];
    }),
  );
};

test('every version has its frozen database, and migrations are in order', () => {
  expect(fixtures.map((fixture) => fixture.version)).toEqual(
    Array.from({ length: VERSION }, (_, i) => i + 1),
  );
  expect(MIGRATIONS.map((step) => step.version)).toEqual(Array.from({ length: VERSION }, (_, i) => i + 1));
});

test('a new database is what the newest frozen one says', async () => {
  const newest = fixtures.at(-1);
  const frozen = Object.entries(newest?.stores ?? {}).map(([name, { keyPath, indexes }]) => [
    name,
    { keyPath, indexes },
  ]);
  expect(await shape()).toEqual(Object.fromEntries(frozen));
});

for (const fixture of fixtures)
  test(`a database of version ${fixture.version} opens with all that was in it`, async () => {
    await build(fixture);
    const there = await everything();
    for (const [name, { entries }] of Object.entries(fixture.stores))
      expect(
        there[name]?.map((entry) => (entry as { value: unknown }).value),
        name,
      ).toEqual(entries.map(({ value }) => revive(value)));
    expect((await connection()).version).toBe(VERSION);
  });
