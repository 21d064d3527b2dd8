import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Stored } from '../../../src/domain/box/records.ts';
import { canonical } from '../../../src/domain/log/canonical.ts';
import { compareVersions, mergeVersions } from '../../../src/domain/log/version.ts';

const version = fc.record({
  rev: fc.integer({ min: 1, max: 4 }),
  writer: fc.constantFrom('a', 'b', 'c'),
  name: fc.constantFrom('ash', 'box', 'yew', null),
  savedAt: fc.integer(),
});
const stored = ({
  rev,
  writer,
  name,
  savedAt,
}: {
  rev: number;
  writer: string;
  name: string | null;
  savedAt: number;
}) =>
  ({
    logId: 'mine',
    kind: 'wood',
    id: 'x',
    rev,
    writer,
    savedAt,
    body: name === null ? null : { name, group: 'hardwood', note: '' },
  }) as Stored<'wood'>;
const versions = version.map(stored);
const winner = (a: Stored<'wood'>, b: Stored<'wood'>) => mergeVersions(a, b).winner;
/** Two versions are the same when nothing but the time of saving differs. */
const same = (a: Stored<'wood'>, b: Stored<'wood'>) => compareVersions(a, b) === 0;

describe('versions of a record', () => {
  it('agree on the winner whichever comes first', () => {
    fc.assert(fc.property(versions, versions, (a, b) => same(winner(a, b), winner(b, a))));
  });

  it('agree on the winner however three meet', () => {
    fc.assert(
      fc.property(versions, versions, versions, (a, b, c) =>
        same(winner(winner(a, b), c), winner(a, winner(b, c))),
      ),
    );
  });

  it('merge with themselves into themselves, and nothing is superseded', () => {
    fc.assert(
      fc.property(versions, (a) => {
        expect(mergeVersions(a, a)).toEqual({ winner: a, loser: null });
      }),
    );
  });

  it('keep the loser: of two different versions none is dropped', () => {
    fc.assert(
      fc.property(versions, versions, (a, b) => {
        fc.pre(!same(a, b));
        const { winner: won, loser } = mergeVersions(a, b);
        expect([won, loser]).toEqual(expect.arrayContaining([a, b]));
      }),
    );
  });

  it('are ordered by no clock', () => {
    fc.assert(
      fc.property(versions, fc.integer(), (a, savedAt) => compareVersions(a, { ...a, savedAt }) === 0),
    );
  });

  it('a deletion is a version: a later one wins over an edit', () => {
    const edit = stored({ rev: 2, writer: 'a', name: 'ash', savedAt: 0 });
    const gone = stored({ rev: 3, writer: 'a', name: null, savedAt: 0 });
    expect(winner(edit, gone).body).toBeNull();
  });
});

describe('canonical text', () => {
  it('is the same whatever order the keys came in', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (record) => {
        const backwards = Object.fromEntries(Object.entries(record).reverse());
        expect(canonical(backwards)).toBe(canonical(record));
      }),
    );
  });

  it('keeps the order of lists', () => {
    expect(canonical([1, 2])).not.toBe(canonical([2, 1]));
  });
});
