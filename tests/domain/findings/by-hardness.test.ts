import { describe, expect, it } from 'vitest';
import { byHardness, HARDNESS } from '../../../src/domain/findings/answers/by-hardness.ts';
import { onLine } from '../../../src/domain/findings/answers/hardness-lines.ts';
import type { JointRow, JointTable } from '../../../src/domain/findings/rows/joint-row.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { rowOf } from './row-of.ts';

const tableOf = (rows: readonly JointRow[]): JointTable => ({ rows, steps: [], leftOut: {} });
/** Twelve joints a wood and pitch; the softer and the finer, the more crests crumble. */
const rows = [2000, 4000, 8000].flatMap((hardness, w) =>
  [2.54, 1.27].flatMap((pitch, p) =>
    Array.from({ length: 12 }, (_, i) =>
      rowOf(
        100 * w + 20 * p + i,
        {},
        {
          wood: `w${w}`,
          hardness,
          pitch: mm(pitch),
          ...(i < 7 + 2.5 * w - 3 * p ? {} : { firstTry: 'failed', symptoms: ['torn'] }),
        },
      ),
    ),
  ),
);

describe('what hardness says of a wood not yet tried', () => {
  it('nothing before three woods and twenty joints', () => {
    expect(byHardness(tableOf([]))).toBeNull();
    expect(byHardness(tableOf(rows.filter(({ wood }) => wood !== 'w2')))).toBeNull();
    expect(byHardness(tableOf(rows.filter((_, i) => i % 4 === 0)))).toBeNull();
  });

  it('harder woods hold more at every pitch, a coarse pitch more than a fine one, intervals hold their middle', () => {
    const found = byHardness(tableOf([...rows, rowOf(999, {}, { hardness: null })]));
    expect(found).toMatchObject({ woods: 3, joints: 72, silent: 1 });
    const [coarse, fine] = found?.lines ?? [];
    if (!coarse || !fine) throw new Error('no lines');
    expect([coarse.pitch, fine.pitch]).toEqual([2.54, 1.27]);
    for (const { points } of [coarse, fine])
      points.forEach((point, i) => {
        expect(point.low <= point.value && point.value <= point.high).toBe(true);
        expect(point.value).toBeGreaterThan(points[i - 1]?.value ?? 0);
      });
    coarse.points.forEach((point, i) => {
      expect(point.value).toBeGreaterThan(fine.points[i]?.value ?? 1);
    });
  });

  it('between its points a line is straight, beyond its ends it stays', () => {
    const [line] = byHardness(tableOf(rows))?.lines ?? [];
    const [a, b] = line?.points ?? [];
    if (!line || !a || !b) throw new Error('no line');
    expect(onLine(line, (a.hardness + b.hardness) / 2)?.value).toBeCloseTo((a.value + b.value) / 2, 9);
    expect(onLine(line, HARDNESS.from / 2)?.value).toBe(a.value);
    expect(onLine(line, HARDNESS.to * 2)?.value).toBe(line.points.at(-1)?.value);
    expect(onLine({ ...line, points: [] }, 3000)).toBeNull();
  });
});
