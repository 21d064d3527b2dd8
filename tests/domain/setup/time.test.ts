import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Stamp } from '../../../src/domain/setup/events.ts';
import { addSpans, between, NO_TIME } from '../../../src/domain/setup/time.ts';

const at = (stamp: Partial<Stamp>): Stamp => ({ at: 1_000_000, mono: 5_000, hid: 0, session: 's', ...stamp });
const later = (wall: number, mono: number, hid = 0, session = 's'): Stamp =>
  at({ at: 1_000_000 + wall, mono: 5_000 + mono, hid, session });

describe('the time between two taps', () => {
  test.each([
    ['awake, clocks agree', later(40_000, 40_000), { min: 40_000, max: 40_000, exact: true }],
    ['a glance away of just 30 s', later(40_000, 40_000, 30_000), { min: 40_000, max: 40_000, exact: true }],
    ['out of sight longer', later(40_000, 40_000, 30_001), { min: 9_999, max: 40_000, exact: false }],
    ['wall clock 2 s off', later(42_000, 40_000), { min: 40_000, max: 40_000, exact: true }],
    ['wall clock set forward', later(3_640_000, 40_000), { min: 40_000, max: 3_640_000, exact: false }],
    ['wall clock set back', later(-3_560_000, 40_000), { min: 40_000, max: 40_000, exact: false }],
    [
      'phone asleep, its own clock stopped',
      later(600_000, 5_000, 4_000),
      { min: 1_000, max: 600_000, exact: false },
    ],
    ['another page load', later(90_000, -4_000, 0, 't'), { min: 0, max: 90_000, exact: false }],
    ['another page load, clock set back', later(-90_000, -4_000, 0, 't'), { min: 0, max: 0, exact: false }],
    ['a page clock that ran backwards', later(0, -1_500), { min: 0, max: 0, exact: false }],
  ])('%s', (_name, to, span) => {
    expect(between(at({}), to)).toEqual(span);
  });

  test('never is negative, whatever the clocks say', () => {
    const stamp = fc.record({
      at: fc.integer({ min: -1e13, max: 1e13 }),
      mono: fc.integer({ min: -1e9, max: 1e9 }),
      hid: fc.integer({ min: 0, max: 1e9 }),
      session: fc.constantFrom('s', 't'),
    });
    fc.assert(
      fc.property(stamp, stamp, (from, to) => {
        const { min, max, exact } = between(from, to);
        expect(min).toBeGreaterThanOrEqual(0);
        expect(max).toBeGreaterThanOrEqual(min);
        if (exact) expect([min, from.session]).toEqual([max, to.session]);
      }),
      { numRuns: 2000 },
    );
  });

  test('adds up, and is exact only if every part is', () => {
    const exact = { min: 5, max: 5, exact: true };
    const loose = { min: 1, max: 9, exact: false };
    expect(addSpans(exact, loose)).toEqual({ min: 6, max: 14, exact: false });
    expect(addSpans(exact, NO_TIME)).toEqual(exact);
  });
});
