// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { JointSection } from '../../../src/ui/drawings/joint-section/joint-section.tsx';
import { spread } from '../../../src/ui/drawings/joint-section/place-callouts.ts';

afterEach(cleanup);

const props = {
  pitch: 2.54,
  halfAngle: Math.PI / 6,
  recess: { diameter: 40, depth: 1.5953, tipFlat: 0.2 },
  tenon: { diameter: 42.4747, depth: 1.5953, tipFlat: 0.2 },
  pose: 'home',
  threads: 3,
  label: 'Section: end play 0.12 mm.',
} as const;
const points = (line: Element | null): number[][] =>
  (line?.getAttribute('points') ?? '').split(' ').map((point) => point.split(',').map(Number));

describe('the section of the joint', () => {
  it('is one picture named by the caller’s sentence', () => {
    render(<JointSection {...props} />);
    expect(screen.getByRole('img', { name: 'Section: end play 0.12 mm.' })).toBeTruthy();
  });

  it('draws both pieces to one scale: the flanks on screen stand at 30 degrees to the radius', () => {
    const { container } = render(<JointSection {...props} />);
    for (const piece of ['.recess', '.tenon']) {
      // All but the two corners behind, where the wood goes on.
      const drawn = points(container.querySelector(piece)).slice(0, -2);
      const flanks = drawn
        .slice(1)
        .map(([x = 0, y = 0], i) => [x - (drawn[i]?.[0] ?? 0), y - (drawn[i]?.[1] ?? 0)] as const)
        .filter(([, dy]) => Math.abs(dy) > 5);
      expect(flanks.length).toBeGreaterThan(6);
      for (const [dx, dy] of flanks) expect(Math.atan(dx / Math.abs(dy))).toBeCloseTo(Math.PI / 6, 2);
    }
  });

  it('writes the labels it is given and no others', () => {
    const { container } = render(
      <JointSection {...props} labels={{ recess: '40.00 mm', play: 'play 0.12 mm' }} />,
    );
    expect([...container.querySelectorAll('text')].map((t) => t.textContent).sort()).toEqual([
      '40.00 mm',
      'play 0.12 mm',
    ]);
  });

  it('marks one flank of a pair pulled home, both of a pair that overlaps, in another colour', () => {
    const flank = (more: object) => {
      const { container } = render(<JointSection {...props} {...more} />);
      const flanks = container.querySelector('.flanks');
      cleanup();
      return { lines: flanks?.children.length, colour: flanks?.getAttribute('stroke') };
    };
    const home = flank({});
    const binding = flank({ tenon: { ...props.tenon, diameter: 43 } });
    expect(home.lines).toBe(4);
    expect(binding.lines).toBe(8);
    expect(home.colour).toBe('var(--blue)');
    expect(binding.colour).toBe('var(--chipped)');
  });

  it('marks no flank where there is no thread', () => {
    const { container } = render(<JointSection {...props} tenon={{ ...props.tenon, diameter: 39 }} />);
    expect(container.querySelectorAll('.flanks > *')).toHaveLength(0);
  });

  it('shows the piece as it was cut beside the piece as it has moved', () => {
    const { container, rerender } = render(<JointSection {...props} />);
    expect(container.querySelectorAll('.unmoved > *')).toHaveLength(0);
    rerender(<JointSection {...props} tenon={{ ...props.tenon, strain: 0.004 }} />);
    expect(container.querySelectorAll('.unmoved > *')).toHaveLength(1);
  });

  it('cuts two sections on one page each to its own frame', () => {
    const { container } = render(
      <div>
        <JointSection {...props} />
        <JointSection {...props} threads={2} label="another" />
      </div>,
    );
    const ids = [...container.querySelectorAll('clipPath')].map((c) => c.id);
    expect(new Set(ids).size).toBe(2);
  });
});

describe('spreading labels', () => {
  it('keeps their order, their distance and the room there is', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -50, max: 400, noNaN: true }), { maxLength: 8 }), (wanted) => {
        const placed = spread(wanted, 20, 10, 170);
        const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
        const heights = order.map((i) => placed[i] ?? Number.NaN);
        heights.forEach((y, i) => {
          expect(y).toBeGreaterThanOrEqual(10 - 1e-9);
          expect(y).toBeLessThanOrEqual(170 + 1e-9);
          if (i) expect(y - (heights[i - 1] ?? 0)).toBeGreaterThanOrEqual(20 - 1e-9);
        });
      }),
    );
  });

  it('leaves alone what stands apart already', () => {
    expect(spread([90, 30, 60], 20, 0, 200)).toEqual([90, 30, 60]);
  });
});
