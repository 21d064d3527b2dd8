import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/domain/box/records.ts';
import { allowances } from '../../../src/domain/findings/answers/allowance.ts';
import { contradicts, wantedBy } from '../../../src/domain/findings/answers/clearance-likelihood.ts';
import { hardnessCurve, heldAt } from '../../../src/domain/findings/answers/hardness-curve.ts';
import { howManyMore } from '../../../src/domain/findings/answers/how-many-more.ts';
import { lastAlike } from '../../../src/domain/findings/answers/last-alike.ts';
import { mechanism, mechanismOf, SYMPTOMS } from '../../../src/domain/findings/answers/mechanism.ts';
import { stepTimes } from '../../../src/domain/findings/answers/step-times.ts';
import { woodsByPitch } from '../../../src/domain/findings/answers/woods-by-pitch.ts';
import { checkpoint } from '../../../src/domain/findings/answers/wording.ts';
import { clustersOf } from '../../../src/domain/findings/rows/clusters.ts';
import type { ClearanceTrial, JointRow, JointTable } from '../../../src/domain/findings/rows/joint-row.ts';
import { dictionarySheet, rowsSheet } from '../../../src/domain/findings/rows/rows-sheet.ts';
import {
  chanceAtLeast,
  neverRising,
  pooledShares,
} from '../../../src/domain/findings/statistics/pooled-shares.ts';
import { drift, shift } from '../../../src/domain/findings/statistics/rank-statistics.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { must } from './expect-digits.ts';
import { rowOf } from './row-of.ts';

const tableOf = (rows: readonly JointRow[]): JointTable => ({
  rows,
  steps: [{ key: 'gap', sentence: 'Still no card?', guards: ['creep'] }],
  leftOut: {},
});

describe('mechanism', () => {
  it('a leaning jig explains a stiff lid, cannot taper or tear, and a double cut needs a slip', () => {
    expect(mechanism(['lean', 'tilt'], 'stiff-all-the-way')).toBe('explains');
    expect(mechanism(['lean', 'tilt'], 'tight-once-a-turn')).toBe('cannot');
    expect(mechanism(['lean', 'tilt'], 'torn')).toBe('cannot');
    expect(mechanism(['lean', 'tilt'], 'drags-more-each-turn')).toBe('either');
    expect(mechanism(['lean', 'creep'], 'drags-more-each-turn')).toBe('explains');
    expect(mechanism(['double-cut'], 'thin-or-double-cut')).toBe('explains');
    expect(mechanismOf(['injury', 'dust'])).toEqual({ explains: [], cannot: SYMPTOMS });
  });
});

describe('how many more boxes', () => {
  it('nothing where missing did not go worse, was missed under three times, or always', () => {
    expect(howManyMore({ a: 1, b: 9, c: 5, d: 20 })).toBeNull();
    expect(howManyMore({ a: 2, b: 0, c: 1, d: 30 })).toBeNull();
    expect(howManyMore({ a: 5, b: 5, c: 0, d: 0 })).toBeNull();
  });
  it('none where the answer is plain, more for four in five than for even, and past it where the log will not tell', () => {
    expect(howManyMore({ a: 9, b: 1, c: 4, d: 46 })).toEqual({ fifty: 0, eighty: 0 });
    const some = howManyMore({ a: 4, b: 8, c: 4, d: 30 });
    expect(some?.fifty).toBeGreaterThan(0);
    expect(some?.eighty).toBeGreaterThan(some?.fifty as number);
    expect(howManyMore({ a: 3, b: 12, c: 10, d: 55 })).toEqual({ fifty: 'past', eighty: 'past' });
  });
});

describe('checkpoints', () => {
  it('words wait for the next size', () => {
    expect([0, 19, 20, 29, 119, 120, 499, 500, 749, 750, 10_000].map((n) => checkpoint(n).at)).toEqual([
      0, 0, 20, 20, 90, 120, 350, 500, 500, 750, 10_000,
    ]);
    expect(checkpoint(600).next).toBe(750);
  });
});

