import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Stored } from '../../src/domain/box/records.ts';
import { compareVersions, mergeVersions } from '../../src/domain/log/version.ts';
import { disconnect } from '../../src/storage/connection.ts';
import { getRecord } from '../../src/storage/records.ts';
import { listSuperseded, mergeRecord } from '../../src/storage/superseded.ts';
import { write } from '../../src/storage/write.ts';
import { withFreshDatabase } from './fresh-database.ts';
import { storedWood } from './sample-log.ts';

withFreshDatabase();

/** Versions of one record, few enough in kind that ties are common. */
const version: fc.Arbitrary<Stored> = fc
  .record({
    rev: fc.integer({ min: 1, max: 3 }),
    writer: fc.constantFrom('phone-a', 'phone-b'),
    savedAt: fc.integer({ min: 0, max: 1000 }),
    body: fc.option(fc.constantFrom('Plum', 'Damson'), { nil: null }),
  })
  .map(({ body, ...version }) =>
    storedWood({ ...version, ...(body === null ? { body: null } : {}) }, body ?? ''),
  );

const merged = (a: Stored, b: Stored) => mergeVersions(a, b).winner;
/** Equal as versions: savedAt is only for showing. */
const same = (a: Stored, b: Stored) => compareVersions(a, b) === 0;

test('merging does not depend on who comes first', () => {
  fc.assert(fc.property(version, version, (a, b) => same(merged(a, b), merged(b, a))));
});

test('merging does not depend on how three are paired', () => {
  fc.assert(
    fc.property(version, version, version, (a, b, c) =>
      same(merged(merged(a, b), c), merged(a, merged(b, c))),
    ),
  );
});

test('merging a version with itself gives it back and leaves no loser', () => {
  fc.assert(
    fc.property(version, (a) => {
      expect(mergeVersions(a, structuredClone(a))).toEqual({ winner: a, loser: null });
    }),
  );
});

test('no version is lost: winner and loser are the two that met', () => {
  fc.assert(
    fc.property(version, version, (a, b) => {
      const { winner, loser } = mergeVersions(a, b);
      expect([a, b]).toContain(winner);
      if (loser) expect([a, b].filter((v) => v !== winner)).toEqual([loser]);
      else expect(same(a, b)).toBe(true);
    }),
  );
});

test('no clock takes part', () => {
  fc.assert(
    fc.property(version, version, fc.integer(), (a, b, savedAt) => {
      expect(Math.sign(compareVersions({ ...a, savedAt }, b))).toBe(Math.sign(compareVersions(a, b)));
    }),
  );
});

test('in the store: any order of arrival ends with the same record and the same losers', async () => {
  const arrive = async (versions: readonly Stored[]) => {
    globalThis.indexedDB = new IDBFactory();
    await disconnect();
    for (const v of versions) await write(['records', 'superseded'], (tx) => mergeRecord(tx, v, 0));
    const record = await getRecord('mine', 'wood', 'wood-1');
    return { record, losers: await listSuperseded('mine') };
  };
  // One content for one (writer, rev): what real writers do, for each counts on from the greatest it has seen.
  const honest = fc
    .uniqueArray(version, { minLength: 1, maxLength: 6, selector: (v) => `${v.rev} ${v.writer}` })
    .chain((versions) =>
      fc.tuple(fc.constant(versions), fc.shuffledSubarray(versions, { minLength: versions.length })),
    );
  await fc.assert(
    fc.asyncProperty(honest, async ([one, other]) => {
      expect(await arrive(one)).toEqual(await arrive(other));
    }),
    { numRuns: 60 },
  );
});
