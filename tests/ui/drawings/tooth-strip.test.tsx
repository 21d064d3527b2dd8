// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { ToothMark } from '../../../src/ui/drawings/tooth-marks.tsx';
import { type ToothState, toothShape } from '../../../src/ui/drawings/tooth-shape.ts';
import { type Tooth, ToothStrip } from '../../../src/ui/drawings/tooth-strip.tsx';

afterEach(cleanup);

const STATES: readonly ToothState[] = [
  'passed',
  'failed',
  'skipped',
  'carried',
  'reopened',
  'closed',
  'not-needed',
  'now',
  'to-come',
];
const strip = (teeth: readonly Tooth[]) => {
  render(<ToothStrip teeth={teeth} label="Step 2 of 3: 1 passed, now gap" />);
  return screen.getByRole('img', { name: 'Step 2 of 3: 1 passed, now gap' });
};
const tooth = (key: string, state: ToothState, hold = false): Tooth => ({ key, state, hold });

describe('the thread strip', () => {
  it('is one picture named by its sentence', () => {
    strip([tooth('a', 'passed')]);
    expect(screen.getAllByRole('img')).toHaveLength(1);
  });

  it('draws a tooth a step, in order from the left', () => {
    const svg = strip([tooth('a', 'passed'), tooth('b', 'skipped'), tooth('c', 'to-come')]);
    const starts = [...svg.querySelectorAll('.tooth')].map((p) =>
      Number(/^M(-?[\d.]+)/.exec(p.getAttribute('d') ?? '')?.[1]),
    );
    expect(starts).toHaveLength(3);
    expect([...starts].sort((a, b) => a - b)).toEqual(starts);
  });

  it('gives every state a shape of its own, not only a colour', () => {
    const shapes = STATES.map((state) => {
      const { d, fill } = toothShape(state, 0, 40, 20);
      return `${d} ${fill}`;
    });
    expect(new Set(shapes).size).toBe(STATES.length);
  });

  it('chips the point off a failed tooth and cuts it flat off a re-opened one', () => {
    const heights = (state: ToothState) =>
      [...toothShape(state, 0, 40, 20).d.matchAll(/[\d.]+ ([\d.]+)/g)].map((m) => 40 - Number(m[1]));
    const full = Math.max(...heights('passed'));
    const chipped = heights('failed');
    expect(Math.max(...chipped)).toBeLessThan(full * 0.8);
    expect(chipped[2]).toBeLessThan((chipped[1] ?? 0) * 0.6);
    const cut = heights('reopened');
    expect(cut[1]).toBe(cut[2]);
    expect(cut[1]).toBeLessThan(full * 0.8);
  });

  it('stands the step in hand taller than the others, and in front of them', () => {
    const top = (state: ToothState): number =>
      Math.min(
        ...[...toothShape(state, 0, 40, 20).d.matchAll(/[\d.]+ (-?[\d.]+)/g)].map((m) => Number(m[1])),
      );
    for (const state of STATES) if (state !== 'now') expect(top(state)).toBeGreaterThan(top('now'));
    const svg = strip([tooth('a', 'passed'), tooth('b', 'now'), tooth('c', 'to-come')]);
    expect([...svg.querySelectorAll('.tooth')].at(-1)?.getAttribute('data-state')).toBe('now');
  });

  it('cuts 60 degree teeth', () => {
    const { d } = toothShape('to-come', 0, 40, 20);
    const [a, b, c] = [...d.matchAll(/([\d.]+) ([\d.]+)/g)].map((m) => [Number(m[1]), Number(m[2])] as const);
    const side = (p?: readonly [number, number], q?: readonly [number, number]) =>
      Math.hypot((p?.[0] ?? 0) - (q?.[0] ?? 0), (p?.[1] ?? 0) - (q?.[1] ?? 0));
    expect(side(a, b)).toBeCloseTo(20, 1);
    expect(side(b, c)).toBeCloseTo(20, 1);
    expect(side(a, c)).toBeCloseTo(20, 1);
  });

  it('puts a dot under hold points and nowhere else', () => {
    const svg = strip([tooth('a', 'passed', true), tooth('b', 'passed'), tooth('c', 'to-come', true)]);
    expect(svg.querySelectorAll('.hold')).toHaveLength(2);
  });

  it('keeps every tooth inside the strip, however many steps', () => {
    for (const count of [1, 15, 40]) {
      const svg = strip(Array.from({ length: count }, (_, i) => tooth(String(i), 'to-come')));
      for (const path of svg.querySelectorAll('.tooth'))
        for (const [, x, y] of (path.getAttribute('d') ?? '').matchAll(/(-?[\d.]+) (-?[\d.]+)/g)) {
          expect(Number(x)).toBeGreaterThanOrEqual(0);
          expect(Number(x)).toBeLessThanOrEqual(362);
          expect(Number(y)).toBeGreaterThanOrEqual(0);
        }
      cleanup();
    }
  });

  it('draws an empty strip for no steps', () => {
    expect(strip([]).querySelectorAll('.tooth')).toHaveLength(0);
  });
});

describe('the tooth marks of the buttons', () => {
  it('say nothing by themselves and differ by shape', () => {
    const kinds = ['pass', 'fail', 'skip', 'reopened', 'now'] as const;
    const { container } = render(
      <div>
        {kinds.map((kind) => (
          <ToothMark key={kind} kind={kind} />
        ))}
      </div>,
    );
    expect(screen.queryByRole('img')).toBeNull();
    const paths = [...container.querySelectorAll('svg[aria-hidden="true"] path')].map((p) =>
      p.getAttribute('d'),
    );
    expect(new Set(paths).size).toBe(kinds.length);
  });
});