describe('shares that lean on each other', () => {
  it('a cell with nothing in it believes what the others do; more of its own brings it home', () => {
    const [empty, many] = pooledShares([
      { events: 0, total: 0 },
      { events: 50, total: 50 },
    ]);
    expect(empty?.mean).toBeGreaterThan(0.6);
    expect(many?.low).toBeGreaterThan(0.93);
    expect(pooledShares([])).toEqual([]);
  });

  it('beliefs sum to one, intervals lie in [0, 1] about the mean, and order of cells does not matter', () => {
    const cell = fc
      .integer({ min: 0, max: 20 })
      .chain((total) => fc.record({ events: fc.integer({ min: 0, max: total }), total: fc.constant(total) }));
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1, maxLength: 6 }), (cells) => {
        const shares = pooledShares(cells);
        const back = [...pooledShares([...cells].reverse())].reverse();
        shares.forEach((share, i) => {
          expect(chanceAtLeast(share.belief, 0)).toBeCloseTo(1, 9);
          expect(
            0 <= share.low && share.low <= share.mean && share.mean <= share.high && share.high <= 1,
          ).toBe(true);
          expect(back[i]?.mean).toBeCloseTo(share.mean, 6);
        });
      }),
      { numRuns: 12 },
    );
  });

  it('a finer thread that fails does not pull down one that holds, and none rises along the list', () => {
    const beliefs = pooledShares([
      { events: 2, total: 4 },
      { events: 20, total: 20 },
      { events: 0, total: 12 },
    ]).map(({ belief }) => belief);
    const chances = neverRising(beliefs).map((belief) => chanceAtLeast(belief, 0.8));
    expect(chances[0]).toBeGreaterThan(0.8);
    expect(chances[0] as number).toBeGreaterThanOrEqual(chances[1] as number);
    expect(chances[2]).toBeLessThan(0.01);
  });
});

describe('woods by pitch', () => {
  const rows = [
    ...Array.from({ length: 12 }, (_, i) => rowOf(i, {}, { pitch: mm(2.54) })),
    ...Array.from({ length: 12 }, (_, i) =>
      rowOf(20 + i, {}, { pitch: mm(1.27), firstTry: 'failed', symptoms: ['chipped'] }),
    ),
    ...Array.from({ length: 6 }, (_, i) => rowOf(40 + i, {}, { pitch: mm(1.27), hardener: 'thin-ca' })),
    rowOf(50, {}, { wood: 'box', woodGroup: 'hardwood' }),
    rowOf(51, {}, { firstTry: 'failed', symptoms: ['stiff-all-the-way'] }),
    rowOf(52, {}, { firstTry: 'unknown' }),
  ];
  const { woods, silent } = woodsByPitch(tableOf(rows));

  it('the finest pitch that holds is by crests alone and without hardener', () => {
    const cherry = woods.find(({ wood }) => wood === 'cherry');
    expect(cherry?.finest?.pitch).toBe(2.54);
    expect(cherry?.pitches.map(({ hardened, held }) => [hardened, held.events, held.total])).toEqual([
      [false, 13, 13],
      [false, 0, 12],
      [true, 6, 6],
    ]);
    expect(cherry?.pitches[0]?.right).toEqual({ events: 12, total: 13 });
  });
  it('a wood under five boxes is little tried and promises nothing; the untried are counted', () => {
    expect(woods.find(({ wood }) => wood === 'box')).toMatchObject({ littleTried: true, finest: null });
    expect(silent['never-tried']).toBe(1);
  });
  it('no rows, no woods', () => {
    expect(woodsByPitch(tableOf([]))).toEqual({ woods: [], silent: { 'never-tried': 0 } });
  });
});

