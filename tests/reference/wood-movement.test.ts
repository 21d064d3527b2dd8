/**
 * Wood Handbook, FPL-GTR-190 (2010): Table 13-5 (movement coefficients), Tables 4-3 and 4-4 (shrinkage); FPL-GTR-282 (2021): Tables 5-3 and 5-5
 * (hardness); as copied into shared/wood-*.json, which names its sources row by row.
 */
import { describe, expect, test } from 'vitest';
import changes from '../../shared/wood-dimensional-change.json' with { type: 'json' };
import hardness from '../../shared/wood-hardness.json' with { type: 'json' };
import shrinkages from '../../shared/wood-shrinkage.json' with { type: 'json' };
import { mm, moisture } from '../../src/domain/units/brands.ts';
import { clearanceForSeason } from '../../src/domain/wood/movement.ts';
import { movementFromShrinkage, movementTable } from '../../src/domain/wood/movement-table.ts';
import { speciesTable } from '../../src/domain/wood/species-table.ts';
import { strainOf } from '../../src/domain/wood/strain-of.ts';
import { gotten } from '../domain/joint/results.ts';

test('every row of Table 13-5 is in the movement table as printed', () => {
  expect(changes.rows.length).toBe(128);
  const wrong = changes.rows.filter(({ species, CR, CT }) => {
    const strain = strainOf(species);
    return strain?.radial !== CR || strain.tangential !== CT;
  });
  expect(wrong).toEqual([]);
});

test('Table 13-5 follows from Table 4-3 within 0.00002 for all woods named alike in both but eight', () => {
  const shrinkageOf = new Map(shrinkages.domestic_table_4_3.map((row) => [row.species, row]));
  const both = changes.rows.flatMap(({ species, CR, CT }) => {
    const row = shrinkageOf.get(species);
    return row && row.tangential !== null
      ? [[row.radial, CR] as const, [row.tangential, CT] as const].map((pair) => [species, ...pair] as const)
      : [];
  });
  const off = both.filter(
    ([, shrinkage, tabled]) => Math.abs(movementFromShrinkage(shrinkage) - tabled) > 0.00002,
  );
  expect(both.length).toBeGreaterThanOrEqual(2 * 70);
  expect(new Set(off.map(([species]) => species)).size).toBeLessThanOrEqual(8);
});

describe('diametral movement for 3 % moisture, end grain, one wood (worked from the coefficients by hand, mm)', () => {
  test.each([
    ['Walnut, black', 0.063, 0.126, 0.189, 0.252],
    ['Birch, yellow', 0.061, 0.123, 0.184, 0.246],
    ['Ash, white', 0.079, 0.157, 0.236, 0.315],
    ['Cherry, black', 0.091, 0.183, 0.274, 0.366],
    ['Apple', 0.128, 0.256, 0.385, 0.513],
    ['Maple, sugar', 0.141, 0.282, 0.423, 0.564],
    ['Elm, American', 0.146, 0.291, 0.437, 0.582],
    ['Beech, American', 0.181, 0.361, 0.542, 0.723],
  ])('%s', (wood, ...wanted) => {
    const strain = strainOf(wood);
    if (!strain) throw new Error('not tabled');
    const piece = { strain, grain: 'end' } as const;
    for (const [i, diameter] of [25, 50, 75, 100].entries()) {
      const moved = gotten(clearanceForSeason(mm(diameter), piece, piece, moisture(3)));
      expect(Math.abs(moved - (wanted[i] ?? Number.NaN))).toBeLessThanOrEqual(0.00051);
    }
  });
});

describe('the species table', () => {
  test('has one row for each key and for each name', () => {
    expect(new Set(speciesTable.map(({ key }) => key)).size).toBe(speciesTable.length);
    expect(new Set(speciesTable.map(({ name }) => name)).size).toBe(speciesTable.length);
    expect(speciesTable.length).toBe(movementTable.length);
    expect(speciesTable.length).toBeGreaterThan(180);
  });

  test('carries the printed hardness of every wood it shares with Tables 5-3 and 5-5', () => {
    const found = new Map(speciesTable.map((wood) => [wood.key, wood]));
    const shared = hardness.us_table_5_3.filter(({ species }) => found.has(species));
    expect(shared.length).toBeGreaterThan(55);
    for (const { species, hardness_lbf_12, hardness_N_12, sg12 } of shared) {
      const wood = found.get(species);
      expect(wood?.hardness?.lbf ?? null, species).toBe(hardness_lbf_12);
      // The metric table rounds to 100 N.
      if (wood?.hardness && hardness_N_12)
        expect(Math.abs(wood.hardness.newton - hardness_N_12), species).toBeLessThanOrEqual(55);
      if (sg12) expect(Math.abs((wood?.density ?? 0) - 1120 * sg12), species).toBeLessThanOrEqual(5.0001);
    }
  });

  test.each([
    ['Maple, sugar', 'Sugar maple', 'hardwood', 1450],
    ['Cherry, black', 'Black cherry', 'hardwood', 950],
    ['Boxwood, European', 'European boxwood', 'hardwood', 2840],
    ['Oak, white, commercial', 'White oak', 'hardwood', 1360],
    ['Cedar, eastern redcedar', 'Eastern redcedar', 'softwood', null],
    ['Oak, white, live', 'Live oak', 'hardwood', null],
    ['Douglas-fir, coast', 'Coast Douglas-fir', 'softwood', 710],
    ['Mahogany (American)', 'Mahogany (American)', 'tropical', 800],
    ['Purpleheart', 'Purpleheart', 'tropical', 1860],
  ])('%s is %s', (key, name, group, lbf) => {
    const wood = speciesTable.find((each) => each.key === key);
    expect(wood).toMatchObject({ name, group });
    expect(wood?.hardness?.lbf ?? null).toBe(lbf);
  });

  test('says which figures were recalled or calculated, and which hardness is of the trade', () => {
    const boxwood = speciesTable.find(({ key }) => key === 'Boxwood, European');
    expect(boxwood).toMatchObject({ from: 'shrinkage', hardness: { inHandbook: false } });
    expect(speciesTable.find(({ key }) => key === 'Cocobolo')).toMatchObject({ read: false });
  });

  test('every wood swells more along the rings than across them, by a believable amount', () => {
    for (const { key, strain } of speciesTable) {
      expect(strain.tangential, key).toBeGreaterThan(strain.radial);
      expect(strain.radial, key).toBeGreaterThan(0.0005);
      expect(strain.tangential, key).toBeLessThan(0.0056);
    }
  });
});
