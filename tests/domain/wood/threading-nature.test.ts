import fc from 'fast-check';
import { expect, test } from 'vitest';
import { speciesTable } from '../../../src/domain/wood/species-table.ts';
import { threadingNature, UNKNOWN_NATURE } from '../../../src/domain/wood/threading-nature.ts';

const natureOf = (key: string) => {
  const wood = speciesTable.find((each) => each.key === key);
  return threadingNature(key, wood?.hardness?.newton ?? null);
};

test('hard and fine holds a thread, soft furs, coarse crumbles (common practice, no source)', () => {
  expect(natureOf('Boxwood, European').crumbles).toBeLessThan(0.2);
  expect(natureOf('Basswood, American').furs).toBeGreaterThan(0.7);
  const [ash, maple] = [natureOf('Ash, white'), natureOf('Maple, sugar')];
  expect(ash.crumbles).toBeGreaterThan(maple.crumbles + 0.2);
});

test('a wood of unknown hardness is taken for an average one', () => {
  expect(threadingNature(null, null)).toEqual(UNKNOWN_NATURE);
  for (const hardness of [Number.NaN, 0, -5, Number.POSITIVE_INFINITY])
    expect(threadingNature('Oak', hardness)).toEqual({ crumbles: 0.3, furs: 0.3 });
});

test('harder never crumbles or furs more, and both stay within 0 to 1', () => {
  const hardness = fc.double({ min: 100, max: 30000, noNaN: true });
  fc.assert(
    fc.property(hardness, hardness, fc.string(), (a, b, key) => {
      const [softer, harder] = [threadingNature(key, Math.min(a, b)), threadingNature(key, Math.max(a, b))];
      expect(harder.crumbles).toBeLessThanOrEqual(softer.crumbles);
      expect(harder.furs).toBeLessThanOrEqual(softer.furs);
      for (const value of [...Object.values(softer), ...Object.values(harder)]) {
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1);
      }
    }),
  );
});