describe('hardness curve', () => {
  it('harder woods hold better where the log says so; refuses what is no hardness; null without joints', () => {
    const tried = [
      [2000, 4],
      [3000, 8],
      [5000, 13],
      [8000, 15],
    ] as const;
    const rows = tried.flatMap(([hardness, whole], w) =>
      Array.from({ length: 15 }, (_, i) => {
        const held = i < whole;
        return rowOf(
          100 * w + i,
          {},
          { wood: `w${w}`, hardness, ...(held ? {} : { firstTry: 'failed', symptoms: ['torn'] }) },
        );
      }),
    );
    const curve = hardnessCurve(tableOf(rows));
    if (!curve) throw new Error('no curve');
    const [soft, hard] = [must(heldAt(curve, 2200, 2.54)), must(heldAt(curve, 7500, 2.54))];
    expect(soft.value).toBeLessThan(hard.value);
    for (const { low, value, high } of [soft, hard]) expect(low < value && value < high).toBe(true);
    expect(heldAt(curve, Number.NaN, 2.54).ok).toBe(false);
    expect(hardnessCurve(tableOf([]))).toBeNull();
  });
});

describe('allowance', () => {
  const trial = (clearance: number, felt: ClearanceTrial['felt'], fit = 0): ClearanceTrial => ({
    clearance: mm(clearance),
    felt,
    fit,
  });

  it('tight then right at less clearance contradicts itself; the other way round does not', () => {
    expect(contradicts(wantedBy([trial(0.3, 'tight'), trial(0.25, 'right')]))).toBe(true);
    expect(contradicts(wantedBy([trial(0.25, 'tight'), trial(0.3, 'right')]))).toBe(false);
    expect(contradicts(wantedBy([trial(0.3, 'slack'), trial(0.35, 'tight')]))).toBe(true);
  });

  it('moves from geometry to what worked, narrows with joints, and counts contradictions', () => {
    const joints = (n: number) =>
      tableOf(
        Array.from({ length: n }, (_, i) =>
          rowOf(i, {}, { clearanceTrials: [trial(0.34, 'tight'), trial(0.42 + (i % 3) * 0.02, 'right')] }),
        ),
      );
    const [few, many] = [allowances(joints(3)).pitches[0], allowances(joints(40)).pitches[0]];
    if (!few || !many) throw new Error('no allowance');
    expect(many.clearance.value).toBeGreaterThan(few.clearance.value);
    expect(many.clearance.high - many.clearance.low).toBeLessThan(few.clearance.high - few.clearance.low);
    const clash = allowances(
      tableOf([rowOf(1, {}, { clearanceTrials: [trial(0.3, 'tight'), trial(0.25, 'right')] })]),
    );
    expect(clash.pitches[0]).toMatchObject({ contradictory: 1, joints: 1 });
  });

  it('no trials: no allowance, all counted; the interval holds its value whatever is said', () => {
    expect(allowances(tableOf([rowOf(1, {})]))).toEqual({ pitches: [], silent: 1 });
    const any = fc.array(
      fc.record({
        clearance: fc.integer({ min: -30, max: 90 }).map((x) => mm(x / 100)),
        felt: fc.constantFrom<ClearanceTrial['felt']>('tight', 'right', 'slack'),
        fit: fc.integer({ min: 0, max: 1 }),
      }),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 8 }), (joints) => {
        const found = allowances(
          tableOf(joints.map((clearanceTrials, i) => rowOf(i, {}, { clearanceTrials }))),
        );
        const { value, low, high } = found.pitches[0]?.clearance ?? { value: Number.NaN, low: 0, high: 0 };
        expect(low <= value && value <= high).toBe(true);
      }),
      { numRuns: 15 },
    );
  });
});

