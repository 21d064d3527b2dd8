import { describe, expect, it } from 'vitest';
import { measuredTenon } from '../../../src/domain/box/measured.ts';
import { boxOf, turned } from './any-box.ts';

const of = (...entries: Parameters<typeof boxOf>[0]) => measuredTenon(boxOf(entries).tenon);
const SHOULDER = { where: 'shoulder' } as const;
const OVER = { overCrests: true };

describe('a tenon from its readings', () => {
  it('is nothing before the first', () => {
    expect(of()).toBeNull();
  });

  it('is the newest reading at each place, each place weighing the same', () => {
    const tenon = of(turned(52.9), turned(52.4, SHOULDER), turned(52.3));
    expect(tenon).toMatchObject({
      mean: expect.closeTo(52.35, 9),
      taper: expect.closeTo(0.1, 9),
      overCrests: false,
    });
    expect(tenon?.counted).toHaveLength(2);
  });

  it('goes by the sequence, not by the list', () => {
    const readings = boxOf([turned(52.9), turned(52.4)]).tenon.toReversed();
    expect(measuredTenon(readings)?.mean).toBe(52.4);
  });

  it('leaves out what was read over crests once it was read plain', () => {
    expect(of(turned(52.4), turned(52.1, OVER), turned(52, { ...OVER, ...SHOULDER }))).toMatchObject({
      mean: 52.4,
      taper: null,
      overCrests: false,
    });
    expect(of(turned(52.1, OVER))).toMatchObject({ mean: 52.1, overCrests: true });
  });

  it('is the less sure the more it tapers, and over crests less than plain', () => {
    const plain = of(turned(52.4))?.uncertainty ?? 0;
    expect(of(turned(52.4, OVER))?.uncertainty).toBeGreaterThan(plain);
    expect(of(turned(52.4), turned(52.4, SHOULDER))?.uncertainty).toBeLessThan(plain);
    expect(of(turned(52.4), turned(52.6, SHOULDER))?.uncertainty).toBeGreaterThan(0.1);
  });
});