describe('time', () => {
  it('fewer than four sessions show no drift, three in a group no shift; a steady fall is seen', () => {
    expect(drift([1, 2, 3].map((x) => ({ x, y: x })))).toBeNull();
    expect(shift([1, 2], [3, 4, 5])).toBeNull();
    const fall = drift(Array.from({ length: 12 }, (_, x) => ({ x, y: -x })));
    expect(fall).toMatchObject({ slope: -1 });
    expect(fall?.p).toBeLessThan(0.001);
  });

  it('only exact times count; under half the usual is hurried', () => {
    const timed = (number: number, exactMs: number | null) => {
      const row = rowOf(number, { gap: 'done' });
      return {
        ...row,
        steps: { ...row.steps, recess: { gap: { outcome: 'done' as const, carriedOver: false, exactMs } } },
      };
    };
    const [gap] = stepTimes(
      tableOf([...[50, 52, 48, 51, 49, 50, 20].map((s, i) => timed(i, s * 1000)), timed(9, null)]),
    );
    expect(gap).toMatchObject({ usualMs: 50_000, exact: 7, unknown: 1, hurried: 1 });
  });
});

describe('the other steps where one was missed', () => {
  const timed = (number: number, gap: 'done' | 'skipped', boardMs: number) => {
    const row = rowOf(number, { gap });
    const step = (outcome: 'done' | 'skipped', exactMs: number | null) => ({
      ...{ outcome, exactMs },
      carriedOver: false,
    });
    return {
      ...row,
      steps: {
        recess: { gap: step(gap, gap === 'done' ? 30_000 : null), board: step('done', boardMs) },
        tenon: {},
      },
    };
  };
  it('take the factor they were made with, and nothing is said of under three', () => {
    const rows = Array.from({ length: 24 }, (_, i) =>
      timed(i, i % 3 ? 'done' : 'skipped', (40_000 + 500 * (i % 5)) * (i % 3 ? 1 : 1.5)),
    );
    const [gap] = stepTimes(tableOf(rows));
    expect(gap?.without?.value).toBeCloseTo(1.5, 1);
    expect(gap?.without?.low).toBeGreaterThan(1.3);
    expect(gap?.without?.p).toBeLessThan(0.01);
    expect(stepTimes(tableOf(rows.slice(0, 6)))[0]?.without).toBeNull();
  });
});

describe('the last boxes alike', () => {
  const box = (number: number, wood: string, tried: boolean): Box =>
    ({
      number,
      plan: { lid: { wood }, base: { wood }, insert: null, pitch: { text: '10 tpi' } },
      trials: tried ? [{ right: true, afterFinish: false }] : [],
    }) as unknown as Box;
  it('are those tried in the wood and pitch of the newest box, newest first, five at most', () => {
    const boxes = new Map(
      Array.from({ length: 20 }, (_, i) => [`b${i}`, box(i, i % 2 ? 'Apple' : 'Cherry', i !== 13)] as const),
    );
    boxes.set('b20', box(20, 'Apple', false));
    expect(lastAlike(boxes)).toEqual({
      wood: 'Apple',
      pitch: '10 tpi',
      boxes: ['b19', 'b17', 'b15', 'b11', 'b9'],
    });
    expect(lastAlike(new Map())).toBeNull();
  });
});

describe('clusters and the sheet', () => {
  it('joints that share a tag, directly or through another, are one cluster', () => {
    expect(clustersOf([['a'], ['b'], ['a', 'c'], ['c', 'b'], ['d']])).toEqual([0, 0, 0, 0, 1]);
  });

  it('every row has every column, and every column is explained', () => {
    const table = tableOf([rowOf(2, { gap: 'done' }), rowOf(1, { gap: 'skipped' })]);
    const [heading, ...rows] = rowsSheet(table);
    for (const row of rows) expect(row).toHaveLength(heading?.length ?? 0);
    expect(rows.map((row) => row[0])).toEqual(['joint-1', 'joint-2']);
    expect(
      dictionarySheet(table)
        .slice(1)
        .map(([name]) => name),
    ).toEqual(heading);
    expect(rows[0]?.[heading?.indexOf('gap.recess') ?? 0]).toBe('skipped');
  });
});
